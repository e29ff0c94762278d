using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;

namespace Passagework.Hands.Variants;

/// <summary>Measures every variation and picks the steps of the ladder.</summary>
internal sealed class RungSearch(Measurement written, RoomStyle style)
{
    private readonly Recipe _recipe = written.Realization.Line.Recipe;

    public ImmutableArray<Rung> Search()
    {
        var tried = Variations
            .Of(_recipe, style)
            .Select(variation => (Variation: variation, Measured: Measured(variation.Recipe)))
            .Where(form => form.Measured is not null)
            .Select(form => new Form(form.Variation, form.Measured!))
            .ToList();
        var easier = tried
            .Where(form => IsEasier(form.Measured, written))
            .OrderBy(form => form.Bpm)
            .FirstOrDefault();
        var harder = NextHarder(tried, written);
        var still = harder is null ? null : NextHarder(tried, harder.Measured);
        return
        [
            .. RungOf(RungKind.Easier, easier),
            new Rung(RungKind.AsWritten, AsWritten(), _recipe, written.Top),
            .. RungOf(RungKind.Harder, harder),
            .. RungOf(RungKind.HarderStill, still),
        ];
    }

    // The nearest form that is clearly harder than another.
    private static Form? NextHarder(List<Form> tried, Measurement than) =>
        tried
            .Where(form => IsEasier(than, form.Measured))
            .OrderByDescending(form => form.Bpm)
            .FirstOrDefault();

    // The top tempo differs clearly at the plain values, and keeps its sign in nearly all draws of the hands.
    private static bool IsEasier(Measurement one, Measurement other)
    {
        if (
            one is not { Bpm: { } fast, Ceiling.Range: { } high }
            || other is not { Bpm: { } slow, Ceiling.Range: { } low }
            || fast < slow * (1 + Rungs.Margin)
        )
        {
            return false;
        }

        var (oneBeat, otherBeat) = (NotesPerBeat(one), NotesPerBeat(other));
        var faster = high.Draws.Zip(low.Draws).Count(draw => draw.First / oneBeat > draw.Second / otherBeat);
        return faster >= Rungs.SureShare * high.Draws.Length;
    }

    private static double NotesPerBeat(Measurement measured) =>
        measured.Realization.Line.Recipe.Rhythm.NotesPerBeat;

    private Measurement? Measured(Recipe recipe) =>
        Measurer.Measure(recipe, written.Player).TryGet(out var measured, out _) ? measured : null;

    private IEnumerable<Rung> RungOf(RungKind kind, Form? form)
    {
        if (form is null)
        {
            yield break;
        }

        var follows = Consequence.Of(written, form.Measured, isHarder: kind != RungKind.Easier);
        var words = follows is null ? form.Variation.Words : $"{form.Variation.Words}: {follows}";
        yield return new Rung(kind, words, form.Variation.Recipe, form.Measured.Top);
    }

    // Such as "box 1, four to the beat, from a down-stroke".
    private string AsWritten()
    {
        var layout = _recipe.Layout is null ? "as written" : LayoutName.Of(_recipe, style).Name;
        var notes = $"{NumberWords.Of(_recipe.Rhythm.NotesPerBeat)} to the beat";
        var first = _recipe.Picking.First switch
        {
            _ when !HandAxes.BeginsWithAStroke(_recipe.Picking.Technique) => "",
            FirstStroke.Down => ", from a down-stroke",
            FirstStroke.Up => ", from an up-stroke",
            _ => "",
        };
        return $"{layout}, {notes}{first}";
    }

    private sealed record Form(Variation Variation, Measurement Measured)
    {
        public double? Bpm => Measured.Bpm;
    }
}
