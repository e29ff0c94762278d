using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

/// <summary>Onsets, lengths, rests and accents; worked by hand.</summary>
public class LineTimeTests
{
    [Theory]
    [InlineData("4/4", 4, "0+1/16 1/16+1/16 1/8+1/16")]
    [InlineData("4/4", 3, "0+1/12 1/12+1/12 1/6+1/12")]
    [InlineData("6/8", 3, "0+1/8 1/8+1/8 1/4+1/8")]
    [InlineData("3/8", 2, "0+1/16 1/16+1/16 1/8+1/16")]
    public void Build_counts_notes_per_felt_beat(string meter, int notesPerBeat, string expected)
    {
        var rhythm = new RhythmPlan { NotesPerBeat = notesPerBeat, Meter = Metre(meter) };

        Assert.Equal(expected, Times(Line(OnSteps(3, 0, 1, 2) with { Rhythm = rhythm })));
    }

    [Fact]
    public void Build_repeats_a_rhythm_pattern_over_notes_and_rests() =>
        Assert.Equal(
            "0+1/8 1/8+1/16 [3/16+1/8] 5/16+1/16 3/8+1/8 [1/2+1/16]",
            Times(
                Line(
                    OnSteps(3, 0, 1, null) with
                    {
                        Rhythm = new RhythmPlan { Pattern = [Fraction.Of(1, 8), Fraction.Of(1, 16)] },
                    }
                )
            )
        );

    [Fact]
    public void Build_counts_durations_in_pulses() =>
        Assert.Equal(
            "0+1/16 1/16+3/32 [5/32+1/8]",
            Times(
                Line(
                    OnSteps(2, 0, 1, null) with
                    {
                        Cell = new Cell
                        {
                            Offsets = [0, 1, null],
                            Durations = [Fraction.One, Fraction.Of(3, 2), Fraction.Of(2)],
                        },
                    }
                )
            )
        );

    [Fact]
    public void Build_joins_rests_that_touch() =>
        Assert.Equal(
            "[0+1/16] 1/16+1/16 [1/8+1/8] 1/4+1/16 [5/16+1/16]",
            Times(Line(OnSteps(2, null, 0, null)))
        );

    [Fact]
    public void Build_counts_rests_in_the_group()
    {
        var line = Line(OnSteps(3, null, 0, null, 1));

        Assert.Equal([1, 3, 1, 3], line.Notes.Select(note => note.InGroup ?? -1));
        Assert.Equal([0, 1, 2, 3], line.Notes.Select(note => note.Index));
    }

    [Fact]
    public void Build_begins_at_the_start_offset()
    {
        var line = Line(
            OnSteps(2, 0, 1) with
            {
                Rhythm = new RhythmPlan { StartOffset = Fraction.Of(3, 16) },
            }
        );

        Assert.Equal("3/16+1/16 1/4+1/16", Times(line));
        Assert.Equal(Fraction.Of(5, 16), line.End);
        Assert.Empty(line.Rests);
    }

    [Fact]
    public void Build_writes_swung_time_straight() =>
        Assert.Equal(
            "0+1/8 1/8+1/8",
            Times(
                Line(
                    OnSteps(2, 0, 1) with
                    {
                        Rhythm = new RhythmPlan
                        {
                            NotesPerBeat = 2,
                            Swing = Swing.TryOf(Fraction.Of(2, 3), out var swing) ? swing : default,
                        },
                    }
                )
            )
        );

    [Fact]
    public void Build_accents_the_named_entries()
    {
        var line = Line(
            OnSteps(4, 0, 1, 2) with
            {
                Cell = new Cell { Offsets = [0, 1, 2], Accents = [0, 2] },
            }
        );

        Assert.Equal([0, 2, 3, 5], line.Notes.Where(note => note.Accent).Select(note => note.Index));
    }

    [Fact]
    public void Doubled_durations_double_every_onset()
    {
        var lengths = Gen.Int[1, 12]
            .Array[3]
            .Select(eighths => eighths.Select(n => Fraction.Of(n, 4)).ToArray());
        lengths.Sample(
            durations =>
            {
                var slow = Lasting(durations.Select(length => length * Fraction.Of(2)));
                var fast = Lasting(durations);
                Assert.Equal(
                    slow.Notes.Select(note => note.Onset),
                    fast.Notes.Select(Twice(note => note.Onset))
                );
                Assert.Equal(
                    slow.Notes.Select(note => note.Duration),
                    fast.Notes.Select(Twice(note => note.Duration))
                );
            },
            iter: 200
        );

        static Line Lasting(IEnumerable<Fraction> durations) =>
            Line(
                OnSteps(6, 0, 2, 1) with
                {
                    Cell = new Cell { Offsets = [0, 2, 1], Durations = [.. durations] },
                }
            );

        static Func<LineNote, Fraction> Twice(Func<LineNote, Fraction> time) =>
            note => time(note) * Fraction.Of(2);
    }

    private static Meter Metre(string text) =>
        Meter.TryParse(text, out var meter) ? meter : throw new InvalidOperationException(text);
}
