using System.Text;
using System.Text.Json;
using System.Xml;
using System.Xml.Linq;
using Path = System.IO.Path;

namespace Passagework.Tests.Outside;

/// <summary>A tune from elsewhere as a MusicXML score that another program wrote.</summary>
/// <param name="Score">The score.</param>
/// <param name="Packed">The same as .mxl.</param>
internal sealed record ForeignTune(string Score, byte[] Packed)
{
    private static readonly string Folder = Path.Combine(
        Architecture.Repository.Root,
        "artifacts/outside/abcmidi/usr/share/doc/abcmidi/examples"
    );

    private IEnumerable<XElement> Notes => Page().Descendants("note");

    public bool HasNotes => Notes.Any(note => note.Element("pitch") is not null);

    public bool HasGraceNotes => Notes.Any(note => note.Element("grace") is not null);

    public bool HasPartsOfSemitones =>
        Page().Descendants("alter").Any(alter => alter.Value.Contains('.', StringComparison.Ordinal));

    /// <summary>Whether a note is tied on, but the next note is not its other half.</summary>
    public bool HasTieOverNotes =>
        Notes.Zip(Notes.Skip(1)).Any(pair => IsTied(pair.First, "start") && !IsTied(pair.Second, "stop"));

    /// <summary>Whether there are repeats, each says where it begins, and all bars are played in each round.</summary>
    public bool HasPlainRepeats
    {
        get
        {
            var begins = Repeats("forward");
            return begins > 0 && begins == Repeats("backward") && !Page().Descendants("ending").Any();
        }
    }

    /// <summary>The score with each bar played once.</summary>
    public string WithoutRepeats()
    {
        var page = Page();
        page.Descendants("barline").Remove();
        return page.ToString();
    }

    private static bool IsTied(XElement note, string type) =>
        note.Elements("tie").Any(tie => tie.Attribute("type")?.Value == type);

    private int Repeats(string direction) =>
        Page().Descendants("repeat").Count(repeat => repeat.Attribute("direction")?.Value == direction);

    private XDocument Page()
    {
        var settings = new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore };
        using var reader = XmlReader.Create(new StringReader(Score), settings);
        return XDocument.Load(reader);
    }

    /// <summary>All tunes of the folder in the order of its files.</summary>
    public static IReadOnlyList<ForeignTune> All()
    {
        if (!Directory.Exists(Folder))
        {
            throw new InvalidOperationException(
                "The example tunes of the Debian package abcmidi are missing: run scripts/foreign-tunes.sh."
            );
        }

        var files = Directory
            .EnumerateFiles(Folder, "*.abc")
            .Order(StringComparer.Ordinal)
            .Select(file => File.ReadAllText(file, Encoding.Latin1));
        return
        [
            .. NodeScript
                .Ask("tunes.mjs", "musicxml-io", JsonSerializer.Serialize(files))
                .RootElement.EnumerateArray()
                .Select(tune => new ForeignTune(
                    tune.GetProperty("score").GetString()!, // the script writes both
                    tune.GetProperty("packed").GetBytesFromBase64()
                )),
        ];
    }
}
