using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>How long lines and their notes may be, and how finely time may be divided (all assumed by us).</summary>
/// <remarks>
/// All times of a line are multiples of one common unit. Bounding it keeps every sum of lengths exact and small.
/// </remarks>
internal static class LengthRules
{
    /// <summary>A line holds at most this many notes and rests.</summary>
    public const int MostNotes = 20_000;

    private const int Longest = 64;
    private const long FinestUnit = 1_000_000;

    /// <summary>One length: above 0, at most 64, no finer than the finest unit.</summary>
    public static Fault? Within(Fraction length, string where)
    {
        if (length.Denominator > FinestUnit)
        {
            return TooFine(length, where);
        }

        return length > Fraction.Zero && length <= Fraction.Of(Longest)
            ? null
            : new Fault($"{length} is no length", where, $"above 0, at most {Longest}");
    }

    /// <summary>The lengths of a recipe and their common unit.</summary>
    public static Fault? Check(Recipe recipe)
    {
        var rhythm = recipe.Rhythm;
        var tooLong = rhythm.Pattern.Length > Longest;
        return (
                tooLong
                    ? new Fault(
                        Instrument.Bounds.Entries(rhythm.Pattern.Length),
                        "$.rhythm.pattern",
                        "at most 64"
                    )
                    : null
            )
            ?? Instrument.Bounds.Each(
                rhythm.Pattern,
                (length, index) => Within(length, $"$.rhythm.pattern[{index}]")
            )
            ?? CommonUnit(recipe);
    }

    private static Fault? CommonUnit(Recipe recipe)
    {
        var unit = 1L;
        foreach (var (length, where) in Lengths(recipe))
        {
            unit =
                length.Denominator > FinestUnit ? long.MaxValue : WholeNumbers.Lcm(unit, length.Denominator);
            if (unit > FinestUnit)
            {
                return TooFine(length, where);
            }
        }

        return null;
    }

    private static Fault TooFine(Fraction length, string where) =>
        new(
            $"{length} divides time too finely beside the other lengths",
            where,
            "lengths that are multiples of one unit, at least 1/1000000 of a whole note"
        );

    private static IEnumerable<(Fraction Length, string Where)> Lengths(Recipe recipe)
    {
        var rhythm = recipe.Rhythm;
        yield return (rhythm.Meter.Bar, "$.rhythm.meter");
        yield return (rhythm.Pulse, "$.rhythm.notesPerBeat");
        yield return (rhythm.StartOffset, "$.rhythm.startOffset");
        for (var index = 0; index < rhythm.Pattern.Length; index++)
        {
            yield return (rhythm.Pattern[index], $"$.rhythm.pattern[{index}]");
        }

        var durations = recipe.Cell?.Durations ?? [];
        for (var index = 0; index < durations.Length; index++)
        {
            yield return (durations[index] * rhythm.Pulse, $"$.cell.durations[{index}]");
        }

        var entries = recipe.Written?.Entries ?? [];
        for (var index = 0; index < entries.Length; index++)
        {
            yield return (entries[index].Duration, $"$.written[{index}].duration");
        }
    }
}
