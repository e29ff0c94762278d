using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Exercises.Ideas;

/// <summary>Note values, metre, swing, start and tempo.</summary>
internal static class RhythmAxes
{
    private const string Even = "even";
    private const string NoTempo = "none";

    // The usual metres, by beats and unit (common practice).
    private static readonly ImmutableArray<string> Meters =
    [
        "2/4",
        "3/4",
        "4/4",
        "5/4",
        "6/4",
        "7/4",
        "2/2",
        "3/2",
        "3/8",
        "5/8",
        "6/8",
        "7/8",
        "9/8",
        "12/8",
    ];

    private static readonly ImmutableArray<string> Swings = ["1/2", "11/20", "3/5", "2/3", "3/4"];

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("rhythm.notesPerBeat", "notes to the beat")
        {
            Text = recipe => AxisText.Of(recipe.Rhythm.NotesPerBeat),
            Choices = _ => AxisText.Range(1, 8, notes => $"{NumberWords.Of(notes)} to the beat"),
            Set = RecipeChange.NotesPerBeat,
        },
        new("rhythm.pattern", "rhythm pattern")
        {
            Text = recipe => recipe.Written is null ? PatternText(recipe.Rhythm) : null,
            Words = recipe => $"lengths {PatternText(recipe.Rhythm)}",
            Choices = _ => [new AxisChoice(Even, "even notes")],
            Set = Patterned,
            Typing = "lengths as fractions of a whole note, repeated, such as 1/8 1/16 1/16",
            IsUsual = recipe => !recipe.Rhythm.Pattern.IsEmpty,
        },
        new("rhythm.meter", "metre")
        {
            Text = recipe => $"{recipe.Rhythm.Meter}",
            Choices = _ => Meters.Select(meter => new AxisChoice(meter, meter)),
            Set = (recipe, text) => RecipeChange.Meter(recipe, text).Then(InFirstBar),
            Typing = "beats and unit, such as 7/8",
        },
        new("rhythm.swing", "swing")
        {
            Text = recipe => $"{recipe.Rhythm.Swing.Share}",
            Words = recipe => SwingWords.Of(recipe.Rhythm.Swing),
            Choices = _ => Swings.Select(share => new AxisChoice(share, SwingWords.Of(SwingOf(share)))),
            Set = RecipeChange.Swing,
            Typing = "the share of the first of each pair, 0.5 to 0.75, such as 2/3",
        },
        new("rhythm.startOffset", "start in the bar")
        {
            Text = recipe => $"{recipe.Rhythm.StartOffset}",
            Words = recipe => Begun(recipe.Rhythm.StartOffset),
            Choices = Starts,
            Set = Started,
            Typing = "a fraction of a whole note after the bar line, such as 1/16",
            IsUsual = recipe => recipe.Rhythm.StartOffset > Fraction.Zero,
        },
        new("rhythm.tempo", "tempo")
        {
            Text = recipe => recipe.Rhythm.TempoBpm is { } bpm ? AxisText.Of(bpm) : NoTempo,
            Words = recipe => $"{AxisText.Of(recipe.Rhythm.TempoBpm ?? 0)} beats a minute",
            Choices = _ =>
                Clockwork
                    .Marks.Select(bpm => AxisText.Choice(bpm, $"{bpm} beats a minute"))
                    .Prepend(new AxisChoice(NoTempo, "no tempo set")),
            Set = (recipe, text) =>
                text == NoTempo
                    ? recipe with
                    {
                        Rhythm = recipe.Rhythm with { TempoBpm = null },
                    }
                    : RecipeChange.Tempo(recipe, text),
            Typing = "beats a minute, such as 72",
            IsUsual = recipe => recipe.Rhythm.TempoBpm is not null,
        },
    ];

    private static string PatternText(RhythmPlan rhythm) =>
        rhythm.Pattern.IsEmpty ? Even : rhythm.Pattern.Join(" ");

    private static Swing SwingOf(string share) =>
        Fraction.TryParse(share, out var fraction) && Swing.TryOf(fraction, out var swing) ? swing : default;

    // A pattern takes the place of the cell's own lengths.
    private static Outcome<Recipe> Patterned(Recipe recipe, string text)
    {
        var pattern = text == Even ? ImmutableArray<Fraction>.Empty : TypedText.Fractions(text);
        return pattern.Then<Recipe>(lengths =>
            recipe with
            {
                Rhythm = recipe.Rhythm with { Pattern = lengths },
                Cell =
                    lengths.IsEmpty || recipe.Cell is null
                        ? recipe.Cell
                        : recipe.Cell with
                        {
                            Durations = [],
                        },
            }
        );
    }

    // A start that a shorter bar does not have becomes the bar line.
    private static Outcome<Recipe> InFirstBar(Recipe recipe) =>
        recipe.Rhythm.StartOffset < recipe.Rhythm.Meter.Bar
            ? recipe
            : recipe with
            {
                Rhythm = recipe.Rhythm with { StartOffset = Fraction.Zero },
            };

    // Every pulse of the first bar.
    private static IEnumerable<AxisChoice> Starts(Recipe recipe)
    {
        var rhythm = recipe.Rhythm;
        var pulses = (int)(rhythm.Meter.Bar / rhythm.Pulse).Floor();
        return Enumerable
            .Range(0, pulses)
            .Select(pulse => rhythm.Pulse * Fraction.Of(pulse))
            .Append(rhythm.StartOffset)
            .Distinct()
            .Where(start => start < rhythm.Meter.Bar)
            .Order()
            .Select(start => new AxisChoice($"{start}", Begun(start)));
    }

    private static string Begun(Fraction start) =>
        start == Fraction.Zero ? "on the first beat" : $"{start} after the bar line";

    private static Outcome<Recipe> Started(Recipe recipe, string text) =>
        Fraction.TryParse(text, out var start)
            ? recipe with
            {
                Rhythm = recipe.Rhythm with { StartOffset = start },
            }
            : TypedText.Unread(text, "start", "a fraction of a whole note such as 1/16");
}
