using System.Collections.Immutable;

namespace Passagework.Exercises.Ideas;

/// <summary>The tempo marks of a clockwork metronome (common practice, from memory).</summary>
internal static class Clockwork
{
    /// <summary>40 to 208 beats a minute: by 2 to 60, by 3 to 72, by 4 to 120, by 6 to 144, by 8 to 208.</summary>
    public static ImmutableArray<int> Marks { get; } =
    [.. By(40, 60, 2), .. By(60, 72, 3), .. By(72, 120, 4), .. By(120, 144, 6), .. By(144, 208, 8), 208];

    private static IEnumerable<int> By(int first, int end, int step)
    {
        for (var mark = first; mark < end; mark += step)
        {
            yield return mark;
        }
    }
}
