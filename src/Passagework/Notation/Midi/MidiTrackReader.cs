using System.Globalization;
using System.Text;
using System.Text.Unicode;

namespace Passagework.Notation;

/// <summary>Reads the events of one track and pairs the ends of notes with their beginnings, first in, first out.</summary>
internal sealed class MidiTrackReader(MidiFindings findings, int number)
{
    private const int Channels = 16;
    private const int Keys = 128;
    private const int LongestName = 200;
    private readonly MidiTrackData _track = new();
    private readonly Queue<int>?[] _sounding = new Queue<int>?[Channels * Keys];
    private long _tick;
    private int _status;
    private bool _statusEnded;
    private bool _warnedOfStatus;
    private bool _ended;

    public MidiTrackData Read(ref MidiCursor cursor)
    {
        while (cursor.IsGoing && !_ended)
        {
            _tick += cursor.Variable();
            ReadEvent(ref cursor);
        }

        if (cursor.Fault is null)
        {
            Close(ref cursor);
        }

        return _track;
    }

    private void ReadEvent(ref MidiCursor cursor)
    {
        var at = cursor.At;
        if (cursor.Left > 0 && cursor.Peek() < 0x80)
        {
            GoOnWithStatus(ref cursor, at);
        }
        else
        {
            var status = cursor.Byte();
            if (status >= 0xF0)
            {
                ReadOther(ref cursor, status, at);
                return;
            }

            _status = status;
            _statusEnded = false;
        }

        if (cursor.Fault is null)
        {
            ReadChannelEvent(ref cursor);
        }
    }

    private void GoOnWithStatus(ref MidiCursor cursor, int at)
    {
        if (_status == 0)
        {
            cursor.Fail("data without a status byte before it", at, "an event");
        }
        else if (_statusEnded && !_warnedOfStatus)
        {
            _warnedOfStatus = true;
            Warn("running status goes on behind an event that ends it", at);
        }
    }

    private void ReadChannelEvent(ref MidiCursor cursor)
    {
        var kind = _status >> 4;
        var at = cursor.At;
        var first = cursor.Byte();
        var second = kind is 0xC or 0xD ? (byte)0 : cursor.Byte();
        if (first > 0x7F || second > 0x7F)
        {
            cursor.Fail(
                "a status byte in the middle of an event",
                first > 0x7F ? at : at + 1,
                "data below 128"
            );
        }

        if (cursor.Fault is not null || kind is not (0x8 or 0x9))
        {
            return;
        }

        var slot = ((_status & 0xF) * Keys) + first;
        if (kind == 0x9 && second > 0)
        {
            (_sounding[slot] ??= new Queue<int>()).Enqueue(_track.Sounds.Count);
            _track.Sounds.Add(new MidiSound(_tick, long.MaxValue, first, (byte)(_status & 0xF)));
        }
        else if (_sounding[slot]?.TryDequeue(out var index) == true)
        {
            _track.Sounds[index] = _track.Sounds[index] with { End = _tick };
        }
    }

    private void ReadOther(ref MidiCursor cursor, byte status, int at)
    {
        _statusEnded = true;
        if (status is not (0xF0 or 0xF7 or 0xFF))
        {
            cursor.Fail(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the status byte {status:X2} has no place in a file"
                ),
                at,
                "a channel, system-exclusive or meta event"
            );
            return;
        }

        var kind = status == 0xFF ? cursor.Byte() : (byte)0;
        var data = cursor.Take(cursor.Variable());
        if (status == 0xFF && cursor.Fault is null)
        {
            ReadMeta(kind, data, at);
        }
    }

    private void ReadMeta(byte kind, ReadOnlySpan<byte> data, int at)
    {
        switch (kind)
        {
            case 0x01:
                _track.Remark ??= MidiRemark.Parse(TextOf(data));
                break;
            case 0x03:
                _track.Name = _track.Name.Length == 0 ? TextOf(data) : _track.Name;
                break;
            case 0x2F:
                _ended = true;
                break;
            case 0x51 or 0x58 or 0x59 when !AddFrame(kind, data):
                Warn("a tempo, metre or key that says nothing is left out", at);
                break;
        }
    }

    private bool AddFrame(byte kind, ReadOnlySpan<byte> data)
    {
        switch (data)
        {
            case [var high, var middle, var low] when kind == 0x51:
                _track.Tempi.Add((_tick, (high << 16) | (middle << 8) | low));
                return true;
            case [var beats, var power, ..] when kind == 0x58:
                _track.Meters.Add((_tick, beats, power));
                return true;
            case [var sharps, var minor] when kind == 0x59 && minor <= 1 && sharps is <= 7 or >= 249:
                _track.Keys.Add((_tick, new MidiKey(unchecked((sbyte)sharps), minor == 1)));
                return true;
            default:
                return false;
        }
    }

    private void Close(ref MidiCursor cursor)
    {
        if (!_ended)
        {
            Warn("no end-of-track event", cursor.At);
        }
        else if (cursor.Left > 0)
        {
            Warn(
                $"{cursor.Left.ToString(CultureInfo.InvariantCulture)} bytes behind its end are left out",
                cursor.At
            );
            cursor.Take(cursor.Left);
        }

        var open = 0;
        for (var i = 0; i < _track.Sounds.Count; i++)
        {
            if (_track.Sounds[i].End == long.MaxValue)
            {
                _track.Sounds[i] = _track.Sounds[i] with { End = _tick };
                open++;
            }
        }

        if (open > 0)
        {
            Warn(
                $"{open.ToString(CultureInfo.InvariantCulture)} notes never end; they last to its end",
                cursor.At
            );
        }
    }

    private void Warn(string text, int at) =>
        findings.Warn(
            string.Create(CultureInfo.InvariantCulture, $"track {number}: {text}"),
            MidiCursor.Place(at)
        );

    // UTF-8 where it is, else Latin-1; the format says only "text".
    private static string TextOf(ReadOnlySpan<byte> data)
    {
        var cut = data[..Math.Min(data.Length, LongestName)];
        var text = (Utf8.IsValid(cut) ? Encoding.UTF8 : Encoding.Latin1).GetString(cut);
        return string.Concat(text.Where(letter => !char.IsControl(letter))).Trim();
    }
}
