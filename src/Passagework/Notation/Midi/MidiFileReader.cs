using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Reads header and chunks of a file.</summary>
internal static class MidiFileReader
{
    private const int HeaderLength = 6;
    private const int ChunkHead = 8;
    private const int FilmFrames = 0x8000;
    private const string Expected = "a Standard MIDI File, which begins with MThd";

    public static Outcome<MidiSequence> Read(ReadOnlySpan<byte> file, MidiFindings findings)
    {
        var cursor = new MidiCursor(file);
        if (!file.StartsWith("MThd"u8))
        {
            return new Fault("is no Standard MIDI File", MidiCursor.Place(0), Expected);
        }

        cursor.Take(4);
        var length = cursor.Number(4);
        var format = (int)cursor.Number(2);
        var count = (int)cursor.Number(2);
        var division = (int)cursor.Number(2);
        cursor.Take(Math.Max(0, length - HeaderLength));
        if ((cursor.Fault ?? WhyRefused(length, format, division)) is { } fault)
        {
            return fault;
        }

        return ReadTracks(ref cursor, count, findings)
            .Then<MidiSequence>(tracks => new MidiSequence(format, division, tracks));
    }

    private static Fault? WhyRefused(long length, int format, int division)
    {
        if (length < HeaderLength)
        {
            return new Fault($"a header of {length} bytes", MidiCursor.Place(4), "6");
        }

        if (format > 2)
        {
            return new Fault($"format {format}", MidiCursor.Place(8), "0, 1 or 2");
        }

        if (division >= FilmFrames)
        {
            return new Fault(
                "times are film frames, which say nothing about beats",
                MidiCursor.Place(12),
                "ticks per quarter note"
            );
        }

        return division == 0
            ? new Fault("0 ticks per quarter note", MidiCursor.Place(12), "1 to 32767")
            : null;
    }

    private static Outcome<IReadOnlyList<MidiTrackData>> ReadTracks(
        ref MidiCursor cursor,
        int count,
        MidiFindings findings
    )
    {
        var tracks = new List<MidiTrackData>();
        var fileEnd = cursor.End;
        while (cursor.Left >= ChunkHead && tracks.Count < count)
        {
            var name = cursor.Take(4);
            var lengthAt = cursor.At;
            var length = cursor.Number(4);
            if (length > cursor.Left)
            {
                return new Fault(
                    string.Create(CultureInfo.InvariantCulture, $"a chunk of {length} bytes"),
                    MidiCursor.Place(lengthAt),
                    string.Create(CultureInfo.InvariantCulture, $"the file has {cursor.Left} more")
                );
            }

            if (!name.SequenceEqual("MTrk"u8))
            {
                cursor.Take(length);
                continue;
            }

            cursor.End = cursor.At + (int)length;
            tracks.Add(new MidiTrackReader(findings, tracks.Count + 1).Read(ref cursor));
            cursor.End = fileEnd;
            if (cursor.Fault is { } fault)
            {
                return fault;
            }
        }

        WarnOfRest(cursor, count - tracks.Count, findings);
        return tracks;
    }

    private static void WarnOfRest(MidiCursor cursor, int missing, MidiFindings findings)
    {
        if (missing > 0)
        {
            findings.Warn(
                string.Create(CultureInfo.InvariantCulture, $"{missing} of the tracks announced are missing"),
                MidiCursor.Place(cursor.At)
            );
        }

        if (cursor.Left > 0)
        {
            findings.Warn(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{cursor.Left} bytes behind the last track are left out"
                ),
                MidiCursor.Place(cursor.At)
            );
        }
    }
}
