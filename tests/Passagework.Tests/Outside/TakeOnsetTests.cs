using System.Collections.Immutable;
using Passagework.Sound.Takes;
using Passagework.Tests.Sound.Measuring;
using Passagework.Tests.Sound.Takes;

namespace Passagework.Tests.Outside;

/// <summary>Planned faults as a blind listener hears them: aubio's onsets and pitch (Debian's aubio-tools).</summary>
/// <remarks>
/// Its onsets fall on steps of 256 samples, 5.8 ms, and late by a constant; means over many notes see less than that.
/// </remarks>
public sealed class TakeOnsetTests
{
    private const double Near = 0.06;

    [Fact]
    public void Nothing_but_the_notes_is_heard_of_a_faultless_take()
    {
        var take = Taken.Make(Taken.Demo("faultless"));
        var heard = Onsets(take);

        Assert.Equal(80, heard.Length);
        Assert.InRange(heard.Zip(take.Truth, (h, n) => Math.Abs(h - n.Sound!.Attack.Tenth)).Max(), 0, 0.02);
    }

    [Fact]
    public void A_rushing_take_ends_faster_than_it_began()
    {
        var take = Taken.Make(Taken.Demo("rushing"));
        var heard = Matched(take).ConvertAll(pair => pair.Heard);
        var (first, last) = (Mean(heard[..16]), Mean(heard[^16..]));

        // Three times 23 sixteenths in two bars, 24 beats in all. The first 16 notes lie around beat 1.875, the last 16
        // around 19.625, and the tempo there is (1 + 0.125 b / 24) of that at the start.
        Assert.Equal(1.0915, first / last, 0.015);

        static double Mean(List<double> times) => (times[^1] - times[0]) / (times.Count - 1);
    }

    [Fact]
    public void Uneven_groups_are_heard_by_place()
    {
        var late = LateByOwnLine(Taken.Make(Taken.Demo("uneven-groups")));
        var places = late.ToLookup(l => l.Note.InGroup!.Value.Place, l => l.Ms);

        Assert.Equal(24, places[1].Average() - places[0].Average(), 4.0);
        Assert.Equal(-20, places[2].Average() - places[0].Average(), 4.0);
    }

    [Fact]
    public void Notes_beyond_a_skipped_string_are_heard_late()
    {
        var late = LateByOwnLine(Taken.Make(Taken.Demo("late-after-skips")));
        var bySkip = late.ToLookup(l => Math.Abs(l.Note.Crossing) > 1, l => l.Ms);

        Assert.InRange(bySkip[true].Count(), 10, 60);
        Assert.Equal(25, bySkip[true].Average() - bySkip[false].Average(), 4.0);
    }

    [Fact]
    public void Missed_notes_leave_a_hole_and_extra_ones_are_heard_between()
    {
        var missed = Taken.Make(Taken.Demo("missed-notes"));
        var extra = Taken.Make(Taken.Demo("extra-notes"));

        var (heardMissed, heardExtra) = (Onsets(missed), Onsets(extra));

        Assert.Equal(68, heardMissed.Length);
        Assert.Equal(75, heardExtra.Length);
        foreach (var note in missed.Truth.Where(n => n.Kind == TruthKind.Missed))
        {
            Assert.DoesNotContain(heardMissed, h => Math.Abs(h - note.PlannedSeconds) < Near);
        }

        foreach (var note in extra.Truth.Where(n => n.Kind == TruthKind.Extra))
        {
            Assert.Contains(heardExtra, h => Math.Abs(h - note.Sound!.Attack.Tenth) < 0.02);
        }
    }

    [Fact]
    public void Wrong_notes_sound_as_the_truth_says()
    {
        var take = Taken.Make(Taken.Demo("wrong-notes"));
        var keys = Keys(take);

        Assert.Equal(4, take.Truth.Count(n => n.Sound!.Midi != n.ExpectedMidi));
        Assert.Equal(take.Truth.Select(n => n.Sound!.Midi), keys.Select(key => (int)Math.Round(key)));
    }

    [Fact]
    public void A_flat_guitar_is_heard_flat()
    {
        var take = Taken.Make(Taken.Demo("flat-guitar"));
        double[] cents =
        [
            .. Keys(take).Zip(take.Truth, (key, n) => 100 * (key - n.ExpectedMidi!.Value)).Order(),
        ];

        Assert.Equal(-30, cents[cents.Length / 2], 2.0);
    }

    private static double[] Onsets(Take take) =>
        [
            .. Aubio
                .Said("aubioonset", take.Samples, ["-O", "complex", "-t", "0.1", "-B", "2048", "-H", "256"])
                .Select(line => line[0]),
        ];

    private static List<(TruthNote Note, double Heard)> Matched(Take take)
    {
        var heard = Onsets(take);
        var pairs = take
            .Truth.Select(note => (note, heard.MinBy(h => Math.Abs(h - note.PlannedSeconds))))
            .Where(pair => Math.Abs(pair.Item2 - pair.note.PlannedSeconds) < Near)
            .ToList();
        Assert.InRange(pairs.Count, take.Truth.Length - 2, take.Truth.Length);
        return pairs;
    }

    // Against the straight line through the heard onsets, which knows nothing of the plan but the beats of the score.
    private static List<(TruthNote Note, double Ms)> LateByOwnLine(Take take)
    {
        var pairs = Matched(take);
        var beats = take.Score.ToDictionary(n => n.Index, n => n.Beat);
        var whole = 4 * Math.Ceiling((take.Score[^1].Beat + 0.001) / 4);
        double[] xs = [.. pairs.Select(p => (p.Note.Pass * whole) + beats[p.Note.ScoreIndex!.Value])];
        var (meanX, meanY) = (xs.Average(), pairs.Average(p => p.Heard));
        var slope =
            xs.Zip(pairs, (x, p) => (x - meanX) * (p.Heard - meanY)).Sum()
            / xs.Sum(x => (x - meanX) * (x - meanX));
        return [.. pairs.Zip(xs, (p, x) => (p.Note, 1000 * (p.Heard - meanY - (slope * (x - meanX)))))];
    }

    // The middle one of YIN's readings from 50 ms after each attack to the next stroke.
    private static ImmutableArray<double> Keys(Take take)
    {
        var lines = Aubio.Said("aubiopitch", take.Samples, ["-p", "yin", "-B", "2048", "-H", "256"]);
        var ends = take.Truth.Skip(1).Select(n => n.PlannedSeconds).Append(double.PositiveInfinity);
        return
        [
            .. take.Truth.Zip(
                ends,
                (note, end) =>
                {
                    var from = note.Sound!.Attack.Tenth + 0.05;
                    double[] read =
                    [
                        .. lines
                            .Where(l => l[0] > from && l[0] < Math.Min(end, from + 0.08))
                            .Select(l => l[1])
                            .Order(),
                    ];
                    return 69 + (12 * Math.Log2(read[read.Length / 2] / 440));
                }
            ),
        ];
    }
}
