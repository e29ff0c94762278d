using CsCheck;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Hands.Explaining;
using Passagework.Tests.Exercises.Ideas;
using static Passagework.Tests.Hands.Explaining.MoveExplanationTests;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Hands.Explaining;

public class OtherWaysTests
{
    // One finger for two frets of one string is slower than another finger (common practice).
    // The skip back of the fives: a place and a finger are each said as one says them.
    [Fact]
    public void A_place_is_at_and_a_stroke_is_with()
    {
        var measured = Measurer
            .Measure(Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(2))
            .OrThrow();

        var ways = OtherWays.Of(measured, 5);

        Assert.Equal(
            "At 5:3, the next best, the top tempo falls from 75 to 55 beats a minute.",
            ways.WhyFinger
        );
        Assert.StartsWith("With the down-stroke, the next best,", ways.WhyStroke, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_finger_again_would_be_slower_than_the_little_finger()
    {
        var ways = OtherWays.Of(Measured("groups-of-five-up"), 1);

        var first = Assert.Single(ways.Fingerings, way => way.Words == "first finger");
        Assert.True(first.Bpm < ways.Bpm);
        Assert.Contains(ways.Fingerings, way => way.Words == "third finger");
        Assert.Contains("third finger", ways.WhyFinger, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_way_is_measured_as_if_the_teacher_had_locked_it() =>
        RandomIdeas
            .All.Select(Gen.Int[0, 9])
            .Sample(
                (recipe, note) =>
                {
                    if (
                        !Measurer.Measure(recipe, Player.At(2)).TryGet(out var measured, out _)
                        || note >= measured.Realization.Notes.Length
                        || measured.Realization.Notes.Length > 100
                        || NoteLocks.Of(recipe, note) is not null
                    )
                    {
                        return true;
                    }

                    var ways = OtherWays.Of(measured, note);
                    return ways
                        .Fingerings.Concat(ways.Strokes)
                        .All(way => way.Bpm == LockedBpm(recipe, way.Lock));
                },
                iter: 40
            );

    [Fact]
    public void A_lock_of_the_teacher_is_said()
    {
        var locked = NoteLocks
            .Set(Library.Find("groups-of-five-up").OrThrow().Recipe, new Lock(1, Finger: 3))
            .OrThrow();

        var ways = OtherWays.Of(Measurer.Measure(locked, Player.At(2)).OrThrow(), 1);

        Assert.StartsWith("The third finger is locked.", ways.WhyFinger, StringComparison.Ordinal);
        Assert.Contains(ways.Fingerings, way => way.Words == "little finger" && way.Bpm is not null);
    }

    [Fact]
    public void An_open_string_has_no_other_finger_and_strict_fingers_no_other_stroke()
    {
        var open = OtherWays.Of(Measured("first-notes-up"), 0);
        var onlyDown = open.Strokes;

        Assert.DoesNotContain(open.Fingerings, way => way.Lock.Finger is not null);
        Assert.Equal("up-stroke", Assert.Single(onlyDown).Words);
    }

    private static double? LockedBpm(Recipe recipe, Lock part)
    {
        var measured = NoteLocks.Set(recipe, part).Then(locked => Measurer.Measure(locked, Player.At(2)));
        return measured.TryGet(out var done, out _) ? done.Bpm : null;
    }
}
