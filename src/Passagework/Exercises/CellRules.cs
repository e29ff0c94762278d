using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>The ranges of a cell's values.</summary>
internal static class CellRules
{
    private const int LongestCell = 16;
    private const int FarthestOffset = 999;

    public static Fault? Check(Cell cell)
    {
        var length = cell.Offsets.Length;
        return Bounds.Count(length, 1, LongestCell, "$.cell.offsets")
            ?? (
                cell.Offsets.All(offset => offset is null)
                    ? new Fault("the cell holds only rests", "$.cell.offsets", "at least one note")
                    : null
            )
            ?? Bounds.Each(
                cell.Offsets,
                (offset, index) =>
                    Bounds.Within(offset ?? 0, -FarthestOffset, FarthestOffset, $"$.cell.offsets[{index}]")
            )
            ?? Entries(cell.Accents, length, "$.cell.accents")
            ?? Entries(cell.Slurs.Entries, length, "$.cell.slurs")
            ?? Durations(cell.Durations, length);
    }

    private static Fault? Entries(ImmutableArray<int> entries, int length, string path) =>
        Bounds.Each(entries, (entry, index) => Bounds.Within(entry, 0, length - 1, $"{path}[{index}]"))
        ?? (
            entries.Distinct().Count() == entries.Length
                ? null
                : new Fault("names an entry twice", path, "each entry of the cell once")
        );

    private static Fault? Durations(ImmutableArray<Fraction> durations, int length) =>
        durations.IsEmpty
            ? null
            : Bounds.Count(durations.Length, length, length, "$.cell.durations")
                ?? Bounds.Each(
                    durations,
                    (duration, index) => LengthRules.Within(duration, $"$.cell.durations[{index}]")
                );
}
