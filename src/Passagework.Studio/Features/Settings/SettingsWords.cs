using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Studio.Features.Settings;

/// <summary>What can be set for the room, each with its words.</summary>
internal static class SettingsWords
{
    /// <summary>What the box that begins on the root may be called: most teachers know five boxes.</summary>
    public const int MostBoxes = 5;

    /// <summary>Themes.</summary>
    public static ImmutableArray<(Theme Value, string Words)> Themes { get; } =
    [
        (Theme.System, "as the system has it"),
        (Theme.Light, "dark ink on light paper"),
        (Theme.Dark, "light ink on dark paper"),
    ];

    /// <summary>Numbers of the box that begins on the root.</summary>
    public static ImmutableArray<(int Value, string Words)> Boxes { get; } =
    [
        .. Enumerable
            .Range(1, MostBoxes)
            .Select(number => (number, FormattableString.Invariant($"box {number}"))),
    ];

    /// <summary>Ways of naming notes.</summary>
    public static ImmutableArray<(NoteNaming Value, string Words)> Notes { get; } =
    [
        (NoteNaming.Letters, "A to G: B, B♭, F♯"),
        (NoteNaming.LettersWithH, "A to H: H, B, Fis"),
        (NoteNaming.Syllables, "Do to Si: Si, Si♭, Fa♯"),
    ];

    /// <summary>Ways of counting.</summary>
    public static ImmutableArray<(Counting Value, string Words)> Countings { get; } =
    [
        (Counting.TripLet, "1 e & a, 1 trip let"),
        (Counting.LaLi, "1 ti te ta, 1 la li"),
        (Counting.TaKa, "ta ka di mi, ta ki da"),
        (Counting.BeatsOnly, "1 2 3 4, nothing between"),
    ];

    /// <summary>First strokes.</summary>
    public static ImmutableArray<(FirstStroke Value, string Words)> Firsts { get; } =
    [
        (FirstStroke.Down, "a down-stroke"),
        (FirstStroke.Up, "an up-stroke"),
        (FirstStroke.Best, "the stroke that is easier"),
    ];
}
