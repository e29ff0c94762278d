using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;

namespace Passagework.Foundation;

/// <summary>One value of a JSON file, with its path for messages.</summary>
/// <remarks>A value of the wrong kind is noted as a fault and read as a default.</remarks>
internal readonly record struct JsonCursor(JsonElement Element, string Path, FirstFault Faults)
{
    public bool IsText => Element.ValueKind == JsonValueKind.String;

    public bool IsList => Element.ValueKind == JsonValueKind.Array;

    public bool IsNull => Element.ValueKind == JsonValueKind.Null;

    /// <summary>Notes that this value is wrong.</summary>
    public void Refuse(string what, string right = "") => Faults.Add(new Fault(what, Path, right));

    /// <summary>Passes a fault of this value's meaning along, under its path.</summary>
    public T? Take<T>(Outcome<T> outcome)
    {
        if (!outcome.TryGet(out var value, out var fault))
        {
            Faults.Add(fault.At(Path));
        }

        return value;
    }

    /// <summary>A text.</summary>
    public string Text()
    {
        if (IsText)
        {
            return Element.GetString() ?? "";
        }

        Refuse($"{Seen} is no text");
        return "";
    }

    /// <summary>A whole number.</summary>
    public int Whole()
    {
        if (Element.ValueKind == JsonValueKind.Number && Element.TryGetInt32(out var number))
        {
            return number;
        }

        Refuse($"{Seen} is no whole number");
        return 0;
    }

    /// <summary>A finite number.</summary>
    public double Number()
    {
        if (
            Element.ValueKind == JsonValueKind.Number
            && Element.TryGetDouble(out var number)
            && double.IsFinite(number)
        )
        {
            return number;
        }

        Refuse($"{Seen} is no number");
        return 0;
    }

    /// <summary>true or false.</summary>
    public bool Truth()
    {
        if (Element.ValueKind is JsonValueKind.True or JsonValueKind.False)
        {
            return Element.GetBoolean();
        }

        Refuse($"{Seen} is neither true nor false");
        return false;
    }

    /// <summary>An exact number: a fraction in quotes such as "2/3", or a number of at most 9 decimals.</summary>
    public Fraction Exact()
    {
        var read = Element.ValueKind switch
        {
            JsonValueKind.String => Fraction.TryParse(Element.GetString(), out var fraction)
                ? fraction
                : null,
            JsonValueKind.Number => Decimal(Element.GetRawText()),
            _ => (Fraction?)null,
        };
        if (read is null)
        {
            Refuse($"{Seen} is no fraction", "such as \"1/8\"");
        }

        return read ?? Fraction.Zero;
    }

    /// <summary>One of the words of a list.</summary>
    public T Word<T>(WordList<T> words)
        where T : struct => Take(words.Read(Text()));

    /// <summary>The entries of a list.</summary>
    public ImmutableArray<JsonCursor> Items()
    {
        if (!IsList)
        {
            Refuse($"{Seen} is no list");
            return [];
        }

        var items = ImmutableArray.CreateBuilder<JsonCursor>();
        foreach (var item in Element.EnumerateArray())
        {
            items.Add(new JsonCursor(item, $"{Path}[{items.Count}]", Faults));
        }

        return items.ToImmutable();
    }

    /// <summary>The entries of a list, each read in the same way.</summary>
    public ImmutableArray<T> List<T>(Func<JsonCursor, T> read) => [.. Items().Select(read)];

    /// <summary>The value as it was written, cut for a message.</summary>
    public string Seen =>
        Element.ValueKind switch
        {
            JsonValueKind.Object => "an object",
            JsonValueKind.Array => "a list",
            JsonValueKind.String => Quote.Short(Element.GetString() ?? ""),
            JsonValueKind.Null => "null",
            _ => Quote.Short(Element.GetRawText()).Trim('\''),
        };

    private static Fraction? Decimal(string raw)
    {
        var point = raw.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : raw.Length - point - 1;
        if (raw.Length > 15 || decimals > 9)
        {
            return null;
        }

        var digits = raw.Replace(".", "", StringComparison.Ordinal);
        var whole = long.TryParse(
            digits,
            NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out var number
        );
        return whole ? Fraction.Of(number, (long)Math.Pow(10, decimals)) : null;
    }
}
