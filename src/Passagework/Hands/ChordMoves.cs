using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>What it asks to go to a chord, or from one: every finger by the rules of single notes, then joined.</summary>
/// <remarks>
/// Beginners set fingers one after another, advanced players together: the longest finger counts whole, the others as
/// far as the player's movements do not overlap (assumed). A finger that stays costs nothing, one that slides along its
/// string with the hand only the shift. Between two single notes the result is that of <see cref="FrettingMoves"/>.
/// </remarks>
internal sealed class ChordMoves(FrettingMoves moves, double[] basis)
{
    /// <summary>The demand of a move; null when no hand can do it.</summary>
    public Demand? Between(FretState from, FretState to, Reach reach)
    {
        if (reach != Reach.Struck)
        {
            return moves.Between(ToneOn(from, to.Place.String), to, reach);
        }

        var target = Held(to);
        if (target.Count == 0 && to.Position != from.Position)
        {
            return null;
        }

        return Action(from, to) is { } action
            ? action.PlusAll(target.Count == 0 ? Demand.None : moves.Shift(Anchor(from), to))
            : null;
    }

    /// <summary>What the fingers do, before the hand moves; none when all stay. Null when no hand can do it.</summary>
    public Demand? Action(FretState from, FretState to)
    {
        var times = new List<Demand>();
        foreach (var finger in Held(to).GroupBy(tone => tone.Finger))
        {
            if (Finger([.. finger], from) is not { } time)
            {
                return null;
            }

            times.Add(time);
        }

        times.AddRange(Lifts(from, to));
        return Joined(times);
    }

    /// <summary>The tone on a string, else the highest.</summary>
    public static FretState ToneOn(FretState state, int stringNumber)
    {
        if (state.Form is null)
        {
            return state;
        }

        var tones = Tones(state);
        var index = tones.FindIndex(tone => tone.Place.String == stringNumber);
        return tones[Math.Max(index, 0)];
    }

    /// <summary>The fretted tones of a state, each as a note of its own.</summary>
    public static List<FretState> Held(FretState state) => Tones(state).FindAll(tone => !tone.IsOpen);

    /// <summary>All tones of a state, each as a note of its own.</summary>
    public static List<FretState> Tones(FretState state) =>
        state.Form is { } form
            ? [.. form.Tones.Select(tone => new FretState(tone.Place, tone.Finger, state.Position))]
            : [state];

    // Whether the hand holds anything decides what a shift costs, so a fretted tone speaks for the chord if there is one.
    private static FretState Anchor(FretState state) =>
        Held(state) is [var first, ..] ? first : Tones(state)[0];

    // One finger on one string or, laid flat, on several.
    private Demand? Finger(List<FretState> places, FretState from)
    {
        var before = Held(from).FindAll(tone => tone.Finger == places[0].Finger);
        var kept = places.Count(tone => before.Exists(other => other.Place == tone.Place));
        var further = places.Count - Math.Max(kept, 1);
        var barre = Demand.Of(Basis.Roll + places[0].Finger - 1, HandConstants.BarredStringShare * further);
        if (kept > 0)
        {
            return barre;
        }

        var origins = before.Count > 0 ? before : Tones(from);
        Demand? least = null;
        foreach (var time in places.SelectMany(to => origins.Select(origin => Move(origin, to))))
        {
            if (time is { } possible && (least is not { } best || possible.At(basis) < best.At(basis)))
            {
                least = possible;
            }
        }

        return least is { } move ? move.PlusAll(barre) : null;
    }

    private Demand? Move(FretState from, FretState to)
    {
        var guided =
            from.Finger == to.Finger
            && from.Place.String == to.Place.String
            && from.Deviation == to.Deviation
            && !from.IsOpen;
        if (guided)
        {
            return Demand.None;
        }

        return moves.Stretch(from, to) is { } stretch
            ? moves.Action(from, to, Reach.Struck)?.Times(stretch * FrettingMoves.Posture(to))
            : null;
    }

    // An open string asks only that the finger on it leaves; one that is needed elsewhere leaves anyway.
    private static IEnumerable<Demand> Lifts(FretState from, FretState to)
    {
        var needed = Held(to).ConvertAll(tone => tone.Finger);
        return Tones(to)
            .Where(tone => tone.IsOpen)
            .SelectMany(open => Held(from).Where(held => held.Place.String == open.Place.String))
            .Where(held => !needed.Contains(held.Finger))
            .Select(held => Demand.Of(Basis.Lift + held.Finger - 1, 1));
    }

    private Demand Joined(List<Demand> times)
    {
        if (times.Count == 0)
        {
            return Demand.None;
        }

        var longest = times.MaxBy(time => time.At(basis));
        times.Remove(longest);
        return times.Aggregate(
            longest,
            (sum, time) => sum.PlusAll(time.Apart().Times(HandConstants.ChordOverlapShare))
        );
    }
}
