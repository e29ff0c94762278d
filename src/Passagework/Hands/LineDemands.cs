using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>What every transition of a planned line asks of each hand, before a player is put in.</summary>
internal sealed class LineDemands
{
    private readonly FrettingMoves _moves;
    private readonly ChordMoves _chords;
    private readonly double[] _basis;
    private readonly Fingering _fingering;
    private readonly Articulation _articulation;
    private readonly LineTimes _times;
    private readonly bool[] _struck;

    public LineDemands(Line line, Fingering fingering, StrokePlan strokes, Player player)
    {
        _fingering = fingering;
        _moves = new FrettingMoves(Geometry.Of(line.Recipe.Instrument), player.HandSize);
        _basis = player.Parameters.Basis;
        _chords = new ChordMoves(_moves, _basis);
        _times = new LineTimes(line);
        _articulation = new Articulation(line, _times);
        _struck = [.. strokes.Strokes.Select(stroke => stroke != Stroke.None)];
        var moves = line.Notes.Length - 1;
        Fretting = new LoadList(moves);
        Carried = new LoadList(moves);
        Picking = new LoadList(moves);
        Together = new LoadList(moves);
        Fill(moves);
        foreach (var struck in strokes.Struck.Skip(1))
        {
            Picking.Set(struck.Note - 1, struck.Demand, struck.Gap);
        }
    }

    /// <summary>The fretting hand from note to note.</summary>
    public LoadList Fretting { get; }

    /// <summary>The fretting hand from a finger's earlier note to its next, where others lie between.</summary>
    public LoadList Carried { get; }

    /// <summary>The picking hand from stroke to stroke.</summary>
    public LoadList Picking { get; }

    /// <summary>The meeting of both hands.</summary>
    public LoadList Together { get; }

    private void Fill(int moves)
    {
        Span<int> lastNote = [-1, -1, -1, -1, -1];
        for (var k = 0; k < moves; k++)
        {
            var (from, to) = (StateOf(k), StateOf(k + 1));
            Remember(lastNote, from, k);
            if (from.Form is null && to.Form is null)
            {
                SetNote(k, from, to, lastNote[to.Finger]);
            }
            else
            {
                SetChord(k, from, to, lastNote);
            }
        }
    }

    private static void Remember(Span<int> lastNote, FretState state, int note)
    {
        lastNote[state.Finger] = note;
        foreach (var tone in state.Form?.Held ?? [])
        {
            lastNote[tone.Finger] = note;
        }
    }

    private void SetNote(int k, FretState from, FretState to, int last)
    {
        var reach = Reached(k + 1, from, to);
        Fretting.Set(k, FrettingDemand(from, to, reach, last), _times.Gaps[k]);
        if (_struck[k + 1] && _moves.Action(from, to, reach) is { IsNone: false })
        {
            Together.Set(k, Meeting(from.Place.String == to.Place.String), _times.Gaps[k]);
        }

        if (Returns(k, to, last))
        {
            Carried.Set(k, Return(last, to), _times.Between(last, k + 1));
        }
    }

    private void SetChord(int k, FretState from, FretState to, ReadOnlySpan<int> lastNote)
    {
        var reach = Reached(k + 1, ChordMoves.ToneOn(from, to.Place.String), to);
        Fretting.Set(k, Possible(_chords.Between(from, to, reach)), _times.Gaps[k]);
        if (_struck[k + 1] && _chords.Action(from, to) is { IsNone: false })
        {
            var strings = ChordMoves.Tones(from).ConvertAll(tone => tone.Place.String);
            var same = ChordMoves.Held(to).Exists(tone => strings.Contains(tone.Place.String));
            Together.Set(k, Meeting(same), _times.Gaps[k]);
        }

        // Of several fingers that come back the one that is hurried most.
        var hurry = 0.0;
        foreach (var tone in ChordMoves.Held(to))
        {
            var last = lastNote[tone.Finger];
            if (!Returns(k, tone, last))
            {
                continue;
            }

            var (demand, gap) = (Return(last, tone), _times.Between(last, k + 1));
            if (demand.At(_basis) / gap > hurry)
            {
                hurry = demand.At(_basis) / gap;
                Carried.Set(k, demand, gap);
            }
        }
    }

    // Whether a finger comes back from another place, with other notes between.
    private bool Returns(int k, FretState to, int last) =>
        !to.IsOpen && last >= 0 && last < k && !Holds(_fingering.Notes[last], to);

    private static bool Holds(FingeredNote note, FretState to) =>
        note.Form is { } form
            ? form.Held.Contains(new FingeredTone(to.Place, to.Finger))
            : note.Place == to.Place;

    private Reach Reached(int note, FretState from, FretState to) =>
        _struck[note] ? Reach.Struck : _articulation.Of(_articulation.WishOf(note), from.Place, to.Place);

    // A pull-off needs its lower finger on the string before; a finger that comes from elsewhere is placed first.
    private Demand FrettingDemand(FretState from, FretState to, Reach reach, int last)
    {
        var demand = Possible(_moves.Between(from, to, reach));
        var pulls =
            reach != Reach.Struck
            && !to.IsOpen
            && from.Place.String == to.Place.String
            && to.Place.Fret < from.Place.Fret
            && to.Finger != from.Finger;
        var alreadyDown = last >= 0 && _fingering.Notes[last].Place == to.Place;
        return pulls && !alreadyDown ? demand.Plus(Basis.Press, HandConstants.PullOffPreparation) : demand;
    }

    private static Demand Possible(Demand? demand) =>
        demand
        ?? throw new System.Diagnostics.UnreachableException("A planned fingering has only possible moves.");

    /// <summary>What the meeting of both hands asks at a struck note that a finger has to reach.</summary>
    internal static Demand Meeting(bool sameString)
    {
        var window = sameString ? HandConstants.WindowSameString : HandConstants.WindowOtherString;
        return Demand.Of(Basis.Synchrony, HandConstants.WindowQuantile / window);
    }

    private Demand Return(int last, FretState to) =>
        _moves.Return(to.Finger, Held(last, to.Finger)[0], to.Place);

    // The places that a finger held at a note.
    private ImmutableArray<Place> Held(int note, int finger) =>
        _fingering.Notes[note] is { Form: { } form }
            ? [.. form.Held.Where(tone => tone.Finger == finger).Select(tone => tone.Place)]
            : [_fingering.Notes[note].Place];

    private FretState StateOf(int note) => _fingering.Notes[note].State;
}
