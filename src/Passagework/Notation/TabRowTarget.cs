using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>The events of one system by column, for rows whose signs must stand in their columns.</summary>
internal sealed class TabRowTarget
{
    private readonly int _start;
    private readonly List<TabReadEvent> _events;
    private readonly TabFindings _findings;
    private readonly Dictionary<int, TabReadEvent> _byColumn = [];

    public TabRowTarget(int start, List<TabReadEvent> events, TabFindings findings)
    {
        _start = start;
        _events = events;
        _findings = findings;
        EventCount = events.Count;
        foreach (var note in events)
        {
            for (var column = note.Column; column <= note.End; column++)
            {
                _byColumn[column] = note;
            }
        }
    }

    /// <summary>Notes and dead strokes, rests not counted.</summary>
    public int EventCount { get; }

    public IEnumerable<TabReadEvent> Notes => _events.Where(note => note.Place is not null);

    public bool HasGroups { get; set; }

    /// <summary>What the row of groups says at a note.</summary>
    public Dictionary<TabReadEvent, int?> GroupSigns { get; } = [];

    public TabReadEvent? At(int textColumn) => _byColumn.GetValueOrDefault(textColumn - _start);

    /// <summary>Hands each sign to the event in its column; when one has none, the whole row is ignored with a warning.</summary>
    public bool Apply<T>(TabLine line, List<TabSign<T>> signs, Action<TabReadEvent, T> apply)
    {
        foreach (var sign in signs)
        {
            if (At(sign.Column) is null)
            {
                Ignore(line, "has a sign that stands over no note", sign.Column);
                return false;
            }
        }

        signs.ForEach(sign => apply(At(sign.Column)!, sign.Value)); // every column was looked up above
        return true;
    }

    public void AddRest(TabLine line, int textColumn, Fraction length)
    {
        var column = textColumn - _start;
        _events.Add(
            new TabReadEvent
            {
                Column = column,
                End = column,
                Spot = line.At(textColumn),
                Length = length,
            }
        );
    }

    public void Ignore(TabLine line, string why, int column = 0) =>
        _findings.Warn($"the row {why}; it is ignored", line.At(column));
}
