using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Any file with music, told by what it begins with and not by its name.</summary>
/// <example>
/// <c>MusicFile.Read(bytes, new MusicReading { TopNotesOnly = true })</c>
/// </example>
public static class MusicFile
{
    private const int LookedAt = 512;
    private const int MostTextBytes = 1 << 20;

    // Byte-order marks, white space and the zero bytes of UTF-16 may stand before the first sign.
    private static readonly byte[] BeforeMarkup = [0xEF, 0xBB, 0xBF, 0xFE, 0xFF, 0, .. " \t\r\n"u8];

    /// <summary>What a file is, by its beginning; text tab when it is nothing else.</summary>
    public static MusicFileKind KindOf(ReadOnlySpan<byte> beginning) =>
        beginning switch
        {
            [(byte)'M', (byte)'T', (byte)'h', (byte)'d', ..] => MusicFileKind.Midi,
            [(byte)'P', (byte)'K', ..] => MusicFileKind.PackedMusicXml,
            _ => FirstSign(beginning) switch
            {
                (byte)'<' => MusicFileKind.MusicXml,
                (byte)'{' => MusicFileKind.Exercise,
                _ => MusicFileKind.TextTab,
            },
        };

    /// <summary>The largest file of any kind that is read, in bytes.</summary>
    public static int MostOfAll => Enum.GetValues<MusicFileKind>().Max(MostBytes);

    /// <summary>The largest file of a kind that is read, in bytes.</summary>
    public static int MostBytes(MusicFileKind kind) =>
        kind switch
        {
            MusicFileKind.Midi => Midi.MostBytes,
            MusicFileKind.PackedMusicXml => MusicXml.MostPackedBytes,
            MusicFileKind.MusicXml => MusicXml.MostCharacters,
            _ => MostTextBytes,
        };

    /// <summary>Reads one line of a file; a fault says what is wrong, where, and what would be right.</summary>
    /// <param name="file">Its bytes.</param>
    /// <param name="options">Which line and how; parts and tracks are of no account where a file has none.</param>
    public static Outcome<MusicImport> Read(ReadOnlyMemory<byte> file, MusicReading? options = null)
    {
        var chosen = options ?? new MusicReading();
        var kind = KindOf(file.Span);
        if (TooLarge(kind, file.Length) is { } fault)
        {
            return fault;
        }

        return kind switch
        {
            MusicFileKind.Midi => Midi.Read(
                    file.Span,
                    new MidiReading { Track = chosen.Track, TopNotesOnly = chosen.TopNotesOnly }
                )
                .Then<MusicImport>(import => MusicImports.Of(import)),
            MusicFileKind.PackedMusicXml or MusicFileKind.MusicXml => MusicXml
                .Read(file, chosen.MusicXml)
                .Then<MusicImport>(import => MusicImports.Of(import)),
            MusicFileKind.Exercise => RecipeJson
                .Read(file.Span)
                .Then<MusicImport>(recipe => new MusicImport(recipe, [], [])),
            _ => TextTab
                .Read(Text(file.Span), new TabReading { TopNotesOnly = chosen.TopNotesOnly })
                .Then<MusicImport>(import => MusicImports.Of(import)),
        };
    }

    /// <summary>The fault of a file that is larger than its kind may be; null for one that is not.</summary>
    public static Fault? TooLarge(MusicFileKind kind, long bytes) =>
        bytes > MostBytes(kind)
            ? new Fault(
                $"the file is too large for {Name(kind)}: {Megabytes(bytes)} MB",
                Right: $"at most {MostBytes(kind) >> 20} MB"
            )
            : null;

    private static string Name(MusicFileKind kind) =>
        kind switch
        {
            MusicFileKind.Midi => "MIDI",
            MusicFileKind.PackedMusicXml => "compressed MusicXML",
            MusicFileKind.MusicXml => "MusicXML",
            MusicFileKind.Exercise => "an exercise",
            _ => "text tab",
        };

    // Rounded up, so that nothing is said to be as large as it may be and yet too large.
    private static string Megabytes(long bytes) =>
        (Math.Ceiling(bytes / (double)(1 << 20) * 10) / 10).ToString("0.#", CultureInfo.InvariantCulture);

    private static byte? FirstSign(ReadOnlySpan<byte> beginning)
    {
        var text = beginning[..Math.Min(beginning.Length, LookedAt)];
        var first = text.IndexOfAnyExcept(BeforeMarkup);
        return first < 0 ? null : text[first];
    }

    private static string Text(ReadOnlySpan<byte> file) =>
        Encoding.UTF8.GetString(file is [0xEF, 0xBB, 0xBF, ..] ? file[3..] : file);
}

/// <summary>Kinds of files that hold music.</summary>
public enum MusicFileKind
{
    /// <summary>Plain-text tab.</summary>
    TextTab,

    /// <summary>MusicXML as text.</summary>
    MusicXml,

    /// <summary>MusicXML in a zip (.mxl).</summary>
    PackedMusicXml,

    /// <summary>A Standard MIDI File.</summary>
    Midi,

    /// <summary>An exercise file of ours.</summary>
    Exercise,
}

/// <summary>Which line of a file is meant, and how it is read.</summary>
public sealed record MusicReading
{
    /// <summary>MusicXML: id, name or number (from 1) of the part; null for the first with pitched notes.</summary>
    public string? Part { get; init; }

    /// <summary>MusicXML: name of the voice; null for the one with most notes.</summary>
    public string? Voice { get; init; }

    /// <summary>MIDI: number of the track, from 1; null for the one with most notes that is no drum track.</summary>
    public int? Track { get; init; }

    /// <summary>MusicXML: whether repeats and endings are written out as they are played.</summary>
    public bool UnrollRepeats { get; init; }

    /// <summary>Whether only the highest of the notes that begin together is read.</summary>
    public bool TopNotesOnly { get; init; }

    internal MusicXmlReading MusicXml =>
        new()
        {
            Part = Part,
            Voice = Voice,
            UnrollRepeats = UnrollRepeats,
            TopNotesOnly = TopNotesOnly,
        };
}

/// <summary>What was read from a file.</summary>
/// <param name="Recipe">The line; written note by note, but of an exercise file as it stands there.</param>
/// <param name="Remarks">What was guessed, changed or left out, a phrase each.</param>
/// <param name="Lines">All lines of the file to choose from; empty where it has one only.</param>
public sealed record MusicImport(
    Recipe Recipe,
    ImmutableArray<string> Remarks,
    ImmutableArray<MusicLine> Lines
);

/// <summary>One line of a file with several.</summary>
/// <param name="Name">For people.</param>
/// <param name="Reading">What to ask for to have it read.</param>
/// <param name="Notes">How many notes it has.</param>
/// <param name="IsRead">Whether it is the one that was read.</param>
public sealed record MusicLine(string Name, MusicReading Reading, int Notes, bool IsRead)
{
    /// <summary>Such as <c>Guitar, voice 1 (64 notes)</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Name} ({Notes} note{(Notes == 1 ? "" : "s")})");
}
