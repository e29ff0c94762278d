using System.Collections.Immutable;
using System.Globalization;

namespace Passagework.Notation;

/// <summary>Collects warnings and kept signs while a tab is read, with bounded memory.</summary>
internal sealed class TabFindings
{
    private const int MostWarnings = 100;
    private const int MostKept = 1000;
    private readonly List<TabWarning> _warnings = [];
    private readonly List<TabMark> _kept = [];
    private int _unlisted;

    public IReadOnlyList<TabMark> Kept => _kept;

    public void Warn(string text, TabSpot spot)
    {
        if (_warnings.Count < MostWarnings)
        {
            _warnings.Add(new TabWarning(text, spot.Line, spot.Column));
        }
        else
        {
            _unlisted++;
        }
    }

    public void Keep(TabMark mark)
    {
        if (_kept.Count < MostKept)
        {
            _kept.Add(mark);
        }
    }

    public ImmutableArray<TabWarning> Warnings()
    {
        var sorted = _warnings.OrderBy(warning => (warning.Line, warning.Column)).ToImmutableArray();
        if (_unlisted == 0)
        {
            return sorted;
        }

        var more = string.Create(CultureInfo.InvariantCulture, $"and {_unlisted} more warnings");
        return sorted.Add(new TabWarning(more, sorted[^1].Line, sorted[^1].Column));
    }
}

/// <summary>A place in the text, both counted from 1.</summary>
internal readonly record struct TabSpot(int Line, int Column)
{
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"line {Line}, column {Column}");
}
