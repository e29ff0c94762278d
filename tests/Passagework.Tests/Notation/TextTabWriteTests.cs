using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Notation;

public sealed class TextTabWriteTests
{
    [Fact]
    public void A_line_is_written_with_counts_lengths_groups_accents_strokes_and_fingers()
    {
        // Groups of five in A minor pentatonic, box 1: the first two groups (common practice).
        var entries = PlayedLines
            .Entries("6:5 8 5:5 7 4:5 6:8 5:5 7 4:5 7", Fraction.Of(1, 16))
            .Select(
                (entry, i) =>
                    entry with
                    {
                        Group = i / 5,
                        Accent = i % 5 == 0,
                        Finger = entry.Place!.Value.Fret - 4, // every entry is a note
                        Stroke = i % 2 == 0 ? Stroke.Down : Stroke.Up,
                    }
            );
        var recipe = new Recipe
        {
            Title = "Groups of five, rising",
            Instrument = new Fretboard { Capo = 2 },
            Rhythm = new RhythmPlan { TempoBpm = 92.5 },
        };

        var text = TextTab.Write(PlayedLines.Of(recipe, entries));

        Assert.Equal(
            """
            Groups of five, rising
            Tuning: E A D G B E (low to high)
            Capo: 2
            Meter: 4/4, 4 to the beat
            Tempo: 92.5 beats a minute
            Signs: n down-stroke, v up-stroke
            Signs: 1-4 fretting fingers, 0 open string

            Count   1 e & a 2 e & a 3 e
            Rhythm  s s s s s s s s s s
            Group   [         [
            Accent  >         >
            Stroke  n v n v n v n v n v
                 e|---------------------|
                 B|---------------------|
                 G|---------------------|
                 D|---------5-------5-7-|
                 A|-----5-7-----5-7-----|
                 E|-5-8-------8---------|
            Finger  1 4 1 3 1 4 1 3 1 3

            """,
            text
        );
        Assert.Contains(
            text,
            File.ReadAllText(System.IO.Path.Combine(Repository.Root, "docs", "text-tab.md")),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_note_over_the_bar_line_is_held_on_and_slurs_and_rests_are_shown()
    {
        Entry[] entries =
        [
            new(Place.At(1, 10), Fraction.Of(1, 4)),
            new(Place.At(1, 12), Fraction.Of(1, 8)) { Slur = Slur.Hammer },
            new(null, Fraction.Of(1, 8)),
            new(Place.At(1, 9), Fraction.Of(3, 8)) { Slur = Slur.Slide },
            new(Place.At(1, 7), Fraction.Of(1, 8)) { Slur = Slur.Pull },
        ];
        var recipe = new Recipe
        {
            Instrument = new Fretboard { Tuning = TuningOf("bass") },
            Rhythm = new RhythmPlan { Meter = MeterOf("3/4"), NotesPerBeat = 2 },
        };

        var text = TextTab.Write(
            PlayedLines.Of(recipe, entries),
            new TabWriting { Counts = false, Fingers = false }
        );

        Assert.Equal(
            """
            Tuning: E A D G (low to high)
            Meter: 3/4, 2 to the beat

            Rhythm  q     e  re q       e  e
                 G|-10---h12---\9-----|(9)p7--|
                 D|-------------------|-------|
                 A|-------------------|-------|
                 E|-------------------|-------|

            """,
            text
        );
    }

    [Fact]
    public void Triplets_are_counted_and_finger_style_strokes_are_named()
    {
        var strokes = new[] { Stroke.Thumb, Stroke.Index, Stroke.Middle, Stroke.Ring };
        var entries = PlayedLines
            .Entries("4:0 2 3:1 2", Fraction.Of(1, 12))
            .Select((entry, i) => entry with { Stroke = strokes[i] });
        var recipe = new Recipe
        {
            Cell = new Cell { Offsets = [0], Sound = NoteSound.LetRing },
        };

        var lines = Lines(recipe, entries, new TabWriting { Fingers = false });

        Assert.Contains("Signs: a ring, i index, m middle, p thumb", lines);
        Assert.Contains("Count   1    trip let  2", lines);
        Assert.Contains("Rhythm  e3   e3   e3   e3", lines);
        Assert.Contains("Stroke  p    i    m    a", lines);
        Assert.Contains("Sound   LR--------------", lines);
    }

    [Fact]
    public void What_is_said_between_the_beats_is_a_setting()
    {
        var syllables = new CountSyllables(
            ImmutableDictionary<int, ImmutableArray<string>>.Empty.Add(2, ["und"])
        );

        var lines = Lines(
            new Recipe(),
            PlayedLines.Entries("1:1 2 3", Fraction.Of(1, 8)),
            new TabWriting { Syllables = syllables }
        );

        Assert.Contains("Count   1   und 2", lines);
    }

    [Theory]
    [InlineData("6/8", "1/8", "Count   1 2 3 4 5 6")]
    [InlineData("4/4", "1/8", "Count   1 & 2 & 3 &")]
    [InlineData("4/4", "1/20", "Count   1  2  3  4  5  2")]
    [InlineData("4/4", "1/24", "Count   1    trip let  &    trip let")]
    [InlineData("4/4", "1/32", "Count   1   e   &")]
    public void Beats_are_counted_in_the_written_unit(string meter, string length, string count)
    {
        var recipe = new Recipe { Rhythm = new RhythmPlan { Meter = MeterOf(meter) } };
        var each = Fraction.TryParse(length, out var parsed) ? parsed : default;

        var lines = Lines(
            recipe,
            PlayedLines.Entries("1:1 2 3 4 5 6", each),
            new TabWriting { Fingers = false }
        );

        Assert.StartsWith(
            count,
            lines.Single(line => line.StartsWith("Count", StringComparison.Ordinal)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(60)]
    [InlineData(76)]
    public void Lines_stay_within_the_width_also_where_a_bar_has_to_be_cut(int width)
    {
        var places = string.Join(' ', Enumerable.Repeat("6:10 12", 40));

        var lines = Lines(
            new Recipe(),
            PlayedLines.Entries(places, Fraction.Of(1, 32)),
            new TabWriting { Width = width }
        );

        Assert.InRange(lines.Max(line => line.Length), 50, width);
        Assert.True(lines.Count(line => line.StartsWith("Rhythm", StringComparison.Ordinal)) > 3);
    }

    [Fact]
    public void A_bar_is_cut_before_a_beat()
    {
        var places = string.Join(' ', Enumerable.Repeat("6:10 12", 16));

        var counts = Lines(new Recipe(), PlayedLines.Entries(places, Fraction.Of(1, 32)), new TabWriting())
            .Where(line => line.StartsWith("Count", StringComparison.Ordinal))
            .Select(line => line[8]);

        Assert.Equal(['1', '3'], counts);
    }

    [Theory]
    [InlineData("standard", "e B G D A E")]
    [InlineData("DADGAD", "d A G D A D")]
    [InlineData("all fourths", "F C G D A E")]
    [InlineData("seven-string", "e B G D A E B")]
    public void Strings_are_labelled_by_name_the_first_in_lower_case_where_another_has_it(
        string tuning,
        string labels
    )
    {
        var recipe = new Recipe { Instrument = new Fretboard { Tuning = TuningOf(tuning) } };

        var strings = Lines(recipe, PlayedLines.Entries("1:1", Fraction.One), new TabWriting())
            .Where(line => line.Contains('|', StringComparison.Ordinal))
            .Select(line => line[..line.IndexOf('|', StringComparison.Ordinal)].Trim());

        Assert.Equal(labels, string.Join(' ', strings));
    }

    [Theory]
    [InlineData("drop C", "Tuning: C G C F A D (low to high)")]
    [InlineData("E2 A2 D3 G3", "Tuning: E2 A2 D3 G3 (low to high)")]
    [InlineData("G4 C4 E4 A4", "Tuning: G4 C4 E4 A4 (low to high)")]
    [InlineData("D2 F2 C3 G3 Bb3 E4", "Tuning: D F C G Bb E (low to high)")]
    public void Octaves_are_written_where_names_alone_would_mislead(string tuning, string line)
    {
        var recipe = new Recipe { Instrument = new Fretboard { Tuning = TuningOf(tuning) } };

        Assert.Contains(line, Lines(recipe, PlayedLines.Entries("1:1", Fraction.One), new TabWriting()));
    }

    [Theory]
    [InlineData("Warm-up", "Warm-up")]
    [InlineData("Two\nlines", "Two lines")]
    [InlineData("Tempo: a study", "Title: Tempo: a study")]
    [InlineData("|---5---|", "Title: |---5---|")]
    [InlineData("Count to four", "Count to four")]
    public void A_title_cannot_be_taken_for_anything_else(string title, string line)
    {
        var recipe = new Recipe { Title = title };

        var text = TextTab.Write(PlayedLines.Of(recipe, PlayedLines.Entries("1:1", Fraction.One)));

        Assert.Equal(line, text.Split('\n')[0]);
        Assert.Equal(title.Replace('\n', ' '), TabTexts.Read(text).Recipe.Title);
    }

    [Fact]
    public void General_slurs_are_written_as_what_they_are()
    {
        Entry[] entries =
        [
            new(Place.At(1, 5), Fraction.Of(1, 8)) { Finger = 1 },
            new(Place.At(1, 8), Fraction.Of(1, 8)) { Finger = 4, Slur = Slur.Slurred },
            new(Place.At(1, 5), Fraction.Of(1, 8)) { Finger = 1, Slur = Slur.Slurred },
            new(Place.At(1, 7), Fraction.Of(1, 8)) { Finger = 1, Slur = Slur.Slurred },
            new(Place.At(1, 4), Fraction.Of(1, 8)) { Finger = 1, Slur = Slur.Slurred },
            new(Place.At(1, 4), Fraction.Of(1, 8)) { Finger = 1, Slur = Slur.Slurred },
        ];

        var lines = Lines(new Recipe(), entries, new TabWriting());

        Assert.Contains("     e|-5h8p5/7\\4-4-|", lines);
    }

    [Fact]
    public void Overlapping_notes_are_refused()
    {
        var played = PlayedLines.Of(new Recipe(), PlayedLines.Entries("1:1 2", Fraction.Of(1, 4)));
        var rest = new Rest(Fraction.Of(1, 8), Fraction.Of(1, 8));

        var overlapping = played with { Line = played.Line with { Rests = [rest] } };

        Assert.Throws<ArgumentException>(() => TextTab.Write(overlapping));
    }

    [Theory]
    [InlineData(59)]
    [InlineData(77)]
    public void Widths_that_cannot_be_read_are_refused(int width) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new TabWriting { Width = width });

    private static string[] Lines(Recipe recipe, IEnumerable<Entry> entries, TabWriting options) =>
        TextTab.Write(PlayedLines.Of(recipe, entries), options).Split('\n');

    private static Tuning TuningOf(string text) =>
        Tuning.TryParse(text, out var tuning) ? tuning : throw new ArgumentException(text, nameof(text));

    private static Meter MeterOf(string text) =>
        Meter.TryParse(text, out var meter) ? meter : throw new ArgumentException(text, nameof(text));
}
