using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>A bar line of a system: its columns, and the repeat dots beside it.</summary>
internal sealed record TabBarLine(int First, int Last, bool DotsBefore, bool DotsAfter);

/// <summary>The strings of one system as columns, with its bar lines.</summary>
/// <param name="Strings">From top to bottom.</param>
/// <param name="Bodies">What stands behind label and bar, without what follows the last bar line.</param>
/// <param name="BarLines">In order.</param>
/// <param name="Times">How often the system is played, by a count such as x4 behind it.</param>
internal sealed record TabGrid(
    ImmutableArray<TabStringLine> Strings,
    ImmutableArray<string> Bodies,
    ImmutableArray<TabBarLine> BarLines,
    int Times
)
{
    /// <summary>Whether repeat dots stand behind the bar that begins the system.</summary>
    public bool StartsRepeat => HasDots(Bodies.Max(body => body.Length - body.TrimStart('|').Length));

    public int Width => Bodies.Max(body => body.Length);

    public static Outcome<TabGrid> Of(ImmutableArray<TabStringLine> strings, TabFindings findings)
    {
        var times = 1;
        var bodies = ImmutableArray.CreateBuilder<string>(strings.Length);
        foreach (var line in strings)
        {
            bodies.Add(TabTail.Cut(line, findings, ref times));
        }

        WarnOfShortLines(strings, bodies, findings);
        var grid = new TabGrid(strings, bodies.ToImmutable(), [], times);
        return grid.FindBarLines(findings).Then<TabGrid>(bars => grid with { BarLines = bars });
    }

    public TabSpot SpotAt(int line, int column) => Strings[line].Line.At(Strings[line].Start + column);

    public char At(int line, int column) => column < Bodies[line].Length ? Bodies[line][column] : '-';

    private static void WarnOfShortLines(
        ImmutableArray<TabStringLine> strings,
        ImmutableArray<string>.Builder bodies,
        TabFindings findings
    )
    {
        var width = bodies.Max(body => body.Length);
        foreach (var (line, body) in strings.Zip(bodies).Where(pair => pair.Second.Length < width))
        {
            var missing = (width - body.Length).ToString(CultureInfo.InvariantCulture);
            findings.Warn(
                $"the line is {missing} columns short, filled up",
                line.Line.At(line.Start + body.Length)
            );
        }
    }

    private Outcome<ImmutableArray<TabBarLine>> FindBarLines(TabFindings findings)
    {
        var runs = Bodies.Select(BarRuns).ToImmutableArray();
        if (Misplaced(runs) is { } misplaced)
        {
            return misplaced;
        }

        var byFirst = runs.SelectMany((list, line) => list.Select(run => (run.First, run.Last, Line: line)))
            .GroupBy(run => run.First)
            .OrderBy(group => group.Key);
        var bars = ImmutableArray.CreateBuilder<TabBarLine>();
        foreach (var group in byFirst)
        {
            var last = group.Max(run => run.Last);
            if (bars.Count > 0 && group.Key <= bars[^1].Last + 1)
            {
                return Unequal(group.First().Line, group.Key);
            }

            if (ReadOne(group.Key, last, [.. group.Select(run => run.Line)], findings) is { } fault)
            {
                return fault;
            }

            bars.Add(new TabBarLine(group.Key, last, HasDots(group.Key - 1), HasDots(last + 1)));
        }

        return bars.ToImmutable();
    }

    // A bar line that only some strings have is one, unless another string has a note there.
    private Fault? ReadOne(int first, int last, HashSet<int> having, TabFindings findings)
    {
        if (having.Count == Bodies.Length)
        {
            return null;
        }

        for (var line = 0; line < Bodies.Length; line++)
        {
            var c = At(line, first);
            if (!having.Contains(line) && !TabStringLine.IsFiller(c) && c is not (':' or '*'))
            {
                return Unequal(line, first);
            }
        }

        findings.Warn("a bar line that only some strings have", SpotAt(having.Min(), last));
        return null;
    }

    // Strings with the same number of bar lines must have them in the same columns.
    private Fault? Misplaced(ImmutableArray<List<(int First, int Last)>> runs)
    {
        for (var line = 1; line < runs.Length; line++)
        {
            if (runs[line].Count == runs[0].Count)
            {
                var bar = runs[line]
                    .Zip(runs[0])
                    .ToList()
                    .FindIndex(pair => pair.First.First != pair.Second.First);
                if (bar >= 0)
                {
                    return Unequal(line, runs[line][bar].First);
                }
            }
        }

        return null;
    }

    private Fault Unequal(int line, int column) =>
        new(
            "bars of unequal width: a bar line that stands in another column than on the other strings",
            SpotAt(line, column).ToString(),
            "bar lines under one another on all strings"
        );

    // Runs of bars in one line; one that begins the body belongs to the label.
    private static List<(int First, int Last)> BarRuns(string body)
    {
        var runs = new List<(int First, int Last)>();
        for (var at = 0; at < body.Length; at++)
        {
            var first = at;
            while (at < body.Length && body[at] == '|')
            {
                at++;
            }

            if (at > first && first > 0)
            {
                runs.Add((first, at - 1));
            }
        }

        return runs;
    }

    private bool HasDots(int column) =>
        Enumerable.Range(0, Bodies.Length).Any(line => At(line, column) is ':' or '*');
}
