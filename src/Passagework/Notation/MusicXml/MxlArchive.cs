using System.Buffers.Binary;
using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Text;
using System.Xml;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>The compressed form of MusicXML: a zip with a list of its scores. Names inside never become paths.</summary>
internal static class MxlArchive
{
    private const string MediaType = "application/vnd.recordare.musicxml";
    private const string ContainerName = "META-INF/container.xml";
    private const string ScoreName = "score.musicxml";
    private const int MostContainerBytes = 1 << 16;
    private const int MostEntries = 1000;

    // A score packs 10 to 60 times smaller; the format itself allows a thousand.
    private const int MostGrowth = 500;
    private const int GrowthCountsFrom = 1 << 22;
    private static readonly DateTimeOffset EntryTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static bool IsPacked(ReadOnlySpan<byte> file) => file.StartsWith("PK\u0003\u0004"u8);

    public static Outcome<byte[]> Pack(string score)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Add(zip, "mimetype", MediaType, CompressionLevel.NoCompression);
            Add(zip, ContainerName, Container(), CompressionLevel.Optimal);
            Add(zip, ScoreName, score, CompressionLevel.Optimal);
        }

        return stream.ToArray();
    }

    /// <summary>The first score that the list names, or the first XML where there is no list.</summary>
    public static Outcome<ReadOnlyMemory<byte>> Unpack(ReadOnlyMemory<byte> file)
    {
        if (file.Length > MusicXml.MostPackedBytes)
        {
            return new Fault("the compressed file is larger than 4 MB", Right: "a shorter piece");
        }

        if (EntriesTold(file.Span) is not { } told || told > MostEntries)
        {
            return new Fault(
                "is no readable zip: its list of entries is missing or longer than 1000",
                Right: "an .mxl file"
            );
        }

        var bytes = MemoryMarshal.TryGetArray(file, out var whole) ? whole : new(file.ToArray());
        using var stream = new MemoryStream(bytes.Array ?? [], bytes.Offset, bytes.Count, writable: false);
        try
        {
            using var zip = new ZipArchive(stream, ZipArchiveMode.Read);
            return ScoreEntry(zip).Then(entry => Inflate(entry, MusicXml.MostCharacters));
        }
        catch (Exception broken) when (broken is InvalidDataException or IOException or NotSupportedException)
        {
            return new Fault("is no readable zip", Right: "an .mxl file");
        }
    }

    private static void Add(ZipArchive zip, string name, string text, CompressionLevel level)
    {
        var entry = zip.CreateEntry(name, level);
        entry.LastWriteTime = EntryTime;
        using var stream = entry.Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    private static string Container()
    {
        using var page = new XmlPage();
        page.Open("container");
        page.Open("rootfiles");
        page.Mark("rootfile", "full-path", ScoreName, "media-type", MediaType + "+xml");
        page.Close();
        page.Close();
        return page.ToString();
    }

    // The end record stands in the last 64 KB; asked before the framework reads the whole list.
    private static int? EntriesTold(ReadOnlySpan<byte> file)
    {
        const int RecordLength = 22;
        const int CountAt = 10;
        var at = file.LastIndexOf("PK\u0005\u0006"u8);
        return at >= 0 && at + RecordLength <= file.Length
            ? BinaryPrimitives.ReadUInt16LittleEndian(file[(at + CountAt)..])
            : null;
    }

    private static Outcome<ZipArchiveEntry> ScoreEntry(ZipArchive zip)
    {
        if (zip.GetEntry(ContainerName) is not { } list)
        {
            if (zip.Entries.FirstOrDefault(entry => IsScoreName(entry.FullName)) is { } first)
            {
                return first;
            }

            return new Fault("holds no score", Right: "an .mxl file");
        }

        return Inflate(list, MostContainerBytes).Then(PathIn).Then(path => EntryAt(zip, path));
    }

    private static Outcome<ZipArchiveEntry> EntryAt(ZipArchive zip, string path)
    {
        if (zip.GetEntry(path) is { } entry)
        {
            return entry;
        }

        return new Fault($"there is no entry {Quote.Short(path)}", ContainerName, "the name of an entry");
    }

    private static bool IsScoreName(string name) =>
        !name.StartsWith("META-INF/", StringComparison.Ordinal)
        && (
            name.EndsWith(".xml", StringComparison.OrdinalIgnoreCase)
            || name.EndsWith(".musicxml", StringComparison.OrdinalIgnoreCase)
        );

    private static Outcome<string> PathIn(ReadOnlyMemory<byte> list)
    {
        using var stream = new MemoryStream(list.ToArray(), writable: false);
        try
        {
            using var walk = new XmlWalk(stream, MostContainerBytes);
            var path = FirstScore(walk);
            if (path is null)
            {
                return new Fault("names no score", ContainerName, "a rootfile");
            }

            return IsInside(path)
                ? path
                : new Fault($"names {Quote.Short(path)}", ContainerName, "an entry of the archive");
        }
        catch (XmlException)
        {
            return new Fault("is no well-formed XML", ContainerName, "a list of scores");
        }
    }

    private static string? FirstScore(XmlWalk walk)
    {
        string? found = null;
        if (walk.Root() != "container")
        {
            return null;
        }

        for (var depth = walk.Enter(); walk.Next(depth, out _); )
        {
            for (var inner = walk.Enter(); walk.Next(inner, out var name); )
            {
                var type = walk.Attribute("media-type");
                var isScore = type.Length == 0 || type.StartsWith(MediaType, StringComparison.Ordinal);
                if (name == "rootfile" && isScore)
                {
                    found ??= walk.Attribute("full-path");
                }
            }
        }

        return found;
    }

    private static bool IsInside(string path) =>
        path.Length > 0
        && path[0] != '/'
        && !path.Contains('\\', StringComparison.Ordinal)
        && !path.Contains(':', StringComparison.Ordinal)
        && !path.Split('/').Contains("..");

    // What comes out is counted, whatever the archive says about its sizes.
    private static Outcome<ReadOnlyMemory<byte>> Inflate(ZipArchiveEntry entry, int mostBytes)
    {
        using var packed = entry.Open();
        using var plain = new MemoryStream();
        var buffer = new byte[1 << 16];
        for (var read = packed.Read(buffer); read > 0; read = packed.Read(buffer))
        {
            plain.Write(buffer, 0, read);
            if (plain.Length > mostBytes)
            {
                return new Fault(
                    $"{Quote.Short(entry.FullName)} unpacks to more than {mostBytes >> 10} KB",
                    Right: "a shorter piece"
                );
            }

            if (
                plain.Length > GrowthCountsFrom
                && plain.Length / Math.Max(1, entry.CompressedLength) > MostGrowth
            )
            {
                return new Fault(
                    $"{Quote.Short(entry.FullName)} unpacks to over {MostGrowth} times its size",
                    Right: "a score"
                );
            }
        }

        return new ReadOnlyMemory<byte>(plain.GetBuffer(), 0, (int)plain.Length);
    }
}
