using System.Text;

namespace Passagework.Bench.Fuzz;

/// <summary>Spoils good inputs in many small ways; the same seed gives the same series.</summary>
internal sealed class Mutator
{
    private const int MostChanges = 6;
    private const int LongestInput = 1 << 16;
    private static readonly string[] TextTokens =
    [
        "0",
        "-1",
        "99",
        "999999999999999999999",
        "1/0",
        "(1/9223372036854775807)",
        "|",
        "||:",
        ":|",
        "x99",
        "(",
        ")",
        "[",
        "]",
        "{",
        "}",
        "\"",
        "\\",
        "/",
        "\n",
        "\r\n",
        "\t",
        "\0",
        "12",
        "-----",
        "e|",
        "null",
        "h",
        "7b9r7",
        "♯",
        "🎸",
        "Tuning: ",
        "Meter: 4/4\n",
        "Rhythm  ",
    ];

    // Heads of chunks, lengths that lie, events of MIDI files.
    private static readonly string[] ByteTokens =
    [
        "MThd\0\0\0\u0006",
        "MTrk\0\0\0\u0010",
        "MTrkÿÿÿÿ",
        "ÿÿÿ\u007f",
        "\0ÿ/\0",
        "\0ÿQ\u0003\0\0\0",
        "\0ÿX\u0004\u0003\u0003\u0018\b",
        "\0ÿY\u0002\u0003\0",
        "\0\u0090@P",
        "\u0083`@\0",
        "\0\u0099$P",
        "\0ð\u0002A÷",
        "\0ÿ\u0001\u0028passagework: swing 2/3, notes per beat 2, exact",
        "\0\0",
        "ÿ",
    ];

    private readonly Random _random;
    private readonly Encoding _letters;
    private readonly byte[][] _tokens;
    private readonly Action<byte[]>? _mend;
    private readonly Func<string, Random, string>? _spoil;
    private readonly byte[][] _seeds;

    public Mutator(FuzzTarget target, int seed)
    {
        _random = new Random(seed);
        _letters = target.Letters;
        _mend = target.Mend;
        _spoil = target.Spoil;
        _seeds = [.. target.Seeds().Select(_letters.GetBytes)];
        var tokens = target.IsText ? TextTokens : ByteTokens;
        _tokens = [.. tokens.Select(_letters.GetBytes)];
    }

    /// <summary>The next spoiled input; bytes that are no longer UTF-8 become U+FFFD as they would in a file.</summary>
    public string Next()
    {
        if (_spoil is not null && _random.Next(4) > 0)
        {
            return _spoil(_letters.GetString(Any(_seeds)), _random);
        }

        var bytes = Any(_seeds).ToList();
        var changes = 1 + _random.Next(MostChanges);
        for (var i = 0; i < changes && bytes.Count is > 0 and < LongestInput; i++)
        {
            Change(bytes);
        }

        byte[] spoiled = [.. bytes];
        if (_mend is not null && _random.Next(4) > 0)
        {
            _mend(spoiled);
        }

        return _letters.GetString(spoiled);
    }

    private void Change(List<byte> bytes)
    {
        var at = _random.Next(bytes.Count);
        switch (_random.Next(9))
        {
            case 0:
                bytes[at] ^= (byte)(1 << _random.Next(8));
                break;
            case 1:
                bytes[at] = (byte)_random.Next(32, 127);
                break;
            case 2:
                bytes.InsertRange(at, Any(_tokens));
                break;
            case 3:
                bytes.RemoveRange(at, Math.Min(bytes.Count - at, 1 + _random.Next(12)));
                break;
            case 4:
                CopyLine(bytes, at, remove: true);
                break;
            case 5:
                CopyLine(bytes, at, remove: false);
                break;
            case 6:
                Splice(bytes, at);
                break;
            case 7:
                Swap(bytes, at, _random.Next(bytes.Count));
                break;
            default:
                RepeatChunk(bytes, at);
                break;
        }
    }

    // Takes the line around a byte out or writes it twice.
    private static void CopyLine(List<byte> bytes, int at, bool remove)
    {
        var start = bytes.LastIndexOf((byte)'\n', at) + 1;
        var end = bytes.IndexOf((byte)'\n', at);
        var count = (end < 0 ? bytes.Count : end + 1) - start;
        if (count <= 0)
        {
            return;
        }

        if (remove)
        {
            bytes.RemoveRange(start, count);
        }
        else
        {
            bytes.InsertRange(start, bytes.GetRange(start, count));
        }
    }

    // Goes on with the end of another input.
    private void Splice(List<byte> bytes, int at)
    {
        var other = Any(_seeds);
        bytes.RemoveRange(at, bytes.Count - at);
        bytes.AddRange(other[_random.Next(other.Length)..]);
    }

    private static void Swap(List<byte> bytes, int a, int b) => (bytes[a], bytes[b]) = (bytes[b], bytes[a]);

    private void RepeatChunk(List<byte> bytes, int at)
    {
        var chunk = bytes.GetRange(at, Math.Min(bytes.Count - at, 1 + _random.Next(20)));
        for (var times = _random.Next(30); times > 0; times--)
        {
            bytes.InsertRange(at, chunk);
        }
    }

    private byte[] Any(byte[][] choices) => choices[_random.Next(choices.Length)];
}
