using System.Buffers.Binary;

namespace Passagework.Notation;

/// <summary>The bytes of one track, event after event; uses running status.</summary>
internal sealed class MidiTrackBytes
{
    private const int LongestDelta = 0x0FFF_FFFF;
    private const int NoStatus = -1;
    private readonly List<byte> _bytes = [];
    private long _time;
    private int _status = NoStatus;

    /// <summary>An event that plays nothing: its kind and its data. It ends running status.</summary>
    public void Meta(long at, byte kind, ReadOnlySpan<byte> data)
    {
        GoTo(at);
        _bytes.Add(0xFF);
        _bytes.Add(kind);
        Length(data.Length);
        _bytes.AddRange(data);
        _status = NoStatus;
    }

    /// <summary>A channel event: status and one or two data bytes.</summary>
    public void Channel(long at, int status, params ReadOnlySpan<byte> data)
    {
        GoTo(at);
        if (status != _status)
        {
            _bytes.Add((byte)status);
            _status = status;
        }

        _bytes.AddRange(data);
    }

    /// <summary>A whole file.</summary>
    /// <param name="format">0 or 1.</param>
    /// <param name="division">Ticks per quarter note.</param>
    /// <param name="tracks">Each ends with its end-of-track event.</param>
    public static byte[] File(int format, int division, params ReadOnlySpan<MidiTrackBytes> tracks)
    {
        var file = new List<byte>();
        Chunk(file, "MThd"u8, 6);
        Two(file, format);
        Two(file, tracks.Length);
        Two(file, division);
        foreach (var track in tracks)
        {
            Chunk(file, "MTrk"u8, track._bytes.Count);
            file.AddRange(track._bytes);
        }

        return [.. file];
    }

    private static void Chunk(List<byte> file, ReadOnlySpan<byte> name, int length)
    {
        Span<byte> four = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(four, length);
        file.AddRange(name);
        file.AddRange(four);
    }

    private static void Two(List<byte> file, int value)
    {
        file.Add((byte)(value >> 8));
        file.Add((byte)(value & 0xFF));
    }

    // A silence longer than one delta can say is cut by empty texts.
    private void GoTo(long at)
    {
        while (at - _time > LongestDelta)
        {
            _time += LongestDelta;
            Length(LongestDelta);
            _bytes.AddRange([0xFF, 0x01, 0x00]);
            _status = NoStatus;
        }

        Length((int)(at - _time));
        _time = at;
    }

    // Seven bits a byte, the highest first; all but the last have the top bit set.
    private void Length(int value)
    {
        for (var shift = 21; shift > 0; shift -= 7)
        {
            if (value >> shift > 0)
            {
                _bytes.Add((byte)(0x80 | ((value >> shift) & 0x7F)));
            }
        }

        _bytes.Add((byte)(value & 0x7F));
    }
}
