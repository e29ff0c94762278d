using System.Collections.Immutable;
using System.Globalization;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Repertoire;
using Passagework.Theory;

namespace Passagework.Tests.Repertoire;

/// <summary>Short melodies and counts for the tests of repertoire.</summary>
internal static class Tunes
{
    /// <summary>Random tunes over few keys, with repeated figures, uneven lengths and rests.</summary>
    public static readonly Gen<Line> Any = Gen.Select(
            Gen.Frequency((9, Gen.Int[60, 64].Select(key => $"{key}")), (1, Gen.Const("r"))),
            Gen.Frequency((6, Gen.Const(1)), (2, Gen.Const(2)), (1, Gen.Const(3))),
            (what, eighths) => $"{what}*{eighths}"
        )
        .Array[1, 30]
        .Where(words => words.Any(word => word[0] != 'r'))
        .Select(words => Of(string.Join(' ', words)));

    /// <summary>Keys separated by spaces, an eighth each; <c>*3</c> for three eighths, <c>r</c> for a rest, | between groups.</summary>
    public static Line Of(string text, Recipe? recipe = null)
    {
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var (at, group) = (Fraction.Zero, 0);
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word == "|")
            {
                group++;
                continue;
            }

            var parts = word.Split('*');
            var length = Fraction.Of(parts.Length > 1 ? Number(parts[1]) : 1, 8);
            if (parts[0] != "r")
            {
                notes.Add(Note(notes.Count, Number(parts[0]), at, length) with { Group = group });
            }

            at += length;
        }

        return new Line(recipe ?? new Recipe(), notes.ToImmutable(), [], at);
    }

    /// <summary>Classes named by letters, as many of each as the letter stands there.</summary>
    public static Distribution<MoveClass> Counts(string letters) =>
        Distribution<MoveClass>.Of(letters.Select(letter => Class(letter)));

    public static MoveClass Class(char letter) => default(MoveClass) with { Frets = letter };

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static LineNote Note(int index, int key, Fraction at, Fraction length) =>
        new()
        {
            Index = index,
            Place = null,
            Midi = key,
            Pitch = SpelledPitch.At(RootNames.Usual(key, minor: true), key),
            Onset = at,
            Duration = length,
        };
}
