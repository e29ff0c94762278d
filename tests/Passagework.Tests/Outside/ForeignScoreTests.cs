using System.Text.Json;
using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Tests.Notation;

namespace Passagework.Tests.Outside;

/// <summary>
/// Scores that we did not write: the example tunes of the Debian package "abcmidi", put into MusicXML by the npm package
/// "musicxml-io", counted by the reader of that package and heard by the one of the npm package "musicvis-lib".
/// </summary>
public sealed class ForeignScoreTests
{
    // Tunes for all instruments: eight strings tuned far apart hold them all.
    private static readonly MusicXmlReading Wide = new()
    {
        Instrument = new Fretboard { Tuning = Scores.Tuning("E1 B1 F#2 C#3 A3 E4 C5 G5"), Frets = 36 },
    };

    private static readonly IReadOnlyList<ForeignTune> Tunes = ForeignTune.All();

    [Fact]
    public void Scores_from_elsewhere_have_the_bars_and_notes_that_a_reader_counts()
    {
        var seen = Ask("scores.mjs", "musicxml-io", Tunes.Select(tune => tune.Score));
        var read = 0;

        foreach (var (tune, counts) in Tunes.Zip(seen))
        {
            var parts = counts.EnumerateArray().Select(Counted).ToList();
            if (parts.TrueForAll(part => part.EndsWith(" 0 notes", StringComparison.Ordinal)))
            {
                Assert.StartsWith(
                    "no notes in the file",
                    Scores.Fault(tune.Score, Wide),
                    StringComparison.Ordinal
                );
                continue;
            }

            Assert.Equal(parts, Scores.Read(tune.Score, Wide).Parts.Select(Counted));
            read++;
        }

        // Debian 12 has 23 tunes, one of them only rests.
        Assert.InRange(read, 20, Tunes.Count - 1);
    }

    [Fact]
    public void Packed_scores_from_elsewhere_read_as_the_plain_ones()
    {
        foreach (var tune in Tunes.Where(tune => tune.HasNotes))
        {
            var packed = MusicXml.Read(tune.Packed, Wide).OrThrow();

            Assert.Equal(Scores.Entries(Scores.Read(tune.Score, Wide)), Scores.Entries(packed));
        }
    }

    [Fact]
    public void Scores_from_elsewhere_sound_as_another_reader_hears_them()
    {
        // The other reader takes no parts of semitones, and joins a tie over other notes between.
        var tunes = Tunes
            .Where(tune => tune.HasNotes && !tune.HasPartsOfSemitones && !tune.HasTieOverNotes)
            .ToList();
        // It plays endings of several bars otherwise, so it is asked for the bars as they are written.
        var heard = Ask("played.mjs", "musicvis-lib", tunes.Select(tune => tune.WithoutRepeats()));

        var lines = tunes.Zip(heard).Sum(pair => Compare(pair.First, pair.Second, Wide));

        // Parts of all tunes together; Debian 12 has 26.
        Assert.InRange(lines, 20, int.MaxValue);
    }

    [Fact]
    public void Repeats_from_elsewhere_are_played_as_another_reader_plays_them()
    {
        var tunes = Tunes.Where(tune => tune.HasPlainRepeats).ToList();
        var heard = Ask("played.mjs", "musicvis-lib", tunes.Select(tune => tune.Score));

        var lines = tunes
            .Zip(heard)
            .Sum(pair => Compare(pair.First, pair.Second, Wide with { UnrollRepeats = true }));

        // Debian 12 has 11 in 8 tunes.
        Assert.InRange(lines, 8, int.MaxValue);
    }

    private static int Compare(ForeignTune tune, JsonElement heard, MusicXmlReading reading)
    {
        var parts = Scores.Read(tune.Score, reading).Parts;
        foreach (var (part, notes) in parts.Zip(heard.EnumerateArray().Select(HeardNote.TopNotes)))
        {
            var line = LineBuilder
                .Build(Scores.Read(tune.Score, reading with { Part = part.Id }).Recipe)
                .OrThrow();
            Assert.Equal(notes.Select(note => note.Midi), line.Notes.Select(note => note.Midi));
            if (!tune.HasGraceNotes)
            {
                // For the other reader grace notes have a time of their own.
                AssertSameRhythm(notes, line);
            }
        }

        return parts.Length;
    }

    // The tempo is not compared: where each note stands on the way from the first to the last.
    private static void AssertSameRhythm(IReadOnlyList<HeardNote> heard, Line line)
    {
        var way = heard[^1].Start - heard[0].Start;
        var first = line.Notes[0].Onset;
        var length = (line.Notes[^1].Onset - first).ToDouble();
        foreach (var (note, ours) in heard.Zip(line.Notes))
        {
            var expected = (note.Start - heard[0].Start) / way;
            Assert.Equal(expected, (ours.Onset - first).ToDouble() / length, tolerance: 0.0001);
        }
    }

    private static string Counted(JsonElement part) =>
        $"{part.GetProperty("bars")} bars, {part.GetProperty("notes")} notes";

    private static string Counted(ScorePart part) =>
        $"{part.Bars} bars, {part.Voices.Sum(voice => voice.Notes)} notes";

    private static JsonElement[] Ask(string script, string package, IEnumerable<string> scores) =>
        [.. NodeScript.Ask(script, package, JsonSerializer.Serialize(scores)).RootElement.EnumerateArray()];
}
