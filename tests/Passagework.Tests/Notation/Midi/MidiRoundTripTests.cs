using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Notation;

public sealed class MidiRoundTripTests
{
    private static readonly string[] Keys = "C C# D Eb E F F# G G# A Bb B".Split(' ');
    private static readonly string[] Meters = ["4/4", "3/4", "6/8", "7/8", "2/2", "5/16", "12/8"];

    private static readonly string[] Shares = ["1/2", "3/5", "2/3", "5/8", "3/4", "29/50"];

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
        "1/72",
        "5/4",
        "1/64",
        "1/44",
    ];

    private static readonly Gen<WrittenEntry> AnyEntry = Gen.Int[40, 85]
        .Select(
            Gen.Int[0, Lengths.Length - 1],
            Gen.Int[0, 4],
            (key, length, kind) =>
                new WrittenEntry
                {
                    Pitch = kind == 0 ? null : Speller.Spell(null, [key])[0],
                    Duration = MidiLines.Time(Lengths[length]),
                }
        );

    private static readonly Gen<RhythmPlan> AnyRhythm = Gen.Int[0, Meters.Length - 1]
        .Select(
            Gen.Int[1, 8],
            Gen.Int[0, Shares.Length - 1],
            Gen.Int[0, 4],
            Gen.Int[150, 3000],
            (meter, notesPerBeat, share, start, tempo) =>
                new RhythmPlan
                {
                    Meter = Meter.TryParse(Meters[meter], out var known) ? known : default,
                    NotesPerBeat = notesPerBeat,
                    Swing = Swing.TryOf(MidiLines.Time(Shares[share]), out var swing) ? swing : default,
                    StartOffset = Fraction.Of(start, 16),
                    TempoBpm = tempo == 3000 ? null : tempo / 10.0,
                }
        );

    // Each number: 82 exercises in 12 keys, less those that are not laid out there (counted family by family in the
    // tests of the library: 35, 35, 74, 32, 183).
    [Theory]
    [InlineData("standard", 949)]
    [InlineData("drop D", 949)]
    [InlineData("open G", 910)]
    [InlineData("seven-string", 952)]
    [InlineData("bass", 801)]
    public void Library_keeps_every_key_onset_and_length(string tuning, int exercises)
    {
        var instrument = Necks.Tuned(tuning);
        var kept = 0;
        foreach (var (recipe, index) in InAllKeys(tuning).Select((recipe, index) => (recipe, index)))
        {
            var swung = WithSwing(recipe, index);
            if (!LineBuilder.Build(swung).TryGet(out var line, out _))
            {
                continue;
            }

            var options = new MidiWriting
            {
                Format = index % 3 == 0 ? MidiFormat.Single : MidiFormat.Simultaneous,
            };
            AssertKept(line, instrument, options);
            kept++;
        }

        Assert.Equal(exercises, kept);
    }

    // Where times need more than the 32,767 ticks a quarter that the format has, only the nearest tick can be kept;
    // the remark says which it is.
    [Fact]
    public void Any_written_line_keeps_every_key_onset_and_length()
    {
        var exact = 0;
        AnyRhythm
            .Select(AnyEntry.List[1, 30])
            .Where((_, entries) => entries.Exists(entry => !entry.IsRest))
            .Sample(
                (rhythm, entries) =>
                {
                    var recipe = new Recipe { Rhythm = rhythm, Written = new WrittenLine([.. entries]) };
                    if (LineBuilder.Build(recipe).TryGet(out var line, out _) && IsExact(line))
                    {
                        AssertKept(line, Fretboard.Standard, new MidiWriting());
                        Interlocked.Increment(ref exact);
                    }
                },
                iter: 1000
            );

        Assert.InRange(exact, 200, 1000);
    }

    // Without the remark the same has to be found from the ticks alone.
    [Theory]
    [InlineData(2, "3/5")]
    [InlineData(2, "2/3")]
    [InlineData(2, "4/7")]
    [InlineData(2, "5/8")]
    [InlineData(2, "5/7")]
    [InlineData(4, "3/5")]
    [InlineData(4, "2/3")]
    [InlineData(4, "5/9")]
    public void Swing_is_found_without_the_remark(int notesPerBeat, string share)
    {
        Assert.True(Swing.TryOf(MidiLines.Time(share), out var swing));
        var fives = MidiLines.Exercise("groups-of-five-up");
        var recipe = fives with { Rhythm = fives.Rhythm with { NotesPerBeat = notesPerBeat, Swing = swing } };
        var line = LineBuilder.Build(recipe).OrThrow();

        var import = Again(line, Fretboard.Standard, new MidiWriting { Remark = false });

        Assert.Equal((swing, notesPerBeat), (import.Recipe.Rhythm.Swing, import.Recipe.Rhythm.NotesPerBeat));
        Assert.Equal(MidiLines.Notes(line), MidiLines.Notes(LineBuilder.Build(import.Recipe).OrThrow()));
        Assert.Contains(
            $"written straight with swing {share}",
            MidiFiles.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Even_notes_are_found_without_the_remark(int notesPerBeat)
    {
        foreach (var meter in Meters)
        {
            var fives = MidiLines.Exercise("groups-of-five-up-and-down");
            var recipe = fives with
            {
                Rhythm = fives.Rhythm with
                {
                    NotesPerBeat = notesPerBeat,
                    Meter = Meter.TryParse(meter, out var known) ? known : default,
                },
            };
            var line = LineBuilder.Build(recipe).OrThrow();

            var import = Again(line, Fretboard.Standard, new MidiWriting { Remark = false });

            Assert.Equal(MidiLines.Notes(line), MidiLines.Notes(LineBuilder.Build(import.Recipe).OrThrow()));
            Assert.Equal((meter, 0.0), (import.Recipe.Rhythm.Meter.ToString(), import.Residual.LargestTicks));
        }
    }

    private static bool IsExact(Line line) =>
        Passagework.Notation.Midi.Write(MidiLines.Of(line)).AsSpan().IndexOf(", exact"u8) > 0;

    private static void AssertKept(Line line, Fretboard instrument, MidiWriting options)
    {
        var import = Again(line, instrument, options);
        var (rhythm, again) = (line.Recipe.Rhythm, import.Recipe.Rhythm);

        // A file has no rest before its first note: it is part of the start.
        var bars = (line.Notes[0].Onset / rhythm.Meter.Bar).Floor();
        var shift = rhythm.Meter.Bar * Fraction.Of(bars);
        var expected = line.Notes.Select(note => $"{note.Midi} {note.Onset - shift} {note.Duration}");
        Assert.Equal(expected, MidiLines.Notes(LineBuilder.Build(import.Recipe).OrThrow()));
        Assert.Equal(
            (rhythm.Meter, rhythm.NotesPerBeat, rhythm.Swing, rhythm.TempoBpm),
            (again.Meter, again.NotesPerBeat, again.Swing, again.TempoBpm)
        );
        Assert.Equal(line.Recipe.Title ?? line.Recipe.Id ?? options.TrackName, import.Recipe.Title);
        Assert.Equal(0, import.NotesLeftOut);
        Assert.True(bars > 0 || import.Warnings.IsEmpty, MidiFiles.Warnings(import));
        Assert.Equal(new MidiResidual(0, 0, 0, 0), import.Residual);
    }

    private static MidiImport Again(Line line, Fretboard instrument, MidiWriting options) =>
        MidiFiles.Read(
            Passagework.Notation.Midi.Write(MidiLines.Of(line), options),
            new MidiReading { Instrument = instrument }
        );

    private static IEnumerable<Recipe> InAllKeys(string tuning) =>
        from exercise in Library.All
        from key in Keys
        select exercise.Recipe with
        {
            Notes = Necks.Notes(key, exercise.Recipe.Notes?.Scale ?? ""),
            Instrument = Necks.Tuned(tuning),
            // Locks belong to the notes of the exercise as it stands.
            Fretting = exercise.Recipe.Fretting with
            {
                Locks = [],
            },
        };

    private static Recipe WithSwing(Recipe recipe, int index) =>
        recipe with
        {
            Rhythm = recipe.Rhythm with
            {
                Swing = Swing.TryOf(Fraction.Of(50 + (index % 26), 100), out var swing) ? swing : default,
                TempoBpm = index % 2 == 0 ? 60 + (index % 97) : null,
            },
        };
}
