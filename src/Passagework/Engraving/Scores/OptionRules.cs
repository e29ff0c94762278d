using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>What can be asked of a score (ranges chosen by us).</summary>
internal static class OptionRules
{
    private const double LeastWidth = 30;
    private const double MostWidth = 2000;
    private const double LeastStaff = 4;
    private const double MostStaff = 20;
    private const double MostGrid = 0.5;
    private const double MostBpm = 1000;
    private const int LongestText = 200;
    private static readonly Fraction MostBend = Fraction.Of(4);
    private static readonly Fraction Halves = Fraction.Of(2);

    /// <summary>Sizes, tempi and texts.</summary>
    public static Fault? Check(ScoreOptions options) =>
        Within(options.WidthMm, (LeastWidth, MostWidth), "mm", "the width of the score")
        ?? Within(options.StaffMm, (LeastStaff, MostStaff), "mm", "the height of the staff")
        ?? LongestSystem(options.LongestSystem)
        ?? Within(options.GridMm, (0, MostGrid), "mm", "the grid of the columns")
        ?? Within(options.StartBpm ?? 1, (1, MostBpm), "beats a minute", "the tempo to begin with")
        ?? Within(options.GoalBpm ?? 1, (1, MostBpm), "beats a minute", "the tempo aimed for")
        ?? options
            .Words.Select(words => Writable(words.Text, Face.SerifItalic, "words above the music"))
            .Concat(options.Endings.Select(ending => Writable(ending.Text, Face.Sans, "an ending")))
            .Concat(
                options
                    .Syllables.ByParts.Values.SelectMany(said => said)
                    .Select(said => Writable(said, Face.Sans, "the counting"))
            )
            .FirstOrDefault(fault => fault is not null);

    /// <summary>Repeats and endings of bars that are numbered from a first to a last.</summary>
    public static Fault? CheckBars(ScoreOptions options, int first, int last) =>
        options
            .Repeats.Select(repeat => (repeat.First, repeat.Last, What: "a repeat"))
            .Concat(options.Endings.Select(ending => (ending.First, ending.Last, What: "an ending")))
            .Where(part => part.First < first || part.Last > last || part.First > part.Last)
            .Select(part => new Fault(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{part.What} from bar {part.First} to bar {part.Last}"
                ),
                Right: string.Create(CultureInfo.InvariantCulture, $"bars from {first} to {last}, in order")
            ))
            .FirstOrDefault();

    /// <summary>Bends and vibrato of so many notes.</summary>
    public static Fault? CheckNotes(ScoreOptions options, int notes) =>
        options
            .Bends.Select(bend => AtNote(bend.Note, notes, "a bend") ?? BendSize(bend))
            .Concat(options.Vibratos.Select(note => AtNote(note, notes, "vibrato")))
            .Append(Twice(options.Bends))
            .FirstOrDefault(fault => fault is not null);

    private static Fault? LongestSystem(Fraction? longest) =>
        longest is null || longest > Fraction.Zero
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{longest} of a whole note"),
                "the longest system",
                "above 0"
            );

    private static Fault? AtNote(int note, int notes, string what) =>
        note >= 0 && note < notes
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{what} at note {note}"),
                Right: string.Create(CultureInfo.InvariantCulture, $"a note from 0 to {notes - 1}")
            );

    private static Fault? BendSize(ScoreBend bend) =>
        bend.HalfSteps > Fraction.Zero && bend.HalfSteps <= MostBend && (bend.HalfSteps * Halves).IsWhole
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"a bend of {bend.HalfSteps} half-steps"),
                string.Create(CultureInfo.InvariantCulture, $"note {bend.Note}"),
                "1/2, 1, 3/2 and so on to 4"
            );

    private static Fault? Twice(ImmutableArray<ScoreBend> bends) =>
        bends
            .GroupBy(bend => bend.Note)
            .Where(group => group.Count() > 1)
            .Select(group => new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{group.Count()} bends"),
                string.Create(CultureInfo.InvariantCulture, $"note {group.Key}"),
                "one"
            ))
            .FirstOrDefault();

    private static Fault? Within(
        double value,
        (double Least, double Most) range,
        string unit,
        string where
    ) =>
        value >= range.Least && value <= range.Most
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{value} {unit}"),
                where,
                string.Create(CultureInfo.InvariantCulture, $"from {range.Least} to {range.Most} {unit}")
            );

    private static Fault? Writable(string text, Face face, string where) =>
        text.Length > LongestText
            ? new Fault(
                string.Create(CultureInfo.InvariantCulture, $"a text of {text.Length} letters"),
                where,
                "at most 200"
            )
            : TextFont.Missing(text, face)?.At(where + ", ");
}
