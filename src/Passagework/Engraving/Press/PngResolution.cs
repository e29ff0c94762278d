using System.Buffers.Binary;

namespace Passagework.Engraving.Press;

/// <summary>Writes into a PNG how close its dots lie, so that it comes out of a printer in its true size.</summary>
internal static class PngResolution
{
    // The eight bytes of the signature and the chunk IHDR with its 13 bytes of data (PNG specification, W3C 2003).
    private const int AfterHeader = 8 + 12 + 13;
    private const int ChunkLength = 12 + 9;

    /// <summary>The same picture with the chunk <c>pHYs</c> after the header.</summary>
    public static byte[] Put(byte[] png, double dotsPerMetre)
    {
        Span<byte> chunk = stackalloc byte[ChunkLength];
        var dots = (uint)Math.Round(dotsPerMetre);
        BinaryPrimitives.WriteInt32BigEndian(chunk, 9);
        "pHYs"u8.CopyTo(chunk[4..]);
        BinaryPrimitives.WriteUInt32BigEndian(chunk[8..], dots);
        BinaryPrimitives.WriteUInt32BigEndian(chunk[12..], dots);
        chunk[16] = 1;
        BinaryPrimitives.WriteUInt32BigEndian(chunk[17..], CheckSum(chunk[4..17]));
        return [.. png.AsSpan(0, AfterHeader), .. chunk, .. png.AsSpan(AfterHeader)];
    }

    // Cyclic redundancy check as the PNG specification gives it in annex D, bit by bit.
    private static uint CheckSum(ReadOnlySpan<byte> bytes)
    {
        var sum = 0xFFFFFFFFu;
        foreach (var part in bytes)
        {
            sum ^= part;
            for (var bit = 0; bit < 8; bit++)
                sum = (sum & 1) == 0 ? sum >> 1 : (sum >> 1) ^ 0xEDB88320u;
        }

        return ~sum;
    }
}
