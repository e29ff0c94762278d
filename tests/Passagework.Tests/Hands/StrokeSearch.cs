using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>Tries every stroke sequence of a short line, in the order D U p i m a, then plectrum or anchor string.</summary>
internal sealed class StrokeSearch
{
    private readonly Line _line;
    private readonly Fingering _fingering;
    private readonly double[] _basis;
    private readonly LineTimes _times;
    private readonly Articulation _articulation;
    private readonly StrokeRules _rules;
    private readonly int[] _struck;
    private readonly double _reference;
    private readonly List<StrokeState> _chosen = [];
    private double _least = double.PositiveInfinity;
    private StrokeState[]? _best;

    private StrokeSearch(Line line, Fingering fingering, Player player, Stroke first)
    {
        _line = line;
        _fingering = fingering;
        _basis = player.Parameters.Basis;
        _times = new LineTimes(line);
        _articulation = new Articulation(line, _times);
        var board = line.Recipe.Instrument;
        var moves = new PlectrumMoves(Geometry.Of(board).PickingSpacingMm, player.Clear);
        _rules = StrokeRules.For(line.Recipe.Picking, first, moves, board.Tuning.StringCount);
        _struck = [.. Enumerable.Range(0, line.Notes.Length).Where(IsStruck)];
        _reference = LineTimes.Median([.. _struck.Zip(_struck.Skip(1), _times.Between)]);
    }

    public static string Best(Line line, Fingering fingering, Player player)
    {
        Stroke[] firsts = line.Recipe.Picking.First switch
        {
            FirstStroke.Down => [Stroke.Down],
            FirstStroke.Up => [Stroke.Up],
            _ => [Stroke.Down, Stroke.Up],
        };
        var found = Array.ConvertAll(firsts, first => new StrokeSearch(line, fingering, player, first));
        foreach (var search in found)
        {
            search.Extend(0);
        }

        var best = found.Aggregate((a, b) => b._least < a._least - 1e-9 ? b : a)._best;
        return best is null ? "none" : Text(best);
    }

    public static string Text(IEnumerable<StrokeState> states) =>
        string.Join(
            ' ',
            states.Select(state =>
                FormattableString.Invariant(
                    $"{string.Concat(state.Parts().Select(part => $"{part.Action}{part.String}"))}/{state.Anchor}"
                )
            )
        );

    private bool IsStruck(int note) =>
        note == 0
        || !_line.Notes[note].With.IsEmpty
        || _articulation.Of(_articulation.WishOf(note), Before(note), _fingering.Notes[note].Place)
            == Reach.Struck;

    // The tone before on the same string, if there is one.
    private Place Before(int note)
    {
        var before = _fingering.Notes[note - 1];
        return before
            .With.Select(tone => tone.Place)
            .Append(before.Place)
            .Where(place => place.String == _fingering.Notes[note].Place.String)
            .DefaultIfEmpty(before.Place)
            .First();
    }

    private IEnumerable<StrokeState> States(int note)
    {
        var fingered = _fingering.Notes[note];
        return fingered.With.IsEmpty
            ? _rules.States(fingered.Place.String)
            : _rules.ChordStates([fingered.Place.String, .. fingered.With.Select(tone => tone.Place.String)]);
    }

    private void Extend(double cost)
    {
        var i = _chosen.Count;
        if (i == _struck.Length)
        {
            if (cost < _least - 1e-9)
            {
                (_least, _best) = (cost, [.. _chosen]);
            }

            return;
        }

        var locked = FixedStroke(_struck[i]);
        foreach (
            var state in States(_struck[i])
                .Where(state => locked is null || locked == state.Action)
                .OrderBy(state => (state.Action, state.Anchor))
        )
        {
            if (Cost(i, state, locked is not null) is { } more)
            {
                _chosen.Add(state);
                Extend(cost + more + Preference(state, _struck[i]));
                _chosen.RemoveAt(i);
            }
        }
    }

    private Stroke? FixedStroke(int note) =>
        _line
            .Recipe.Fretting.Locks.Where(entry =>
                entry.Note == note && entry.Stroke is not (null or Stroke.None)
            )
            .Select(entry => entry.Stroke)
            .FirstOrDefault();

    private double? Cost(int i, StrokeState state, bool locked)
    {
        var pulse = _line.Recipe.Rhythm.Pulse;
        var slot = (_line.Notes[_struck[i]].Onset / pulse).Floor();
        if (i == 0)
        {
            return locked || _rules.MayBegin(state, slot) ? 0 : null;
        }

        var (before, now) = (_struck[i - 1], _struck[i]);
        var slots = (int)(slot - (_line.Notes[before].Onset / pulse).Floor());
        var rested = Enumerable
            .Range(before, now - before)
            .Any(k => _line.Notes[k + 1].Onset - _line.Notes[k].End >= Fraction.Of(1, 4));
        var step = new StrokeStep(slots, slot, rested);
        if (
            !(
                locked
                    ? _rules.CanFollow(_chosen[i - 1], state)
                    : _rules.MayFollow(_chosen[i - 1], state, step)
            )
        )
        {
            return null;
        }

        var time = _rules.Between(_chosen[i - 1], state, step).At(_basis) / _basis[Basis.HalfCycle];
        return Math.Pow(time * _reference / _times.Between(before, now), 4);
    }

    private double Preference(StrokeState state, int note)
    {
        var written = _line.Notes[note];
        var marked = written.Accent || (written.Onset / Fraction.Of(1, 4)).IsWhole;
        return state.Action == Stroke.Down ? -0.02 * ((marked ? 1 : 0) + (written.InGroup == 0 ? 1 : 0)) : 0;
    }
}
