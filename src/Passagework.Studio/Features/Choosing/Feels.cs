using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Rhythm;

namespace Passagework.Studio.Features.Choosing;

/// <summary>The usual feels by the keys under which questions keep them.</summary>
internal static class Feels
{
    /// <summary>Key, name and feel, in the engine's order.</summary>
    public static ImmutableArray<(string Key, string Name, Feel Feel)> All { get; } =
    [.. Feel.Usual.Select(feel => (KeyOf(feel), FeelNames.Of(feel, new RhythmPlan().Meter), feel))];

    /// <summary>The name of a feel; null where there is no such key.</summary>
    public static string? NameOf(string? key) =>
        All.Where(feel => feel.Key == key).Select(feel => feel.Name).FirstOrDefault();

    private static string KeyOf(Feel feel) =>
        feel.NotesPerBeat.ToString(CultureInfo.InvariantCulture) + (feel.Swing.IsStraight ? "" : "-swung");
}
