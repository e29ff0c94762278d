using System.Runtime.InteropServices;
using System.Text;
using System.Xml;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>MusicXML 4.0, written and read. What is written and read how stands in <c>docs/musicxml.md</c>.</summary>
/// <remarks>
/// What <see cref="Write"/> writes, <see cref="Read"/> reads back with equal places, exact times, slurs, accents,
/// fingers, strokes and groups.
/// </remarks>
public static class MusicXml
{
    /// <summary>Largest file in bytes or characters of XML, unpacked: some hundred pages of music.</summary>
    public const int MostCharacters = 1 << 24;

    /// <summary>Largest compressed file in bytes; a score packs 10 to 60 times smaller.</summary>
    public const int MostPackedBytes = 1 << 22;

    private static readonly UTF8Encoding Utf8 = new(
        encoderShouldEmitUTF8Identifier: true,
        throwOnInvalidBytes: true
    );

    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>Writes what is played as one part, lines ending in a line feed.</summary>
    /// <returns>The file, or the note that no note value can be found for.</returns>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static Outcome<string> Write(Realization realization, MusicXmlWriting? options = null) =>
        MusicXmlWriter.Write(realization, options ?? new MusicXmlWriting());

    /// <summary>The same, compressed (.mxl); the same input gives the same bytes.</summary>
    /// <returns>The file, or the note that no note value can be found for.</returns>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static Outcome<byte[]> WriteCompressed(Realization realization, MusicXmlWriting? options = null) =>
        Write(realization, options).Then<byte[]>(MxlArchive.Pack);

    /// <summary>Reads one voice of a score as a line written note by note; plain or compressed.</summary>
    /// <param name="file">The bytes of a .musicxml, .xml or .mxl file.</param>
    /// <param name="options">Which part and voice, and how.</param>
    /// <returns>The line with what was left out, or the reason why it can't be read.</returns>
    public static Outcome<MusicXmlImport> Read(ReadOnlyMemory<byte> file, MusicXmlReading? options = null)
    {
        var chosen = options ?? new MusicXmlReading();
        var plain = MxlArchive.IsPacked(file.Span) ? MxlArchive.Unpack(file) : file;
        return plain.Then(ReadScore).Then(score => Import(score, chosen));
    }

    private static Outcome<MusicXmlImport> Import(ReadScore score, MusicXmlReading options) =>
        LaneChoice
            .Choose(score, options)
            .Then(lane =>
                LaneNotes
                    .Of(lane, options.UnrollRepeats)
                    .Then(notes => MusicXmlAssembly.Build(score, lane, notes, options))
                    .Then<MusicXmlImport>(recipe => new MusicXmlImport(
                        recipe,
                        LaneChoice.PartsOf(score),
                        lane.Part.Id,
                        lane.Voice,
                        lane.Part.Remarks.All()
                    ))
            );

    private static Outcome<ReadScore> ReadScore(ReadOnlyMemory<byte> plain)
    {
        if (plain.Length > MostCharacters)
        {
            return new Fault("the file is larger than 16 MB", Right: "a shorter piece");
        }

        var bytes = MemoryMarshal.TryGetArray(plain, out var whole) ? whole : new(plain.ToArray());
        using var plainStream = new MemoryStream(
            bytes.Array ?? [],
            bytes.Offset,
            bytes.Count,
            writable: false
        );
        using var stream = new TagGuard(plainStream);
        try
        {
            // A mark of UTF-8 at the start is right also where the first line names another encoding (files saved anew).
            using var text = plain.Span.StartsWith(Utf8Mark) ? new StreamReader(stream, Utf8) : null;
            using var walk = text is null
                ? new XmlWalk(stream, MostCharacters)
                : new XmlWalk(text, MostCharacters);
            return new ScoreReader(walk).Read();
        }
        catch (DecoderFallbackException)
        {
            return new Fault("is no text in UTF-8, as its first bytes promise", Right: "a MusicXML file");
        }
        catch (XmlException broken)
        {
            return Broken(broken);
        }
    }

    // The framework's sentence names what it met and ends with the place, which stands in front here.
    private static Fault Broken(XmlException broken)
    {
        const int Longest = 160;
        var what = broken.Message.Split(" Line ")[0].TrimEnd('.');
        var line = new string([
            .. what.Take(Longest).Select(letter => char.IsControl(letter) ? ' ' : letter),
        ]);
        return new Fault(
            "is no well-formed XML: " + line,
            broken.LineNumber == 0
                ? ""
                : string.Create(
                    System.Globalization.CultureInfo.InvariantCulture,
                    $"line {broken.LineNumber}, column {broken.LinePosition}"
                ),
            "a MusicXML file"
        );
    }
}
