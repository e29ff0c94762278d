using System.Text.Json;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Notation;
using Path = System.IO.Path;

namespace Passagework.Tests.Outside;

/// <summary>MIDI against an independent parser (npm package "midi-file", pinned): our files, and files that we did not
/// write (test data of the npm packages "midiconvert" and "midifile-ts", pinned).</summary>
public sealed class MidiParserTests
{
    private static readonly string[] ForeignFiles =
    [
        "midiconvert/test/midi/bwv-846.mid",
        "midiconvert/test/midi/bwv-847.mid",
        "midiconvert/test/midi/bwv-850.mid",
        "midiconvert/test/midi/bwv-988-v01.mid",
        "midiconvert/test/midi/funk-kit.mid",
        "midifile-ts/fixtures/song.mid",
        "midifile-ts/fixtures/tracks.mid",
    ];

    // Everything from G#0 to E7: piano music and synthesizers fit on no real instrument.
    private static readonly Fretboard Wide = new()
    {
        Tuning = Tuning.Read("G#0 C#1 F#1 B1 E2 A2 E3 E4").OrThrow(),
        Frets = 36,
    };

    private static readonly Lazy<JsonElement[]> Foreign = new(() =>
        Parsed(ForeignFiles.Select(file => "node_modules/" + file))
    );

    public static TheoryData<int> ForeignIndexes => [.. Enumerable.Range(0, ForeignFiles.Length)];

    [Fact]
    public void Every_exercise_is_read_by_the_outside_parser_note_for_note()
    {
        var played = Library
            .All.Select((exercise, index) => MidiLines.Of(Varied(exercise.Recipe, index)))
            .ToList();
        var files = played.Select((line, index) => Passagework.Notation.Midi.Write(line, OptionsOf(index)));

        var parsed = Parsed(files.Select(Convert.ToHexString));

        Assert.Equal(82, parsed.Length);
        for (var i = 0; i < parsed.Length; i++)
        {
            AssertSame(played[i].Line, OptionsOf(i).Format, parsed[i]);
        }
    }

    [Theory]
    [MemberData(nameof(ForeignIndexes))]
    public void Foreign_tracks_are_listed_with_the_notes_that_the_outside_parser_counts(int file)
    {
        var theirs = TracksOf(Foreign.Value[file]).Select(track => track.Count);

        var ours = MidiFiles.Read(ForeignBytes(file), new MidiReading { Instrument = Wide }).Tracks;

        Assert.Equal(theirs, ours.Select(track => track.Notes));
    }

    [Theory]
    [MemberData(nameof(ForeignIndexes))]
    public void Foreign_notes_are_kept_or_listed_as_left_out_and_none_else(int file)
    {
        var tracks = TracksOf(Foreign.Value[file]);
        for (var number = 1; number <= tracks.Count; number++)
        {
            var import = MidiFiles.Read(
                ForeignBytes(file),
                new MidiReading { Track = number, Instrument = Wide }
            );

            var kept = import.Recipe.Written!.Entries.Where(entry => !entry.IsRest).ToList(); // always written
            var tones = kept.SelectMany(entry =>
                    entry
                        .With.Select(tone => tone.Pitch)
                        .Append(entry.Pitch)
                        .Select(pitch => pitch?.Midi ?? 0)
                )
                .ToList();
            Assert.Equal(tracks[number - 1].Count, tones.Count + import.NotesLeftOut);
            if (import.NotesLeftOut == import.LeftOut.Length)
            {
                var ours = tones.Concat(import.LeftOut.Select(note => note.Midi));
                Assert.Equal(tracks[number - 1].Order(), ours.Order());
            }
        }
    }

    // What each file holds, as the outside parser says it: tracks (or channels), and notes in the one chosen.
    [Theory]
    [InlineData("midiconvert/test/midi/bwv-846.mid", 6, 415)]
    [InlineData("midiconvert/test/midi/bwv-847.mid", 1, 1845)]
    [InlineData("midiconvert/test/midi/bwv-850.mid", 1, 1503)]
    [InlineData("midiconvert/test/midi/bwv-988-v01.mid", 2, 291)]
    [InlineData("midiconvert/test/midi/funk-kit.mid", 1, 39)]
    [InlineData("midifile-ts/fixtures/song.mid", 4, 72)]
    [InlineData("midifile-ts/fixtures/tracks.mid", 13, 629)]
    public void Foreign_file_gives_its_track_with_most_notes(string file, int tracks, int notes)
    {
        var import = MidiFiles.Read(
            ForeignBytes(Array.IndexOf(ForeignFiles, file)),
            new MidiReading { Instrument = Wide }
        );

        Assert.Equal((tracks, notes), (import.Tracks.Length, import.Tracks[import.Track - 1].Notes));
    }

    private static void AssertSame(Line line, MidiFormat format, JsonElement parsed)
    {
        var rhythm = line.Recipe.Rhythm;
        var ticks = Fraction.Of(4 * parsed.GetProperty("division").GetInt32());
        Fraction Tick(Fraction written) =>
            rhythm.Swing.Apply(written, rhythm.Meter, rhythm.NotesPerBeat) * ticks;

        Assert.Equal((int)format, parsed.GetProperty("format").GetInt32());
        Assert.Equal(
            line.Notes.Select(note => $"{note.Midi} {Tick(note.Onset)} {Tick(note.End)}"),
            parsed
                .GetProperty("notes")
                .EnumerateArray()
                .Last()
                .EnumerateArray()
                .Select(note => $"{note[0]} {note[1]} {note[2]}")
        );
        Assert.Equal(rhythm.Meter.ToString(), $"{parsed.GetProperty("beats")}/{parsed.GetProperty("unit")}");
        Assert.Equal(500_000, parsed.GetProperty("tempo").GetInt32());
        Assert.Equal(line.Recipe.Title ?? line.Recipe.Id, parsed.GetProperty("names")[0].GetString());
    }

    // 120 quarters a minute; swing and format change from exercise to exercise.
    private static Recipe Varied(Recipe recipe, int index) =>
        recipe with
        {
            Rhythm = recipe.Rhythm with
            {
                Swing = Swing.TryOf(Fraction.Of(10 + (index % 6), 20), out var swing) ? swing : default,
                TempoBpm = 120 * 0.25 / recipe.Rhythm.Meter.Beat.ToDouble(),
            },
        };

    private static MidiWriting OptionsOf(int index) =>
        new() { Format = index % 2 == 0 ? MidiFormat.Single : MidiFormat.Simultaneous };

    private static byte[] ForeignBytes(int file) =>
        File.ReadAllBytes(Path.Combine(NodeScript.Folder, "node_modules", ForeignFiles[file]));

    // Keys of each track as we count them: channels in a file of one track, else tracks with drums apart.
    private static List<List<int>> TracksOf(JsonElement parsed)
    {
        var single = parsed.GetProperty("format").GetInt32() == 0;
        return
        [
            .. parsed
                .GetProperty("notes")
                .EnumerateArray()
                .SelectMany(track =>
                    track
                        .EnumerateArray()
                        .GroupBy(note => single || note[4].GetInt32() == 9 ? note[4].GetInt32() : -1)
                        .OrderBy(group => group.First()[4].GetInt32())
                        .Select(group => group.Select(note => note[0].GetInt32()).ToList())
                ),
        ];
    }

    private static JsonElement[] Parsed(IEnumerable<string> files) =>
        [
            .. NodeScript
                .Ask("midi.mjs", "midi-file", JsonSerializer.Serialize(files))
                .RootElement.EnumerateArray(),
        ];
}
