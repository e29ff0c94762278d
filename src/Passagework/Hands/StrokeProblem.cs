using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>
/// The strokes of a line as a chain of layers over the struck notes: minimise Σ (τ/H)⁴ (IOIref/IOI)⁴ less small
/// preferences for down-strokes on accents, beats and group starts.
/// </summary>
internal sealed class StrokeProblem
{
    private readonly Line _line;
    private readonly Fingering _fingering;
    private readonly StrokeRules _rules;
    private readonly double[] _basis;
    private readonly LineTimes _times;
    private readonly Articulation _articulation;
    private readonly int[] _struck;
    private readonly double[] _gaps;
    private readonly StrokeStep[] _context;
    private readonly List<StrokeState[]> _layers = [];
    private readonly Dictionary<(int String, int Others, Stroke? Locked), int> _layerNumbers = [];
    private readonly Dictionary<
        (int From, int To, int Slots, bool EvenSlot, bool Restarts),
        LayeredStep
    > _steps = [];
    private readonly int[] _layerOf;

    public StrokeProblem(Line line, Fingering fingering, Player player, StrokeRules rules)
    {
        _line = line;
        _fingering = fingering;
        _rules = rules;
        _basis = player.Parameters.Basis;
        _times = new LineTimes(line);
        _articulation = new Articulation(line, _times);
        _struck = [.. Enumerable.Range(0, line.Notes.Length).Where(IsStruck)];
        _gaps = new double[_struck.Length];
        _context = new StrokeStep[_struck.Length];
        _layerOf = new int[_struck.Length];
        for (var i = 0; i < _struck.Length; i++)
        {
            _gaps[i] = i == 0 ? 0 : _times.Between(_struck[i - 1], _struck[i]);
            _context[i] = StepInto(i);
            _layerOf[i] = LayerOf(_struck[i]);
        }
    }

    /// <summary>The best plan; refused where fixed strokes leave no way.</summary>
    public Outcome<StrokePlan> Solve()
    {
        var empty = Array.FindIndex(_layerOf, layer => _layers[layer].Length == 0);
        if (empty >= 0)
        {
            return NoWay(_struck[empty]);
        }

        var problem = Layered();
        var best = LayeredSolver.Best(problem);
        if (best.Count == 0)
        {
            return NoWay(_struck[(LayeredSolver.FirstBroken(problem) ?? -1) + 1]);
        }

        return PlanOf(best[0]);
    }

    private bool IsStruck(int note)
    {
        if (note == 0 || _fingering.Notes[note].Form is not null)
        {
            return true;
        }

        var place = _fingering.Notes[note].Place;
        var before = ChordMoves.ToneOn(_fingering.Notes[note - 1].State, place.String).Place;
        return _articulation.Of(_articulation.WishOf(note), before, place) == Reach.Struck;
    }

    private StrokeStep StepInto(int i)
    {
        var pulse = _line.Recipe.Rhythm.Pulse;
        var slot = (_line.Notes[_struck[i]].Onset / pulse).Floor();
        if (i == 0)
        {
            return new StrokeStep(1, slot, Restarts: false);
        }

        var slots = slot - (_line.Notes[_struck[i - 1]].Onset / pulse).Floor();
        var restarts = false;
        for (var note = _struck[i - 1] + 1; note <= _struck[i] && !restarts; note++)
        {
            restarts = _times.RestsBefore(note);
        }

        return new StrokeStep((int)Math.Clamp(slots, 1, int.MaxValue), slot, restarts);
    }

    private int LayerOf(int note)
    {
        var fingered = _fingering.Notes[note];
        var others = fingered.With.Aggregate(0, (strings, tone) => (strings * 10) + tone.Place.String);
        var key = (fingered.Place.String, others, Locked: _articulation.FixedStroke(note));
        if (!_layerNumbers.TryGetValue(key, out var number))
        {
            number = _layers.Count;
            _layerNumbers[key] = number;
            _layers.Add([
                .. StatesOf(fingered)
                    .Where(state => key.Locked is not { } locked || state.Action == locked)
                    .OrderBy(state => (state.Action, state.Anchor)),
            ]);
        }

        return number;
    }

