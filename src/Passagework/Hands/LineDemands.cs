using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>What every transition of a planned line asks of each hand, before a player is put in.</summary>
internal sealed class LineDemands
{
    private readonly FrettingMoves _moves;
    private readonly Fingering _fingering;
    private readonly Articulation _articulation;
    private readonly LineTimes _times;
    private readonly bool[] _struck;

    public LineDemands(Line line, Fingering fingering, StrokePlan strokes, Player player)
    {
        _fingering = fingering;
        _moves = new FrettingMoves(Geometry.Of(line.Recipe.Instrument), player.HandSize);
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
            lastNote[_fingering.Notes[k].Finger] = k;
            var (from, to) = (StateOf(k), StateOf(k + 1));
            var reach = Reached(k + 1, from, to);
            var last = lastNote[to.Finger];
            Fretting.Set(k, FrettingDemand(from, to, reach, last), _times.Gaps[k]);
            if (_struck[k + 1] && _moves.Action(from, to, reach) is { IsNone: false })
            {
                Together.Set(k, Meeting(from, to), _times.Gaps[k]);
            }

            if (!to.IsOpen && last >= 0 && last < k && _fingering.Notes[last].Place != to.Place)
            {
                Carried.Set(k, Return(last, to), _times.Between(last, k + 1));
            }
        }
    }

    private Reach Reached(int note, FretState from, FretState to) =>
        _struck[note] ? Reach.Struck : _articulation.Of(_articulation.WishOf(note), from.Place, to.Place);

    // A pull-off needs its lower finger on the string before; a finger that comes from elsewhere is placed first.
    private Demand FrettingDemand(FretState from, FretState to, Reach reach, int last)
    {
        var demand =
            _moves.Between(from, to, reach)
            ?? throw new System.Diagnostics.UnreachableException(
                "A planned fingering has only possible moves."
            );
        var pulls =
            reach != Reach.Struck
            && !to.IsOpen
            && from.Place.String == to.Place.String
            && to.Place.Fret < from.Place.Fret
            && to.Finger != from.Finger;
        var alreadyDown = last >= 0 && _fingering.Notes[last].Place == to.Place;
        return pulls && !alreadyDown ? demand.Plus(Basis.Press, HandConstants.PullOffPreparation) : demand;
    }

    private static Demand Meeting(FretState from, FretState to)
    {
        var window =
            from.Place.String == to.Place.String
                ? HandConstants.WindowSameString
                : HandConstants.WindowOtherString;
        return Demand.Of(Basis.Synchrony, HandConstants.WindowQuantile / window);
    }

    private Demand Return(int last, FretState to) =>
        Demand
            .Of(Basis.Cycle + to.Finger - 1, 1)
            .Plus(Basis.Cross, _moves.TravelBits(_fingering.Notes[last].Place, to.Place));

    private FretState StateOf(int note)
    {
        var fingered = _fingering.Notes[note];
        return new FretState(fingered.Place, fingered.Finger, fingered.Position);
    }
}
