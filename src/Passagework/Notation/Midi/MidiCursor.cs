using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Walks through the bytes of a file; the first fault stays, and after it all reads give 0.</summary>
internal ref struct MidiCursor(ReadOnlySpan<byte> bytes)
{
    private const int LongestNumber = 4;
    private readonly ReadOnlySpan<byte> _bytes = bytes;

    /// <summary>The next byte to be read.</summary>
    public int At { get; private set; }

    /// <summary>Reads stop here: the end of the file or of the chunk in hand.</summary>
    public int End { get; set; } = bytes.Length;

    public Fault? Fault { get; private set; }

    public readonly bool IsGoing => Fault is null && At < End;

    public readonly int Left => End - At;

    /// <summary>A place in the file, counted from 0.</summary>
    public static string Place(int at) => string.Create(CultureInfo.InvariantCulture, $"byte {at}");

    public void Fail(string what, int at, string right = "") => Fault ??= new Fault(what, Place(at), right);

    public byte Byte() => Take(1) is [var value] ? value : (byte)0;

    /// <summary>The next byte without going on; 0 at the end.</summary>
    public readonly byte Peek() => At < End ? _bytes[At] : (byte)0;

    /// <summary>Two or four bytes, the highest first.</summary>
    public long Number(int count)
    {
        var number = 0L;
        foreach (var part in Take(count))
        {
            number = (number << 8) | part;
        }

        return number;
    }

    /// <summary>A number of seven bits a byte.</summary>
    public int Variable()
    {
        var begun = At;
        var number = 0;
        for (var i = 0; i < LongestNumber; i++)
        {
            var part = Byte();
            number = (number << 7) | (part & 0x7F);
            if (part < 0x80)
            {
                return number;
            }
        }

        Fail("a number longer than four bytes", begun);
        return 0;
    }

    /// <summary>The next bytes; none when there are fewer.</summary>
    public ReadOnlySpan<byte> Take(long count)
    {
        if (Fault is not null)
        {
            return [];
        }

        if (count > Left)
        {
            Fail(
                End == _bytes.Length ? "the file is cut off" : "an event goes on behind the end of its track",
                At
            );
            return [];
        }

        var taken = _bytes.Slice(At, (int)count);
        At += (int)count;
        return taken;
    }
}
