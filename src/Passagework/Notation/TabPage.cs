using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>One system: its strings from top to bottom and the rows that stand beside them.</summary>
internal sealed record TabSystemText(
    ImmutableArray<TabStringLine> Strings,
    ImmutableArray<TabLine> Above,
    ImmutableArray<TabLine> Below
);

/// <summary>A text taken apart: what is header, what are systems, and which rows belong to which system.</summary>
internal sealed record TabPage(TabHeader Header, ImmutableArray<TabSystemText> Systems)
{
    public static Outcome<TabPage> Of(ImmutableArray<TabLine> lines, TabFindings findings)
    {
        var header = new TabHeader(findings);
        var strings = lines
            .Select(line => TabHeader.IsHeaderLine(line.Text) ? null : TabStringLine.Of(line))
            .ToList();
        var fault = lines
            .Where((_, at) => strings[at] is null)
            .Select(header.Read)
            .FirstOrDefault(f => f is not null);
        return fault
            ?? TabBlocks
                .Of(lines, strings, header.Tuning?.StringCount, findings)
                .Then<TabPage>(blocks => new TabPage(header, WithRows(lines, blocks, header, findings)));
    }

    /// <summary>Whether a line of text is neither header nor string.</summary>
    public static bool IsPlainText(string line) =>
        !TabHeader.IsHeaderLine(line) && TabStringLine.Of(new TabLine(1, line)) is null;

    // Rows are the lines next to a system without an empty line between. Between two systems that have none, all
    // belong to the lower one but fingers, which stand below.
    private static ImmutableArray<TabSystemText> WithRows(
        ImmutableArray<TabLine> lines,
        ImmutableArray<TabBlock> blocks,
        TabHeader header,
        TabFindings findings
    )
    {
        var systems = ImmutableArray.CreateBuilder<TabSystemText>(blocks.Length);
        var above = Gap(lines, 0, blocks[0].First);
        KeepText(above.Apart, header, findings);
        for (var i = 0; i < blocks.Length; i++)
        {
            var next = i + 1 < blocks.Length ? blocks[i + 1].First : lines.Length;
            var gap = Gap(lines, blocks[i].After, next);
            var isLast = i + 1 == blocks.Length;
            var below = isLast ? [.. gap.Upper, .. gap.Lower] : gap.Upper;
            systems.Add(new TabSystemText(blocks[i].Strings, above.Lower, below));
            KeepText(gap.Apart, header, findings);
            above = gap;
        }

        return systems.MoveToImmutable();
    }

    private static (
        ImmutableArray<TabLine> Upper,
        ImmutableArray<TabLine> Apart,
        ImmutableArray<TabLine> Lower
    ) Gap(ImmutableArray<TabLine> lines, int from, int to)
    {
        var gap = lines[from..to];
        var firstEmpty = gap.ToList().FindIndex(IsEmpty);
        if (firstEmpty < 0)
        {
            var rows = gap.Where(IsRow)
                .ToLookup(line => from > 0 && TabRowText.LabelOf(line.Text) == TabRows.Finger);
            return ([.. rows[true]], [], [.. rows[false]]);
        }

        var lastEmpty = gap.ToList().FindLastIndex(IsEmpty);
        var upper = from > 0 ? gap[..firstEmpty] : [];
        var apart = gap[upper.Length..lastEmpty];
        var lower = to < lines.Length ? gap[lastEmpty..] : [];
        if (to == lines.Length)
        {
            apart = gap[upper.Length..];
        }

        return ([.. upper.Where(IsRow)], [.. apart.Where(IsRow)], [.. lower.Where(IsRow)]);
    }

    private static void KeepText(ImmutableArray<TabLine> lines, TabHeader header, TabFindings findings)
    {
        foreach (var line in lines)
        {
            KeepText(line, header, findings);
        }
    }

    /// <summary>A line that is no row: the title, when it is the first, else kept.</summary>
    public static void KeepText(TabLine line, TabHeader header, TabFindings findings)
    {
        if (header.Title is null)
        {
            header.Title = line.Text.Trim();
        }
        else
        {
            findings.Keep(new TabMark(TabMarkKind.Text, line.Text.Trim(), line.Number, 1));
        }
    }

    private static bool IsRow(TabLine line) => !IsEmpty(line) && !TabHeader.IsHeaderLine(line.Text);

    private static bool IsEmpty(TabLine line) => string.IsNullOrWhiteSpace(line.Text);
}
