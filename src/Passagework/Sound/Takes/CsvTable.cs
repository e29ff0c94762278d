using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>A column: its name, and the field of a row; empty where there is nothing to say.</summary>
internal sealed record CsvColumn<T>(string Name, Func<T, object?> Of);

/// <summary>Plain comma-separated tables of numbers and words: no quotes, a head, lines ended by a line feed.</summary>
internal static class CsvTable
{
    private const int MostLines = 200_000;

    public static string Write<T>(ImmutableArray<CsvColumn<T>> columns, IEnumerable<T> rows)
    {
        var text = new StringBuilder().AppendJoin(',', columns.Select(column => column.Name)).Append('\n');
        foreach (var row in rows)
        {
            var fields = columns.Select(column =>
                Convert.ToString(column.Of(row), CultureInfo.InvariantCulture)
            );
            text.AppendJoin(',', fields).Append('\n');
        }

        return text.ToString();
    }

    public static Outcome<ImmutableArray<T>> Read<T>(
        string text,
        ImmutableArray<CsvColumn<T>> columns,
        Func<CsvRow, T> from
    )
    {
        var lines = text.Split('\n');
        var head = string.Join(',', columns.Select(column => column.Name));
        if (lines[0].TrimEnd('\r') != head)
        {
            return new Fault("another head than that of this table", "line 1", head);
        }

        if (lines.Length > MostLines)
        {
            return new Fault($"{lines.Length} lines", Right: $"at most {MostLines}");
        }

        var names = columns
            .Select((column, at) => (column.Name, At: at))
            .ToImmutableDictionary(c => c.Name, c => c.At);
        var faults = new FirstFault();
        var rows = ImmutableArray.CreateBuilder<T>();
        for (var i = 1; i < lines.Length; i++)
        {
            var line = lines[i].TrimEnd('\r');
            if (line.Length > 0)
            {
                rows.Add(from(new CsvRow(line.Split(','), names, $"line {i + 1}", faults)));
            }
        }

        return faults.Fault is { } fault ? fault : rows.ToImmutable();
    }
}

/// <summary>The fields of one line; what can't be read is noted as a fault and read as a default.</summary>
internal sealed record CsvRow(
    string[] Fields,
    ImmutableDictionary<string, int> Names,
    string Where,
    FirstFault Faults
)
{
    public double? Number(string name)
    {
        var text = Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        var read = double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number);
        if (!read || !double.IsFinite(number))
        {
            Refuse(name, $"{Quote.Short(text)} is no number", "");
        }

        return number;
    }

    public int? Whole(string name)
    {
        var number = Number(name);
        if (number is { } value && (value != Math.Floor(value) || Math.Abs(value) > int.MaxValue))
        {
            Refuse(name, $"{Quote.Short(Text(name))} is no whole number", "");
            return 0;
        }

        return (int?)number;
    }

    public T Word<T>(string name, WordList<T> words)
        where T : struct
    {
        if (!words.Read(Text(name)).TryGet(out var value, out var fault))
        {
            Refuse(name, fault.What, fault.Right);
        }

        return value;
    }

    /// <summary>A value that must be there.</summary>
    public T Required<T>(string name, T? value)
        where T : struct
    {
        if (value is null)
        {
            Refuse(name, "nothing stands here", "a number");
        }

        return value ?? default;
    }

    private string Text(string name)
    {
        var at = Names[name];
        if (Fields.Length == Names.Count)
        {
            return Fields[at];
        }

        Faults.Add(new Fault($"{Fields.Length} fields", Where, $"{Names.Count}"));
        return "";
    }

    private void Refuse(string name, string what, string right) =>
        Faults.Add(new Fault(what, $"{Where}, {name}", right));
}
