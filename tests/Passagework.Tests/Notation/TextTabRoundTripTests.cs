using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Tests.Notation;

public sealed class TextTabRoundTripTests
{
    private static readonly string[] Tunings =
    [
        "bass",
        "E2 A2 D3 G3",
        "five-string bass",
        "standard",
        "drop D",
        "DADGAD",
        "open G",
        "G4 C4 E4 A4 D5 F#5",
        "Eb2 A2 Db3 F#3 B3 E4",
        "seven-string",
        "eight-string",
    ];

    private static readonly string[] Lengths =
    [
        "1/16",
        "1/8",
        "1/4",
        "1/12",
        "1/24",
        "1/20",
        "1/28",
        "3/40",
        "3/16",
        "7/32",
        "5/16",
        "1/72",
        "1",
        "5/4",
        "1/64",
    ];

    private static readonly Gen<Entry> AnyNote = Gen.Int[1, 4]
        .Select(
            Gen.Int[0, 24],
            Pick(Lengths),
            Gen.Int[0, 4],
            Gen.Enum<Stroke>(),
            Gen.Enum<Slur>(),
            Gen.Bool,
            (number, fret, length, finger, stroke, slur, accent) =>
                new Entry(Place.At(number, fret), Parse(length))
                {
                    Finger = finger,
                    Stroke = stroke,
                    Slur = slur,
                    Accent = accent,
                }
        );

    private static readonly Gen<Entry> AnyEntry = Gen.Frequency(
        (5, AnyNote),
        (1, Pick(Lengths).Select(length => new Entry(null, Parse(length))))
    );

    private static readonly Gen<Recipe> AnyRecipe = Pick(Tunings)
        .Select(
            Gen.Int[0, 9],
            Pick("4/4", "3/4", "6/8", "7/8", "2/4", "12/8"),
            Pick("0", "1/16", "3/4", "5/4", "-1/8"),
            Gen.Int[1, 8],
            Pick<double?>(null, 60.5, 144),
            (tuning, capo, meter, start, notesPerBeat, tempo) =>
                new Recipe
                {
                    Title = "A line",
                    Instrument = new Fretboard
                    {
                        Tuning = TuningOf(tuning),
                        Capo = capo,
                        Frets = 24 + capo,
                    },
                    Rhythm = new RhythmPlan
                    {
                        Meter = Meter.TryParse(meter, out var known) ? known : default,
                        StartOffset = Parse(start),
                        NotesPerBeat = notesPerBeat,
                        TempoBpm = tempo,
                    },
                }
        );

    [Fact]
    public void What_is_written_is_read_back() =>
        AnyRecipe
            .Select(AnyEntry.List[1, 40], Gen.Int[0, 3], Gen.Int[60, 76])
            .Where((_, entries, _, _) => entries.Exists(entry => entry.Place is not null))
            .Sample(
                (recipe, drawn, groups, width) =>
                {
                    var entries = Grouped(Playable(drawn), groups);
                    var played = PlayedLines.Of(recipe, entries);

                    var text = TextTab.Write(played, new TabWriting { Width = width });
                    var read = TextTab.Read(text).OrThrow();

                    AssertSame(played, read, text);
                    var music = text[text.IndexOf("\n\n", StringComparison.Ordinal)..];
                    Assert.True(music.Split('\n').Max(line => line.Length) <= width, text);
                },
                iter: 1500
            );

    [Theory]
    [InlineData("bass", "4:0 3 3:1 2:5 1:12 24")]
    [InlineData("standard", "6:0 3 5:10 4:24 3:9 2:12 1:1")]
    [InlineData("seven-string", "7:0 12 6:3 1:24")]
    [InlineData("eight-string", "8:5 7 7:10 1:22")]
    public void Every_string_count_is_read_back(string tuning, string places)
    {
        var recipe = PlayedLines.Plain with
        {
            Instrument = new Fretboard { Tuning = TuningOf(tuning), Frets = 24 },
        };
        var played = PlayedLines.Of(recipe, PlayedLines.Entries(places, Fraction.Of(1, 8)));

        var text = TextTab.Write(played);

        AssertSame(played, TextTab.Read(text).OrThrow(), text);
    }

