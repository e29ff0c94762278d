using Passagework.Exercises;
using Passagework.Sound.Takes;
using Passagework.Tests.Sound.Performance;

namespace Passagework.Tests.Sound.Takes;

/// <summary>Each part of a plan alone moves what it names and nothing else.</summary>
public sealed class TakeFactorTests
{
    private const string Skips = "skipped-fifths-up-and-down";
    private const string Shifts = "position-shift-up-and-down";
    private const string Groups = "groups-of-five-up-and-down";

    /// <summary>Loose in every way, so that no part hides behind another's absence.</summary>
    private static readonly TakePlan Loose = new()
    {
        AskedBpm = 60,
        SpreadMs = 8,
        VelocitySpread = 5,
        RingingShare = 0.3,
    };

    [Fact]
    public void Up_strokes_come_late() =>
        MovesOnly(Groups, Loose with { UpStrokeMs = 15 }, note => note.Stroke == Stroke.Up ? 15 : 0);

    [Fact]
    public void Notes_on_a_neighbouring_string_come_late() =>
        MovesOnly(Skips, Loose with { StringChangeMs = 15 }, note => Math.Abs(note.Crossing) == 1 ? 15 : 0);

    [Fact]
    public void Notes_beyond_a_skipped_string_come_late() =>
        MovesOnly(Skips, Loose with { StringSkipMs = 15 }, note => Math.Abs(note.Crossing) > 1 ? 15 : 0);

    [Fact]
    public void Notes_after_a_shift_come_late() =>
        MovesOnly(Shifts, Loose with { ShiftMs = 15 }, note => note.Shifted ? 15 : 0);

    [Fact]
    public void Places_in_the_group_come_early_or_late() =>
        MovesOnly(
            Groups,
            Loose with
            {
                ByPlaceMs = [0, 12, -9],
            },
            note =>
                note.InGroup?.Place switch
                {
                    1 => 12,
                    2 => -9,
                    _ => 0,
                }
        );

    [Fact]
    public void The_spread_of_strokes_is_the_one_planned()
    {
        var plan = new TakePlan
        {
            AskedBpm = 60,
            Times = 8,
            SpreadMs = 12,
        };
        var late = Taken.Make(Groups, plan).Truth.Select(note => note.DeviationMs).ToArray();

        Assert.Equal(640, late.Length);
        Assert.InRange(late.Average(), -1.2, 1.2);
        Assert.InRange(Math.Sqrt(late.Average(ms => ms * ms)), 11, 13);
    }

    [Fact]
    public void A_wide_spread_is_cut_and_keeps_the_order()
    {
        var take = Taken.Make(
            Groups,
            new TakePlan
            {
                AskedBpm = 150,
                SpreadMs = 150,
                Times = 4,
            }
        );

        Assert.InRange(take.Truth.Max(note => Math.Abs(note.DeviationMs)), 40, 42.01);
        var gaps = take.Truth.Zip(take.Truth.Skip(1), (a, b) => b.PlannedSeconds - a.PlannedSeconds);
        Assert.InRange(gaps.Min(), 0.025 - 2e-6, 0.03);
    }

    [Fact]
    public void Missed_notes_alone_are_missed()
    {
        var (plain, take) = (
            Taken.Make(Groups, Loose),
            Taken.Make(Groups, Loose with { MissedNotes = [7, 31] })
        );

        Assert.Equal([7, 31], Indexes(take, TruthKind.Missed));
        Assert.All(take.Truth.Where(n => n.Kind == TruthKind.Missed), n => Assert.Null(n.Sound));
        Assert.Equal(Timing(plain), Timing(take));
        Assert.Equal(
            plain
                .Truth.Where(n => n.ScoreIndex is not (7 or 31))
                .Select(n => (n.Sound!.Midi, n.Sound.Velocity)),
            take.Truth.Where(n => n.Sound is not null).Select(n => (n.Sound!.Midi, n.Sound.Velocity))
        );
    }

