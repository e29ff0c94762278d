using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Passagework.Foundation;

/// <summary>Turns bytes into a JSON document, refusing what is too large, too deep or broken.</summary>
internal static class JsonText
{
    /// <summary>A file holds at most this many bytes (assumed; the longest line allowed needs less).</summary>
    public const int MostBytes = 1 << 20;

    private const int MostLevels = 16;

    /// <summary>The document; a fault names line and column.</summary>
    public static Outcome<JsonDocument> Parse(ReadOnlySpan<byte> text)
    {
        if (text.Length > MostBytes)
        {
            return TooLong(text.Length);
        }

        var json = text.StartsWith("\uFEFF"u8) ? text[3..].ToArray() : text.ToArray();
        if (!Utf8.IsValid(json))
        {
            return new Fault("the file is not text in UTF-8");
        }

        try
        {
            var options = new JsonDocumentOptions { MaxDepth = MostLevels, AllowDuplicateProperties = false };
            return BrokenEscape(json) ?? (Outcome<JsonDocument>)JsonDocument.Parse(json, options);
        }
        catch (JsonException broken)
        {
            return Explain(json, broken);
        }
    }

    /// <summary>What a reader makes of a text, or the first fault that it noted.</summary>
    public static Outcome<T> Read<T>(string text, Func<JsonCursor, T> read)
    {
        if (!Parse(Encoding.UTF8.GetBytes(text)).TryGet(out var document, out var fault))
        {
            return fault;
        }

        using (document)
        {
            var faults = new FirstFault();
            var value = read(new JsonCursor(document.RootElement, "$", faults));
            return faults.Fault is { } first ? first : value;
        }
    }

    /// <summary>The message for a file above the limit.</summary>
    public static Fault TooLong(long length) =>
        new(
            string.Create(
                System.Globalization.CultureInfo.InvariantCulture,
                $"the file has {length} bytes, too many for a recipe"
            ),
            Right: "at most 1048576 bytes"
        );

    /// <summary>Half of a surrogate pair, escaped, is legal JSON but no text.</summary>
    private static Fault? BrokenEscape(byte[] json)
    {
        var reader = new Utf8JsonReader(json, new JsonReaderOptions { MaxDepth = MostLevels });
        while (reader.Read())
        {
            if (
                reader.TokenType is JsonTokenType.String or JsonTokenType.PropertyName
                && reader.ValueIsEscaped
            )
            {
                try
                {
                    reader.GetString();
                }
                catch (InvalidOperationException)
                {
                    return new Fault(
                        "half a surrogate pair in a text",
                        PlaceOf(json, reader.TokenStartIndex)
                    );
                }
            }
        }

        return null;
    }

    private static Fault Explain(byte[] json, JsonException broken)
    {
        var place = "";
        if (broken.LineNumber is { } line && broken.BytePositionInLine is { } column)
        {
            place = PlaceOf(json, LineStart(json, line) + column);
        }

        // The parser's first sentence says what it met; its own place is left out, ours counts from 1.
        var end = broken.Message.IndexOf(" LineNumber:", StringComparison.Ordinal);
        var sentence = (end < 0 ? broken.Message : broken.Message[..end]).TrimEnd('.', ' ');
        var what = sentence.Contains("depth", StringComparison.Ordinal)
            ? $"nested too deeply, more than {MostLevels} levels"
            : $"not JSON: {OneLine(sentence)}";
        return new Fault(what, place);
    }

    private static string OneLine(string sentence) =>
        string.Concat(sentence.Take(200).Select(letter => char.IsControl(letter) ? '·' : letter));

    private static long LineStart(byte[] json, long line)
    {
        var start = 0;
        for (var passed = 0L; passed < line; passed++)
        {
            var end = json.AsSpan(start).IndexOf((byte)'\n');
            if (end < 0)
            {
                break;
            }

            start += end + 1;
        }

        return start;
    }

    private static string PlaceOf(byte[] json, long offset)
    {
        var before = json.AsSpan(0, (int)Math.Min(offset, json.Length));
        var line = before.Count((byte)'\n') + 1;
        var column = Encoding.UTF8.GetCharCount(before[(before.LastIndexOf((byte)'\n') + 1)..]) + 1;
        return string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"line {line}, column {column}"
        );
    }
}