    private IEnumerable<StrokeState> StatesOf(FingeredNote note) =>
        note.Form is { } form
            ? _rules.ChordStates([.. form.Tones.Select(tone => tone.Place.String)])
            : _rules.States(note.Place.String);

    private LayeredProblem Layered()
    {
        var count = _struck.Length;
        var reference = LineTimes.Median(_gaps.AsSpan(1).ToArray());
        var steps = new LayeredStep[count - 1];
        var weights = new double[count - 1];
        var extras = new double[count - 1][];
        for (var i = 1; i < count; i++)
        {
            steps[i - 1] = Step(i);
            weights[i - 1] = HandConstants.Cost(reference / _gaps[i]);
            extras[i - 1] = Array.ConvertAll(_layers[_layerOf[i]], state => Preference(state, _struck[i]));
        }

        var first = _layers[_layerOf[0]];
        var start = Array.ConvertAll(
            first,
            state =>
                IsLocked(0) || _rules.MayBegin(state, _context[0].Slot)
                    ? Preference(state, _struck[0])
                    : double.PositiveInfinity
        );
        return new LayeredProblem(start, new long[first.Length], steps, weights, extras);
    }

    private bool IsLocked(int i) => _articulation.FixedStroke(_struck[i]) is not null;

    private LayeredStep Step(int i)
    {
        var context = _context[i];
        var (from, to) = (_layerOf[i - 1], _layerOf[i]);
        var key = (from, to, context.Slots, context.Slot % 2 == 0, context.Restarts);
        if (!_steps.TryGetValue(key, out var step))
        {
            step = Arcs(_layers[from], _layers[to], context, IsLocked(i));
            _steps[key] = step;
        }

        return step;
    }

    private LayeredStep Arcs(StrokeState[] from, StrokeState[] to, StrokeStep context, bool locked)
    {
        var costs = new double[from.Length * to.Length];
        var half = _basis[Basis.HalfCycle];
        for (var i = 0; i < from.Length; i++)
        {
            for (var j = 0; j < to.Length; j++)
            {
                var may = locked
                    ? _rules.CanFollow(from[i], to[j])
                    : _rules.MayFollow(from[i], to[j], context);
                costs[(i * to.Length) + j] = may
                    ? HandConstants.Cost(_rules.Between(from[i], to[j], context).At(_basis) / half)
                    : double.PositiveInfinity;
            }
        }

        return new LayeredStep(from.Length, to.Length, costs, new long[costs.Length]);
    }

    private double Preference(StrokeState state, int note)
    {
        if (state.Action != Stroke.Down)
        {
            return 0;
        }

        var written = _line.Notes[note];
        var onBeat = written.Onset.Modulo(_line.Recipe.Rhythm.Meter.Beat) == Fraction.Zero;
        var marked = written.Accent || onBeat;
        return -HandConstants.DownPreference * ((marked ? 1 : 0) + (written.InGroup == 0 ? 1 : 0));
    }

    private StrokePlan PlanOf(LayeredPath path)
    {
        var strokes = new Stroke[_line.Notes.Length];
        var struck = ImmutableArray.CreateBuilder<StruckNote>(_struck.Length);
        for (var i = 0; i < _struck.Length; i++)
        {
            var state = _layers[_layerOf[i]][path.States[i]];
            strokes[_struck[i]] = state.Action;
            var demand = i == 0 ? Demand.None : _rules.Between(struck[i - 1].State, state, _context[i]);
            struck.Add(new StruckNote(_struck[i], state, _gaps[i], demand));
        }

        return new StrokePlan([.. strokes], path.Cost) { Struck = struck.MoveToImmutable() };
    }

    private Fault NoWay(int note)
    {
        var place = _fingering.Notes[note].Place;
        if (_fingering.Notes[note].Form is { } form && !StatesOf(_fingering.Notes[note]).Any())
        {
            return new Fault(
                $"{RecipeWords.Techniques.Of(_line.Recipe.Picking.Technique)} has no way to strike the {form.Tones.Length} strings of note {note} at once",
                LinePlace.Of(_line, note),
                "another technique or fewer tones"
            );
        }

        return new Fault(
            $"the fixed strokes leave no way to strike note {note} ({place})",
            LinePlace.Of(_line, note),
            "free the stroke of that note or the one before it"
        );
    }
}
