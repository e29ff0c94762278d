using System.Text;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Theory;
using Meter = Passagework.Rhythm.Meter;

namespace Passagework.Tests.Notation;

public sealed class MusicXmlRoundTripTests
{
    // Parts of a whole note; each line divides them by one number besides, as one beat holds one kind of tuplet.
    private static readonly string[] Lengths =
    [
        "1/16",
        "1/8",
        "1/4",
        "1/2",
        "3/8",
        "3/16",
        "7/32",
        "5/16",
        "1",
        "5/4",
        "1/64",
        "3/64",
    ];

    private static readonly int[] Odd = [1, 1, 3, 3, 5, 7, 9, 11];

    private static readonly string[] Tunings =
    [
        "bass",
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

    private static readonly Gen<Entry> AnyNote = Gen.Int[1, 4]
        .Select(
            Gen.Int[0, 22],
            Pick(Lengths),
            Gen.Int[1, 4],
            Gen.Enum<Stroke>(),
            Gen.Enum<Slur>(),
            Gen.Bool,
            (number, fret, length, finger, stroke, slur, accent) =>
                new Entry(Place.At(number, fret), Scores.Fraction(length))
                {
                    Finger = fret == 0 ? 0 : finger,
                    Stroke = slur is Slur.Hammer or Slur.Pull or Slur.Slide ? Stroke.None : stroke,
                    Slur = slur,
                    Accent = accent,
                }
        );

    private static readonly Gen<Entry> AnyEntry = Gen.Frequency(
        (5, AnyNote),
        (1, Pick(Lengths).Select(length => new Entry(null, Scores.Fraction(length))))
    );

    private static readonly Gen<Recipe> AnyRecipe = Pick(Tunings)
        .Select(
            Gen.Int[0, 9],
            Pick("4/4", "3/4", "6/8", "7/8", "2/4", "12/8", "5/16", "2/2", "1/4"),
            Pick("0", "1/32", "1/16", "1/8"),
            Gen.Int[1, 8],
            Pick<double?>(null, 60.5, 144, 0.1, 1e-5),
            Pick("none", "A minor pentatonic", "Eb major", "F# dorian", "C# listed"),
            (tuning, capo, meter, start, notesPerBeat, tempo, notes) =>
                new Recipe
                {
                    Title = "A <line> & more",
                    Notes = NotesOf(notes),
                    Instrument = new Fretboard
                    {
                        Tuning = Scores.Tuning(tuning),
                        Capo = capo,
                        Frets = 22 + capo,
                    },
                    Rhythm = new RhythmPlan
                    {
                        Meter = Scores.Meter(meter),
                        StartOffset = Scores.Fraction(start),
                        NotesPerBeat = notesPerBeat,
                        TempoBpm = tempo,
                    },
                }
        );

    public static TheoryData<ScoreStaves> Staves =>
        [ScoreStaves.StaffAndTab, ScoreStaves.StaffOnly, ScoreStaves.TabOnly];

    [Theory]
    [MemberData(nameof(Staves))]
    public void What_is_written_is_read_back(ScoreStaves staves) =>
        AnyRecipe
            .Select(AnyEntry.List[1, 30], Gen.Int[0, 3], Pick(Odd))
            .Where((_, entries, _, _) => entries.Exists(entry => entry.Place is not null))
            .Sample(
                (recipe, drawn, groups, odd) =>
                {
                    var played = PlayedLines.Of(recipe, Grouped(Divided(drawn, odd), groups)).Spelled();

                    var score = MusicXml.Write(played, new MusicXmlWriting { Staves = staves }).OrThrow();
                    var read = Scores.Read(score);

                    AssertSame(played, read, score);
                },
                iter: 400
            );

    [Fact]
    public void What_is_written_is_a_recipe_that_can_be_built() =>
        AnyRecipe
            .Select(AnyEntry.List[1, 30], Gen.Int[0, 3], Pick(Odd))
            .Where((_, entries, _, _) => entries.Exists(entry => entry.Place is not null))
            .Sample(
                (recipe, drawn, groups, odd) =>
                {
                    var played = PlayedLines.Of(recipe, Grouped(Divided(drawn, odd), groups)).Spelled();

                    var read = MusicXml.Read(MusicXml.WriteCompressed(played).OrThrow()).OrThrow();
                    var line = LineBuilder.Build(read.Recipe).OrThrow();

                    Assert.Equal(Sounds(played.Line), Sounds(line));
                },
                iter: 200
            );

    // Any two kinds of tuplet may meet in one beat here: what can't be written names its place, all else comes back.
    [Fact]
    public void Any_lengths_are_read_back_or_refused()
    {
        var written = 0;
        AnyRecipe
            .Select(Gen.Select(AnyEntry, Pick(Odd)).List[1, 12])
            .Where((_, entries) => entries.Exists(entry => entry.Item1.Place is not null))
            .Sample(
                (recipe, drawn) =>
                {
                    var entries = drawn.SelectMany(entry => Divided([entry.Item1], entry.Item2));
                    var played = PlayedLines.Of(recipe, entries).Spelled();

                    if (MusicXml.Write(played).TryGet(out var score, out var fault))
                    {
                        AssertSame(played, Scores.Read(score), score);
                        Interlocked.Increment(ref written);
                    }
                    else
                    {
                        Assert.Matches(
                            "^bar [0-9]+, beat [0-9/]+: .+ cannot be written in note values;",
                            fault.ToString()
                        );
                    }
                },
                iter: 300
            );
        Assert.True(written > 50, $"only {written} written");
    }

    [Theory]
    [InlineData("standard")]
    [InlineData("drop D")]
    [InlineData("all fourths")]
    [InlineData("seven-string")]
    [InlineData("bass")]
    public void The_library_is_read_back_in_every_key(string tuning)
    {
        var compared = 0;
        foreach (var exercise in Library.All)
        {
            foreach (var root in "C Db D Eb E F F# G Ab A Bb B".Split(' '))
            {
                if (Realized(exercise.Recipe, root, tuning) is { } played)
                {
                    var score = MusicXml.Write(played).OrThrow();
                    AssertSame(played, Scores.Read(score), score);
                    compared++;
                }
            }
        }

        Assert.True(compared > 100, $"only {compared} compared");
    }

    private static Realization? Realized(Recipe recipe, string root, string tuning)
    {
        var strung = recipe with { Instrument = recipe.Instrument with { Tuning = Scores.Tuning(tuning) } };
        return
            NoteName.TryParse(root, out var name)
            && KeyChange.ToRoot(strung, name).TryGet(out var moved, out _)
            && LineBuilder.Build(moved).TryGet(out var line, out _)
            && Realizer.Realize(line, Player.At(2)).TryGet(out var played, out _)
            ? played
            : null;
    }

    internal static void AssertSame(Realization played, MusicXmlImport read, string score)
    {
        var recipe = played.Line.Recipe;
        Assert.Equal(Sounding(played), Sounding(read, played));
        Assert.Equal(Hands(played), Hands(read));
        Assert.Equal(recipe.Instrument.Capo, read.Recipe.Instrument.Capo);
        Assert.Equal(recipe.Instrument.Frets, read.Recipe.Instrument.Frets);
        Assert.Equal(OpenStrings(recipe), OpenStrings(read.Recipe));
        Assert.Equal(recipe.Rhythm.Meter, read.Recipe.Rhythm.Meter);
        Assert.Equal(recipe.Rhythm.NotesPerBeat, read.Recipe.Rhythm.NotesPerBeat);
        Assert.Equal(recipe.Rhythm.TempoBpm, read.Recipe.Rhythm.TempoBpm);
        Assert.Equal(recipe.Notes, read.Recipe.Notes);
        Assert.Equal(recipe.Title, read.Recipe.Title);
        Assert.True(read.LeftOut.All(Expected), string.Join('\n', read.LeftOut) + "\n" + score);
    }

    private static bool Expected(MusicXmlRemark remark) =>
        remark.Text
            is "note outside all groups, counted as a group"
                or "way of sounding (mute) left out"
                or "text 'P.M.' left out"
                or "text 'let ring' left out"
                or "'let ring' left out"
                or "'staccato' left out";

    // A slur of an open kind comes back as some kind; a first note, and one repeated, come from nowhere.
    private static List<string> Sounding(Realization played)
    {
        var groups = Groups(played);
        return
        [
            .. played.Notes.Select(
                (note, i) =>
                    $"{note.Place} {note.Note.Onset} {note.Note.Duration} {note.Note.Accent} {groups[i]} {SlurOf(played, i)}"
            ),
        ];
    }

    private static string SlurOf(Realization played, int index)
    {
        var note = played.Notes[index];
        if (index == 0 || note.Stroke != Stroke.None)
        {
            return "None";
        }

        var open = note.Note.Slur is Slur.None or Slur.Slurred;
        var some = note.Place == played.Notes[index - 1].Place ? "None" : "some";
        return open ? some : note.Note.Slur.ToString();
    }

    private static List<string> Sounding(MusicXmlImport read, Realization played)
    {
        var recipe = read.Recipe;
        var time = recipe.Rhythm.StartOffset;
        var texts = new List<string>();
        foreach (var entry in recipe.Written!.Entries) // an import is always written
        {
            if (!entry.IsRest)
            {
                var some = SlurOf(played, texts.Count) == "some" && entry.Slur != Slur.None;
                var slur = some ? "some" : entry.Slur.ToString();
                texts.Add($"{entry.Place} {time} {entry.Duration} {entry.Accent} {entry.Group} {slur}");
            }

            time += entry.Duration;
        }

        return texts;
    }

    // A note outside all groups gets the next number, as long as the numbers go on.
    private static List<int?> Groups(Realization played)
    {
        var groups = new List<int?>();
        var any = played.Notes.Any(note => note.Note.Group is not null);
        var last = -1;
        for (var i = 0; i < played.Notes.Length; i++)
        {
            var group = played.Notes[i].Note.Group;
            var joins = i > 0 && played.Notes[i - 1].Note.Group is null;
            groups.Add(any ? group ?? (joins ? last : last + 1) : null);
            last = groups[^1] ?? last;
        }

        return groups;
    }

    private static IEnumerable<(int, int, Stroke)> Hands(Realization played) =>
        played.Notes.Select((note, i) => (i, note.Finger, note.Stroke));

    private static IEnumerable<(int, int, Stroke)> Hands(MusicXmlImport read) =>
        read.Recipe.Fretting.Locks.Select(held => (held.Note, held.Finger ?? -1, held.Stroke ?? Stroke.None));

    private static IEnumerable<string> OpenStrings(Recipe recipe) =>
        Enumerable
            .Range(1, recipe.Instrument.Tuning.StringCount)
            .Select(number => recipe.Instrument.Tuning.Open(number).ToString());

    private static IEnumerable<(Fraction, Fraction, int)> Sounds(Line line) =>
        line.Notes.Select(note => (note.Onset, note.Duration, note.Midi));

    private static List<Entry> Divided(List<Entry> entries, int odd) =>
        entries.ConvertAll(entry => entry with { Length = entry.Length / Fraction.Of(odd) });

    // 0 without groups, else so many notes in each; numbers jump at the fourth.
    private static IEnumerable<Entry> Grouped(List<Entry> entries, int size) =>
        entries.Select(
            (entry, i) =>
            {
                var group = size == 0 ? 0 : i / size;
                var none = size == 0 || entry.Place is null;
                return entry with { Group = none ? null : group + (group > 3 ? 7 : 0) };
            }
        );

    private static NoteSet? NotesOf(string text)
    {
        var root = text.Split(' ')[0];
        if (!NoteName.TryParse(root, out var name))
        {
            return null;
        }

        return NoteSet.TryNamed(name, text[(root.Length + 1)..], out var named)
            ? named
            : NoteSet.Listed(name, [0, 1, 4, 7]);
    }

    private static Gen<T> Pick<T>(params T[] values) =>
        Gen.Int[0, values.Length - 1].Select(at => values[at]);
}
