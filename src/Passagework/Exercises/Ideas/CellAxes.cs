using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>The figure that is moved: its notes, accents, lengths, slurs and sound.</summary>
internal static class CellAxes
{
    private const string Alike = "alike";
    private const string Nothing = "none";

    // Figures of the starting library (common property of the trade), the plain runs first.
    private static readonly ImmutableArray<string> Figures =
    [
        "1",
        "1 2",
        "1 2 3",
        "1 2 3 4",
        "1 2 3 4 5",
        "1 2 3 4 5 6",
        "1 2 3 4 5 6 7",
        "1 2 3 4 5 6 7 8",
        "3 2 1",
        "4 3 2 1",
        "1 2 3 2",
        "1 2 3 4 3 2",
        "1 3",
        "1 4",
        "1 3 2 4",
        "1 4 2 3",
        "1 2 5 6",
        "1 2 1 3 1 4",
        "1 3 5 6 4 2",
    ];

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("cell.offsets", "notes of the cell")
        {
            Text = recipe => recipe.Cell is { } cell ? CellText.Of(cell.Offsets) : null,
            Choices = _ => Figures.Select(figure => new AxisChoice(figure, figure)),
            Set = (recipe, text) => CellText.Read(text).Then(offsets => CellFit.WithOffsets(recipe, offsets)),
            Typing = $"notes counted from 1, {CellText.Rest} for a rest, such as 1 2 5 2",
        },
        new("cell.accents", "accents")
        {
            Text = recipe => recipe.Cell is { } cell ? Entries(cell.Accents) : null,
            Words = recipe => Accented(recipe.Cell!.Accents),
            Choices = recipe => Singles(recipe.Cell!, Accented),
            Set = (recipe, text) =>
                Read(recipe.Cell!, text)
                    .Then<Recipe>(entries => recipe with { Cell = recipe.Cell! with { Accents = entries } }),
            Typing = "places in the cell counted from 1, such as 1 3",
        },
        new("cell.durations", "lengths in the cell")
        {
            Text = recipe => recipe.Cell is { } cell ? Lengths(cell) : null,
            Words = recipe => $"lengths {Lengths(recipe.Cell!)}",
            Choices = _ => [new AxisChoice(Alike, "all of one length")],
            Set = CellFit.WithDurations,
            Typing = "a length for each note and rest, in pulses, such as 1 1 2",
            IsUsual = recipe => recipe.Cell is { Durations.IsEmpty: false },
        },
        new("cell.slurs", "slurs")
        {
            Text = recipe => recipe.Cell is { } cell ? Slurs(cell.Slurs) : null,
            Words = recipe =>
                $"{(recipe.Cell!.Slurs.Entries.Length == 1 ? "note" : "notes")} {Counted(recipe.Cell.Slurs.Entries)} slurred",
            Choices = _ =>
                [
                    new AxisChoice(Nothing, "all struck"),
                    new AxisChoice("same-string", "slurred on each string"),
                ],
            Set = Slurred,
            Typing = "places in the cell that are reached without a stroke, counted from 1, such as 2 3",
            IsUsual = recipe => recipe.Cell is { } cell && !cell.Slurs.Equals(CellSlurs.None),
        },
        new("cell.sound", "sound")
        {
            Text = recipe => recipe.Cell is { } cell ? RecipeWords.Sounds.Of(cell.Sound) : null,
            Choices = _ => AxisText.Listed(RecipeWords.Sounds, Sound),
            Set = (recipe, text) =>
                RecipeWords
                    .Sounds.Read(text)
                    .Then<Recipe>(sound => recipe with { Cell = recipe.Cell! with { Sound = sound } }),
            IsUsual = recipe => recipe.Cell is { Sound: not NoteSound.Normal },
        },
    ];

    private static string Entries(ImmutableArray<int> entries) =>
        entries.IsEmpty ? Nothing : entries.Select(entry => entry + 1).Join(" ");

    private static string Accented(ImmutableArray<int> entries) =>
        entries.Length switch
        {
            0 => "no accent",
            1 => $"accent on {Counted(entries)}",
            _ => $"accents on {Counted(entries)}",
        };

    private static string Counted(ImmutableArray<int> entries) =>
        NumberWords.List([.. entries.Select(entry => AxisText.Of(entry + 1))]);

    // No accent, then one on each note in turn.
    private static IEnumerable<AxisChoice> Singles(Cell cell, Func<ImmutableArray<int>, string> words) =>
        Enumerable
            .Range(0, cell.Offsets.Length)
            .Where(entry => cell.Offsets[entry] is not null)
            .Select(entry => ImmutableArray.Create(entry))
            .Prepend([])
            .Select(entries => new AxisChoice(Entries(entries), words(entries)));

    private static Outcome<ImmutableArray<int>> Read(Cell cell, string text) =>
        text == Nothing
            ? ImmutableArray<int>.Empty
            : TypedText
                .Wholes(text, 1, cell.Offsets.Length)
                .Then<ImmutableArray<int>>(places => places.Select(place => place - 1).ToImmutableArray());

    private static string Lengths(Cell cell) => cell.Durations.IsEmpty ? Alike : cell.Durations.Join(" ");

    private static string Slurs(CellSlurs slurs) => slurs.SameString ? "same-string" : Entries(slurs.Entries);

    private static Outcome<Recipe> Slurred(Recipe recipe, string text)
    {
        var slurs =
            text == "same-string"
                ? new CellSlurs(SameString: true, [])
                : Read(recipe.Cell!, text)
                    .Then<CellSlurs>(entries => new CellSlurs(SameString: false, entries));
        return slurs.Then<Recipe>(found => recipe with { Cell = recipe.Cell! with { Slurs = found } });
    }

    private static string Sound(NoteSound sound) =>
        sound switch
        {
            NoteSound.PalmMuted => "palm-muted",
            NoteSound.Staccato => "short",
            NoteSound.LetRing => "left to ring",
            _ => "plain sound",
        };
}