    [Fact]
    public void Wrong_notes_sound_another_key_at_the_same_time()
    {
        var (plain, take) = (
            Taken.Make(Groups, Loose),
            Taken.Make(Groups, Loose with { WrongNotes = [7, 31] })
        );

        Assert.Equal([7, 31], Indexes(take, TruthKind.Wrong));
        Assert.Equal(Timing(plain), Timing(take));
        foreach (var (right, real) in plain.Truth.Zip(take.Truth))
        {
            Assert.Equal(real.Kind == TruthKind.Wrong, real.Sound!.Midi != right.Sound!.Midi);
            Assert.Equal(right.Sound.Midi, real.ExpectedMidi);
        }
    }

    [Fact]
    public void Every_note_can_be_wrong_and_then_sounds_another_key()
    {
        // In a repeated note the pattern's next note is no other key.
        var repeated = string.Join(' ', Enumerable.Repeat("3:5/1D 3:5/1U", 20));
        foreach (var line in new[] { Taken.Of("slurred-threes-up-and-down"), Played.Of(repeated) })
        {
            var take = Taken.Make(line, new TakePlan { AskedBpm = 120, WrongShare = 1 });

            Assert.All(take.Truth, note => Assert.Equal(TruthKind.Wrong, note.Kind));
            Assert.All(take.Truth, note => Assert.NotEqual(note.ExpectedMidi, note.Sound!.Midi));
        }
    }

    [Fact]
    public void Strokes_too_many_lie_between_the_notes_and_leave_them_in_place()
    {
        var (plain, take) = (
            Taken.Make(Groups, Loose),
            Taken.Make(Groups, Loose with { ExtraNotes = [7, 31] })
        );
        var extras = take.Truth.Where(n => n.Kind == TruthKind.Extra).ToList();

        Assert.Equal(2, extras.Count);
        Assert.Equal(Timing(plain), Timing(take));
        foreach (var (extra, after) in extras.Zip([7, 31]))
        {
            var (from, to) = (plain.Truth[after].PlannedSeconds, plain.Truth[after + 1].PlannedSeconds);
            Assert.InRange((extra.PlannedSeconds - from) / (to - from), 0.37, 0.63);
            Assert.Equal((null, null), (extra.ScoreIndex, extra.ExpectedMidi));
        }
    }

    [Fact]
    public void Chance_makes_as_many_slips_as_planned()
    {
        var plan = new TakePlan
        {
            AskedBpm = 140,
            Times = 20,
            MissedShare = 0.04,
            WrongShare = 0.04,
            ExtraShare = 0.03,
        };
        var take = Taken.Make(Groups, plan);

        // 1,600 notes: four deviations of a count of 64 are 31, of 44 (four in five have room) are 26.
        Assert.InRange(take.Truth.Count(n => n.Kind == TruthKind.Missed), 33, 95);
        Assert.InRange(take.Truth.Count(n => n.Kind == TruthKind.Wrong), 33, 95);
        Assert.InRange(take.Truth.Count(n => n.Kind == TruthKind.Extra), 20, 75);
        Assert.Equal(1600, take.Truth.Count(n => n.ScoreIndex is not null));
    }

    [Fact]
    public void Ringing_alone_changes_ends_of_notes_before_a_string_change()
    {
        var dry = Taken.Make(Groups, Loose with { RingingShare = 0 });
        var wet = Taken.Make(Groups, Loose with { RingingShare = 1, RingLeastMs = 100, RingMostMs = 150 });

        Assert.Equal(Timing(dry), Timing(wet));
        foreach (var (i, note) in wet.Truth.Index().SkipLast(1))
        {
            var (ring, next) = (note.Sound!.RingSeconds, wet.Truth[i + 1]);
            if (next.String == note.String)
            {
                Assert.Equal(0, ring);
                Assert.Equal(dry.Truth[i].Sound!.EndSeconds, note.Sound.EndSeconds);
            }
            else
            {
                var again = wet.Truth.Skip(i + 1).FirstOrDefault(n => n.String == note.String);
                var room = (again?.PlannedSeconds ?? double.PositiveInfinity) - next.PlannedSeconds;
                Assert.InRange(ring, Math.Min(room, 0.1) - 2e-6, 0.15);
            }
        }

        Assert.InRange(dry.Truth.Max(n => n.Sound!.RingSeconds), 0, 1e-6);
    }

