using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>Checks that values lie where they may lie; null when they do.</summary>
internal static class Bounds
{
    /// <summary>A whole number between two limits, both included.</summary>
    public static Fault? Within(int value, int least, int most, string where) =>
        value >= least && value <= most
            ? null
            : new Fault($"{value} is out of range", where, $"{least} to {most}");

    /// <summary>A list with a number of entries between two limits, both included.</summary>
    public static Fault? Count(int count, int least, int most, string where) =>
        count >= least && count <= most
            ? null
            : new Fault(Entries(count), where, least == most ? $"{least}" : $"{least} to {most}");

    /// <summary>How long a list is, in words.</summary>
    public static string Entries(int count) => count == 1 ? "has 1 entry" : $"has {count} entries";

    /// <summary>The first fault among the entries of a list.</summary>
    public static Fault? Each<T>(IEnumerable<T> entries, Func<T, int, Fault?> check) =>
        entries.Select(check).FirstOrDefault(fault => fault is not null);
}
