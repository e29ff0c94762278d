using System.Collections.Immutable;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>What stands at a bar line.</summary>
internal enum BarEdge
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>A thin line.</summary>
    Single,

    /// <summary>A thin and a thick line.</summary>
    Final,

    /// <summary>Thick and thin line, dots.</summary>
    RepeatStart,

    /// <summary>Dots, thin and thick line.</summary>
    RepeatEnd,
}

/// <summary>The bar lines of a piece. Bars count from 0.</summary>
internal sealed class BarEdges
{
    private readonly ImmutableHashSet<int> _starts;
    private readonly ImmutableHashSet<int> _ends;
    private readonly int _lastBar;
    private readonly BarEdge _last;

    public BarEdges(ScoreOptions options, WrittenScore written)
    {
        var first = written.PickUp ? 0 : 1;
        _starts = [.. options.Repeats.Select(repeat => repeat.First - first)];
        // The ending that leads back carries the sign; the bars of later endings are not played twice.
        _ends = [.. options.Repeats.Select(repeat => repeat.Last - first)];
        _lastBar = written.Bars.Length - 1;
        _last = options.Ends ? BarEdge.Final : BarEdge.Single;
    }

    /// <summary>The dots of a repeat with the gap to the line.</summary>
    public static double Dots => Pens.BarDotGap + MusicFont.Glyph(Glyphs.RepeatDots).Advance;

    /// <summary>What closes a bar.</summary>
    public BarEdge Closing(int bar)
    {
        var plain = bar == _lastBar ? _last : BarEdge.Single;
        return _ends.Contains(bar) ? BarEdge.RepeatEnd : plain;
    }

    /// <summary>What opens a bar.</summary>
    public BarEdge Opening(int bar) => _starts.Contains(bar) ? BarEdge.RepeatStart : BarEdge.None;

    /// <summary>What closes a bar inside a line: a repeat that begins there brings its own thick line.</summary>
    public BarEdge ClosingInLine(int bar) =>
        Closing(bar) == BarEdge.Single && Opening(bar + 1) == BarEdge.RepeatStart
            ? BarEdge.None
            : Closing(bar);

    /// <summary>How wide a sign is.</summary>
    public static double Width(BarEdge edge) =>
        edge switch
        {
            BarEdge.None => 0,
            BarEdge.Single => Pens.ThinBar,
            BarEdge.Final => Pens.ThinBar + Pens.BarGap + Pens.ThickBar,
            _ => Pens.ThinBar + Pens.BarGap + Pens.ThickBar + Dots,
        };
}
