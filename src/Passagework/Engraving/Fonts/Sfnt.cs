using System.Buffers.Binary;
using System.IO.Compression;

namespace Passagework.Engraving.Fonts;

/// <summary>
/// A TrueType font as its tables. A web font (WOFF 1.0, W3C 2012) is the same tables, each deflated; unwrapped, the
/// font goes into a PDF as a proper subset instead of as drawings.
/// </summary>
internal sealed class Sfnt
{
    private const int WoffHeader = 44;
    private const int WoffEntry = 20;
    private const int SfntHeader = 12;
    private const int SfntEntry = 16;

    private readonly SortedDictionary<string, byte[]> _tables = new(StringComparer.Ordinal);

    private Sfnt() { }

    /// <summary>Takes a web font apart.</summary>
    public static Sfnt FromWoff(ReadOnlySpan<byte> woff)
    {
        if (!woff.StartsWith("wOFF"u8))
        {
            throw new InvalidDataException("Not a WOFF 1.0 font.");
        }

        var font = new Sfnt();
        var count = BinaryPrimitives.ReadUInt16BigEndian(woff[12..]);
        for (var i = 0; i < count; i++)
        {
            var entry = woff.Slice(WoffHeader + (i * WoffEntry), WoffEntry);
            var stored = woff.Slice(Number(entry[4..]), Number(entry[8..]));
            font._tables[System.Text.Encoding.ASCII.GetString(entry[..4])] = Inflated(
                stored,
                Number(entry[12..])
            );
        }

        return font;
    }

    /// <summary>The table's bytes; empty when the font has no such table.</summary>
    public ReadOnlySpan<byte> Table(string tag) => _tables.GetValueOrDefault(tag);

    /// <summary>Puts another table in the place of one.</summary>
    public void Replace(string tag, byte[] table) => _tables[tag] = table;

    /// <summary>The same font with other tables in the place of some.</summary>
    public Sfnt With(params ReadOnlySpan<(string Tag, byte[] Table)> others)
    {
        var font = new Sfnt();
        foreach (var (tag, table) in _tables)
            font._tables[tag] = table;
        foreach (var (tag, table) in others)
            font._tables[tag] = table;

        return font;
    }

    /// <summary>Leaves tables out.</summary>
    public void Drop(params ReadOnlySpan<string> tags)
    {
        foreach (var tag in tags)
            _tables.Remove(tag);
    }

    /// <summary>The whole font file.</summary>
    public byte[] ToBytes()
    {
        var offset = SfntHeader + (SfntEntry * _tables.Count);
        var file = new byte[offset + _tables.Values.Sum(table => Padded(table.Length))];
        WriteHeader(file);
        var entry = SfntHeader;
        foreach (var (tag, table) in _tables)
        {
            table.CopyTo(file, offset);
            System.Text.Encoding.ASCII.GetBytes(tag, file.AsSpan(entry));
            BinaryPrimitives.WriteUInt32BigEndian(
                file.AsSpan(entry + 4),
                CheckSum(file.AsSpan(offset, Padded(table.Length)))
            );
            BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(entry + 8), offset);
            BinaryPrimitives.WriteInt32BigEndian(file.AsSpan(entry + 12), table.Length);
            entry += SfntEntry;
            offset += Padded(table.Length);
        }

        return file;
    }

    private void WriteHeader(Span<byte> file)
    {
        var power = int.Log2(_tables.Count);
        BinaryPrimitives.WriteUInt32BigEndian(file, 0x00010000);
        BinaryPrimitives.WriteUInt16BigEndian(file[4..], (ushort)_tables.Count);
        BinaryPrimitives.WriteUInt16BigEndian(file[6..], (ushort)(SfntEntry << power));
        BinaryPrimitives.WriteUInt16BigEndian(file[8..], (ushort)power);
        BinaryPrimitives.WriteUInt16BigEndian(
            file[10..],
            (ushort)((SfntEntry * _tables.Count) - (SfntEntry << power))
        );
    }

    private static byte[] Inflated(ReadOnlySpan<byte> stored, int length)
    {
        if (stored.Length == length)
        {
            return stored.ToArray();
        }

        var table = new byte[length];
        using var inflater = new ZLibStream(new MemoryStream(stored.ToArray()), CompressionMode.Decompress);
        inflater.ReadExactly(table);
        return table;
    }

    // The sum of the table as big-endian 32-bit words, modulo 2^32 (OpenType specification, "Calculating checksums").
    private static uint CheckSum(ReadOnlySpan<byte> table)
    {
        var sum = 0u;
        for (var at = 0; at < table.Length; at += 4)
        {
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(table[at..]));
        }

        return sum;
    }

    private static int Padded(int length) => (length + 3) & ~3;

    private static int Number(ReadOnlySpan<byte> four) => BinaryPrimitives.ReadInt32BigEndian(four);
}
