using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>
/// Strokes as economy; where the crossing passes over strings the plectrum may be dragged through them, muted, into the
/// note. How many, the programme decides.
/// </summary>
/// <remarks>The anchor is the first string touched; each muted string takes half a sweep step (assumed).</remarks>
internal sealed class RakeRules(PlectrumMoves moves, Stroke first, int strings) : PlectrumRules(moves)
{
    private readonly EconomyRules _economy = new(moves, first);

    public override IEnumerable<StrokeState> States(int stringNumber)
    {
        for (var anchor = stringNumber; anchor <= strings; anchor++)
        {
            yield return new StrokeState(Stroke.Down, stringNumber, anchor);
        }

        for (var anchor = stringNumber; anchor >= 1; anchor--)
        {
            yield return new StrokeState(Stroke.Up, stringNumber, anchor);
        }
    }

    public override bool MayBegin(StrokeState state, long slot) => state.Action == first && Muted(state) == 0;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) =>
        CanFollow(from, to) && _economy.MayFollow(from, to, step);

    // Only strings that lie between the two notes are dragged through.
    public override bool CanFollow(StrokeState from, StrokeState to) =>
        Muted(to) == 0
        || (
            Muted(to) < Math.Abs(from.Exit - to.String)
            && (to.Action == Stroke.Down) == (to.String < from.Exit)
        );

    public override Demand Between(StrokeState from, StrokeState to, StrokeStep step) =>
        Moves
            .Between(from, to with { String = to.Anchor })
            .Plus(Basis.SweepStep, HandConstants.RakedStringShare * Muted(to));

    /// <summary>The first of the muted strings before a note; null where none is dragged through.</summary>
    public static int? DraggedFrom(StrokeState state) => Muted(state) > 0 ? state.Anchor : null;

    private static int Muted(StrokeState state) =>
        state.Chord is null ? Math.Abs(state.Anchor - state.String) : 0;
}
