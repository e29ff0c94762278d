using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises.Ideas;

/// <summary>Tuning, capo, frets and measures of the instrument.</summary>
internal static class InstrumentAxes
{
    private const string Usual = "usual";
    private static readonly ImmutableArray<int> ScaleLengths = [610, 628, 648, 686, 864];

    private static readonly Tuning Example = Tuning.Read("D2 A2 D3 G3 B3 E4").OrThrow();

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("instrument.tuning", "tuning")
        {
            Text = recipe => recipe.Instrument.Tuning.Text,
            Choices = _ => Tuning.Names.Select(name => new AxisChoice(name, name)),
            Said = (recipe, style, text) =>
                Tuning.Names.Contains(text)
                    ? $"{text} tuning"
                    : $"tuned {style.Of(recipe.Instrument.Tuning)}",
            TypedAs = (recipe, style, _) => style.Of(recipe.Instrument.Tuning),
            Meant = (_, style, typed) => Notes(typed, style),
            Set = Retuned,
            TypingIn = style => $"a name, or notes from the lowest string such as {style.Of(Example)}",
            IsUsual = recipe => !recipe.Instrument.Tuning.Equals(Tuning.Standard),
        },
        new("instrument.capo", "capo")
        {
            Text = recipe => AxisText.Of(recipe.Instrument.Capo),
            Choices = _ => AxisText.Range(0, 12, fret => fret == 0 ? "no capo" : $"capo at fret {fret}"),
            Set = RecipeChange.Capo,
            IsUsual = recipe => recipe.Instrument.Capo > 0,
        },
        new("instrument.frets", "number of frets")
        {
            Text = recipe => AxisText.Of(recipe.Instrument.Frets),
            Choices = _ => AxisText.Range(12, 36, frets => $"{frets} frets"),
            Set = (recipe, text) =>
                TypedText
                    .Whole(text, 12, 36)
                    .Then<Recipe>(frets => With(recipe, recipe.Instrument with { Frets = frets })),
            IsUsual = recipe => recipe.Instrument.Frets != Fretboard.Standard.Frets,
        },
        new("instrument.scaleLengthMm", "scale length")
        {
            Text = recipe => LengthText(recipe.Instrument),
            Words = recipe => $"strings of {LengthText(recipe.Instrument)} mm",
            Choices = _ =>
                ScaleLengths
                    .Select(mm => AxisText.Choice(mm, $"strings of {mm} mm"))
                    .Prepend(new AxisChoice(Usual, "usual scale length")),
            Set = (recipe, text) =>
                text == Usual
                    ? With(recipe, recipe.Instrument with { ScaleLengthsMm = [] })
                    : RecipeChange.ScaleLength(recipe, text.Replace(", ", ",", StringComparison.Ordinal)),
            Typing = "mm, or one for each string from string 1, such as 648",
            IsUsual = recipe => !recipe.Instrument.ScaleLengthsMm.IsEmpty,
        },
        new("instrument.stringSpacingMm", "distance between strings")
        {
            Text = recipe => SpacingText(recipe.Instrument),
            Words = recipe =>
                $"strings {SpacingText(recipe.Instrument).Replace(" ", " to ", StringComparison.Ordinal)} mm apart",
            Choices = _ => [new AxisChoice(Usual, "usual string spacing")],
            Set = Spaced,
            Typing = "mm at the nut and at the bridge, such as 7 10.5",
            IsUsual = recipe => SpacingText(recipe.Instrument) != Usual,
        },
    ];

    private static Outcome<Recipe> Retuned(Recipe recipe, string text) =>
        RecipeChange
            .Tuning(recipe, text)
            .Then(retuned =>
                LayoutFit.Fitted(
                    retuned.Instrument.ScaleLengthsMm.Length <= 1
                        ? retuned
                        : With(retuned, retuned.Instrument with { ScaleLengthsMm = [] })
                )
            );

    // Notes with octaves in the letters of a file; a name stays as it is.
    private static string Notes(string typed, RoomStyle style) =>
        Tuning.Names.Contains(typed)
            ? typed
            : typed
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(word =>
                {
                    var octave = word.AsSpan().IndexOfAnyInRange('0', '9');
                    return octave > 0 && PrintedNames.TryRead(word[..octave], style.Notes, out var name)
                        ? $"{name}{word[octave..]}"
                        : word;
                })
                .Join(" ");

    private static string LengthText(Fretboard board) =>
        board.ScaleLengthsMm.IsEmpty ? Usual : board.ScaleLengthsMm.Select(AxisText.Of).Join(",");

    private static string SpacingText(Fretboard board) =>
        (board.NutSpacingMm, board.BridgeSpacingMm) switch
        {
            ({ } nut, { } bridge) => $"{AxisText.Of(nut)} {AxisText.Of(bridge)}",
            _ => Usual,
        };

    private static Outcome<Recipe> Spaced(Recipe recipe, string text)
    {
        var board = recipe.Instrument;
        if (text == Usual)
        {
            return With(recipe, board with { NutSpacingMm = null, BridgeSpacingMm = null });
        }

        return TypedText
            .Each(text, word => TypedText.Number(word, 2, 40))
            .Then<Recipe>(both =>
                both.Length == 2
                    ? With(recipe, board with { NutSpacingMm = both[0], BridgeSpacingMm = both[1] })
                    : TypedText.Unread(text, "spacing", "two numbers: mm at the nut and at the bridge")
            );
    }

    private static Recipe With(Recipe recipe, Fretboard board) => recipe with { Instrument = board };
}