    [Fact]
    public void The_share_of_strings_that_ring_is_the_one_planned()
    {
        var take = Taken.Make(
            Groups,
            new TakePlan
            {
                AskedBpm = 60,
                Times = 10,
                RingingShare = 0.25,
            }
        );
        var changes = take
            .Truth.Zip(take.Truth.Skip(1))
            .Where(p => p.First.String != p.Second.String)
            .ToList();
        var ringing = changes.Count(p => p.First.Sound!.RingSeconds > 0.079);

        Assert.True(changes.Count > 300, $"{changes.Count}");
        Assert.InRange(ringing / (double)changes.Count, 0.16, 0.34);
    }

    [Fact]
    public void Dynamics_alone_change_velocities()
    {
        var plan = Loose with { MeanVelocity = 70, VelocitySpread = 8, GroupAccent = 20, Times = 6 };
        var (plain, take) = (Taken.Make(Groups, Loose with { Times = 6 }), Taken.Make(Groups, plan));
        var loud = take.Truth.Where(n => n.InGroup?.Place == 0).Select(n => n.Sound!.Velocity).ToArray();
        double[] soft =
        [
            .. take.Truth.Where(n => n.InGroup?.Place != 0).Select(n => (double)n.Sound!.Velocity),
        ];

        Assert.Equal(Timing(plain), Timing(take));
        Assert.Equal(
            plain.Truth.Select(n => n.Sound!.EndSeconds),
            take.Truth.Select(n => n.Sound!.EndSeconds)
        );
        Assert.InRange(soft.Average(), 68.5, 71.5);
        Assert.InRange(loud.Average(), 87, 93);
        Assert.InRange(Math.Sqrt(soft.Average(v => Math.Pow(v - soft.Average(), 2))), 7, 9);
    }

    [Fact]
    public void What_the_recording_adds_changes_no_note()
    {
        var plain = Taken.Make(Groups, Loose).Truth;
        TakePlan[] recorded =
        [
            Loose with
            {
                LevelDb = -30,
            },
            Loose with
            {
                OverloadDb = 10,
            },
            Loose with
            {
                NoiseUnderDb = 20,
            },
            Loose with
            {
                HumUnderDb = 20,
            },
            Loose with
            {
                RoomUnderDb = 10,
            },
            Loose with
            {
                ClickUnderDb = 20,
            },
        ];

        Assert.All(recorded, plan => Assert.Equal(plain, Taken.Make(Groups, plan).Truth));
    }

    private static void MovesOnly(string exercise, TakePlan plan, Func<TruthNote, double> late)
    {
        var (plain, take) = (Taken.Make(exercise, Loose), Taken.Make(exercise, plan));

        Assert.Contains(take.Truth, note => late(note) != 0);
        Assert.Contains(take.Truth, note => late(note) == 0);
        Assert.Equal(plain.Truth.Length, take.Truth.Length);
        foreach (var (before, after) in plain.Truth.Zip(take.Truth))
        {
            Assert.Equal(late(after), 1000 * (after.PlannedSeconds - before.PlannedSeconds), 0.01);
            Assert.Equal(
                (before.Kind, before.Sound!.Midi, before.Sound.Velocity),
                (after.Kind, after.Sound!.Midi, after.Sound.Velocity)
            );
        }
    }

    private static IEnumerable<int> Indexes(Take take, TruthKind kind) =>
        take.Truth.Where(note => note.Kind == kind).Select(note => note.ScoreIndex!.Value);

    private static IEnumerable<double> Timing(Take take) =>
        take.Truth.Where(note => note.Kind != TruthKind.Extra).Select(note => note.PlannedSeconds);
}