    [Fact]
    public void Frets_above_24_are_read_back_with_the_number_of_frets()
    {
        var recipe = PlayedLines.Plain with { Instrument = new Fretboard { Frets = 36 } };
        var played = PlayedLines.Of(recipe, PlayedLines.Entries("1:36 25 24 35", Fraction.Of(1, 8)));

        var text = TextTab.Write(played);

        AssertSame(played, TextTab.Read(text).OrThrow(), text);
    }

    // A slide comes from the string that it is on; a general slur is written as what it is.
    private static List<Entry> Playable(List<Entry> drawn)
    {
        var entries = new List<Entry>();
        Place? before = null;
        foreach (var entry in drawn)
        {
            var bare = entry.Slur == Slur.Slide && before?.String != entry.Place?.String;
            entries.Add(bare || entry.Slur == Slur.Slurred ? entry with { Slur = Slur.None } : entry);
            before = entry.Place ?? before;
        }

        return entries;
    }

    // 0 without groups, else so many notes in each; every fifth group is left out and numbers jump at the fourth.
    private static IEnumerable<Entry> Grouped(List<Entry> entries, int size) =>
        entries.Select(
            (entry, i) =>
            {
                var group = size == 0 ? 0 : i / size;
                var none = size == 0 || entry.Place is null || group % 5 == 4;
                return entry with { Group = none ? null : group + (group > 3 ? 7 : 0) };
            }
        );

    private static void AssertSame(Realization played, TabImport read, string text)
    {
        var recipe = played.Line.Recipe;
        Assert.Equal(EntriesOf(played), read.Recipe.Written!.Entries.Select(Describe)); // an import is always written
        Assert.Equal(
            played.Notes.Select(note => (note.Finger, note.Stroke)),
            read.Recipe.Fretting.Locks.Select(held => (held.Finger ?? -1, held.Stroke ?? Stroke.None))
        );
        Assert.Equal(OpenStrings(recipe), OpenStrings(read.Recipe));
        Assert.Equal(recipe.Instrument.Capo, read.Recipe.Instrument.Capo);
        Assert.Equal(recipe.Rhythm, read.Recipe.Rhythm);
        Assert.Equal(recipe.Title, read.Recipe.Title);
        Assert.True(read.Warnings.IsEmpty, string.Join('\n', read.Warnings) + "\n" + text);
    }

    private static ImmutableArray<string> EntriesOf(Realization played)
    {
        var notes = played.Notes.Select(note =>
            (
                note.Note.Onset,
                Text: Describe(
                    new WrittenEntry
                    {
                        Place = note.Place,
                        Duration = note.Note.Duration,
                        Group = note.Note.Group,
                        Accent = note.Note.Accent,
                        Slur = note.Note.Slur,
                    }
                )
            )
        );
        var rests = played.Line.Rests.Select(rest =>
            (rest.Onset, Text: Describe(new WrittenEntry { Duration = rest.Duration }))
        );
        return [.. notes.Concat(rests).OrderBy(entry => entry.Onset).Select(entry => entry.Text)];
    }

    private static string Describe(WrittenEntry entry) =>
        $"{entry.Place?.ToString() ?? "r"} {entry.Duration} {entry.Slur} {entry.Accent} {entry.Group}";

    private static IEnumerable<string> OpenStrings(Recipe recipe) =>
        Enumerable
            .Range(1, recipe.Instrument.Tuning.StringCount)
            .Select(number => recipe.Instrument.Tuning.Open(number).ToString());

    private static Gen<T> Pick<T>(params T[] values) =>
        Gen.Int[0, values.Length - 1].Select(at => values[at]);

    private static Fraction Parse(string text) => Fraction.TryParse(text, out var value) ? value : default;

    private static Tuning TuningOf(string text) =>
        Tuning.TryParse(text, out var tuning) ? tuning : throw new ArgumentException(text, nameof(text));
}
