using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>The strings of one system and where they stand among the lines.</summary>
/// <param name="Strings">From top to bottom.</param>
/// <param name="First">Index of the first line.</param>
/// <param name="After">Index of the line after the last.</param>
internal sealed record TabBlock(ImmutableArray<TabStringLine> Strings, int First, int After);

/// <summary>Finds the systems: 4 to 8 strings on consecutive lines, the same number everywhere.</summary>
internal static class TabBlocks
{
    private const int Fewest = 4;
    private const int Most = 8;
    private const int Usual = 6;

    public static Outcome<ImmutableArray<TabBlock>> Of(
        ImmutableArray<TabLine> lines,
        List<TabStringLine?> strings,
        int? expected,
        TabFindings findings
    )
    {
        var blocks = ImmutableArray.CreateBuilder<TabBlock>();
        TabStringLine? stray = null;
        for (var at = 0; at < lines.Length; at++)
        {
            var from = at;
            while (at < lines.Length && strings[at] is not null)
            {
                at++;
            }

            ImmutableArray<TabStringLine> run = [.. strings[from..at].OfType<TabStringLine>()];
            if (run.Length >= Fewest)
            {
                if (!Split(run, expected).TryGet(out var parts, out var fault))
                {
                    return fault;
                }

                blocks.AddRange(Place(parts, from, run.Length));
            }
            else if (!run.IsEmpty)
            {
                stray ??= run[0];
                findings.Keep(new TabMark(TabMarkKind.Text, run[0].Line.Text.Trim(), run[0].Line.Number, 1));
                findings.Warn($"only {run.Length} lines of tab in a row, left out", run[0].Line.At(0));
            }
        }

        return SameCount(blocks.ToImmutable(), expected, stray);
    }

    private static Outcome<ImmutableArray<TabBlock>> SameCount(
        ImmutableArray<TabBlock> blocks,
        int? expected,
        TabStringLine? stray
    )
    {
        if (blocks.IsEmpty)
        {
            return stray is null
                ? new Fault("no tab found", "", "4 to 8 lines of strings, one under the other")
                : new Fault(
                    "fewer than 4 lines of tab in a row",
                    stray.Line.At(0).ToString(),
                    "4 to 8 strings"
                );
        }

        var count = expected ?? blocks[0].Strings.Length;
        var odd = blocks.FirstOrDefault(block => block.Strings.Length != count);
        return odd is null
            ? blocks
            : new Fault(
                $"a system of {odd.Strings.Length} strings",
                odd.Strings[0].Line.At(0).ToString(),
                $"{count} strings as in the {(expected is null ? "first system" : "tuning")}"
            );
    }

    private static IEnumerable<TabBlock> Place(
        ImmutableArray<ImmutableArray<TabStringLine>> parts,
        int from,
        int length
    )
    {
        var lines = length / parts.Length;
        return parts.Select((part, i) => new TabBlock(part, from + (i * lines), from + ((i + 1) * lines)));
    }

    // Systems that stand directly under one another, or one whose long lines were wrapped each by itself.
    private static Outcome<ImmutableArray<ImmutableArray<TabStringLine>>> Split(
        ImmutableArray<TabStringLine> run,
        int? expected
    )
    {
        if (IsWrapped(run))
        {
            ImmutableArray<TabStringLine> joined = [.. run.Chunk(2).Select(pair => Join(pair[0], pair[1]))];
            return ImmutableArray.Create(joined);
        }

        return LinesOfOne(run, expected) is { } size
            ? run.Chunk(size).Select(part => part.ToImmutableArray()).ToImmutableArray()
            : new Fault(
                $"{run.Length} lines of tab in a row",
                run[0].Line.At(0).ToString(),
                "systems of 4 to 8 strings"
            );
    }

    private static int? LinesOfOne(ImmutableArray<TabStringLine> run, int? expected)
    {
        if (expected is { } known && run.Length % known == 0)
        {
            return known;
        }

        if (RepeatOfLabels(run) is { } period)
        {
            return period;
        }

        if (run.Length <= Most)
        {
            return run.Length;
        }

        return run.Length % Usual == 0 ? Usual : null;
    }

    private static int? RepeatOfLabels(ImmutableArray<TabStringLine> run)
    {
        for (var period = Fewest; period <= Most; period++)
        {
            var repeats = run.Length > period && run.Length % period == 0;
            if (
                repeats
                && run.Skip(period).Zip(run).All(pair => pair.First.Label is { } a && a == pair.Second.Label)
            )
            {
                return period;
            }
        }

        return null;
    }

    private static bool IsWrapped(ImmutableArray<TabStringLine> run) =>
        run.Length % 2 == 0
        && run.Length / 2 is >= Fewest and <= Most
        && run.Chunk(2)
            .All(pair =>
                pair[0].HasBar
                && !pair[1].HasBar
                && pair[1].Label is null
                && pair[1].Line.Text.Length < pair[0].Line.Text.Length
            );

    private static TabStringLine Join(TabStringLine first, TabStringLine second) =>
        first with
        {
            Line = first.Line with { Text = first.Line.Text + second.Line.Text },
        };
}
