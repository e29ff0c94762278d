using System.Buffers.Binary;

namespace Passagework.Bench.Fuzz;

/// <summary>Makes the track lengths of a spoiled MIDI file true again, so that not every change ends at a length.</summary>
internal static class MidiLengths
{
    private const int HeadLength = 8;

    public static void Mend(byte[] file)
    {
        var rest = file.AsSpan();
        var at = rest.IndexOf("MTrk"u8);
        while (at >= 0 && rest.Length - at >= HeadLength)
        {
            rest = rest[at..];
            at = rest[HeadLength..].IndexOf("MTrk"u8);
            at = at < 0 ? rest.Length : at + HeadLength;
            BinaryPrimitives.WriteInt32BigEndian(rest[4..], at - HeadLength);
            at = at == rest.Length ? -1 : at;
        }
    }
}
