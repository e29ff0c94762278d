using Passagework.Foundation;
using Passagework.Sound;
using Passagework.Sound.Click;
using Passagework.Sound.Performance;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Tests.Features.Sound;

public sealed class PlayedSoundTests
{
    private static readonly SoundWishes Fast = new() { Bpm = 160, Loops = false };

    [Theory]
    [InlineData(null)]
    [InlineData("Am7 | D7")]
    public void Pieces_in_order_join_to_the_whole_bit_for_bit(string? chords)
    {
        var wishes = Fast with { Chords = chords };
        var whole = Heard.Plan(Heard.Line(), wishes);
        var pieces = Heard.Plan(Heard.Line(), wishes);
        var expected = whole.Pcm(0, (int)whole.Samples);

        var found = new List<byte>();
        for (var at = 0; at < pieces.Samples; at += 10_007)
        {
            found.AddRange(pieces.Pcm(at, (int)Math.Min(10_007, pieces.Samples - at)));
        }

        Assert.Contains(expected, one => one != 0);
        Assert.Equal(expected, found.ToArray());
    }

    [Fact]
    public void A_loop_goes_on_where_it_began_as_if_it_never_ended()
    {
        var sound = Heard.Plan(
            Heard.Line(),
            new SoundWishes
            {
                Bpm = 160,
                Bars = new BarRange(1, 1),
                Click = null,
            }
        );
        var (from, to) = sound.Repeated!.Value;
        // Just before the bar line old notes are still heard: the same in both places but for part of a sample.
        var first = Heard.Pcm(sound, from - 600, 400);
        var again = Heard.Pcm(sound, to - 600, 400);

        Assert.Equal(1.5 * 44_100, to - from, 1.0);
        Assert.InRange(first.Max(Math.Abs), 0.02, 1);
        Assert.True(Difference(first, again) < 0.05 * first.Max(Math.Abs), $"{Difference(first, again)}");
    }

    [Fact]
    public void The_first_time_through_is_no_part_of_the_loop()
    {
        var sound = Heard.Plan(Heard.Line(), new SoundWishes { Bpm = 120, CountInBars = 2 });

        // 0.1 s before the music, two bars counted and three played, 2 s each.
        Assert.Equal((0.1 + 10) * 44_100, sound.Repeated!.Value.From, 1.0);
        Assert.Equal((0.1 + 16) * 44_100, sound.Repeated!.Value.To, 1.0);
        Assert.True(sound.Samples > sound.Repeated!.Value.To + 4_410);
    }

    [Fact]
    public void A_sound_that_is_played_once_repeats_nothing() =>
        Assert.Null(Heard.Plan(Heard.Line(), Fast).Repeated);

    [Fact]
    public void After_a_change_of_tempo_a_note_is_as_loud_as_before()
    {
        var levels = new KeptLevels();
        var planner = new SoundPlanner();
        var wishes = Fast with { Bpm = 40, Click = null, CountInBars = 0 };
        var slow = planner.Plan(Heard.Line(), wishes, levels).OrThrow();
        var slowPeak = Heard.Pcm(slow, 0, 8_000).Max(Math.Abs);
        var fast = planner.Plan(Heard.Line(), wishes with { Bpm = 200 }, levels).OrThrow();
        var alone = Heard.Plan(Heard.Line(), wishes with { Bpm = 200 });

        Assert.Equal(slowPeak, Heard.Pcm(fast, 0, 8_000).Max(Math.Abs), 0.01);
        Assert.NotEqual(slowPeak, Heard.Pcm(alone, 0, 8_000).Max(Math.Abs), 0.01);
    }

    [Fact]
    public void Levels_stay_with_each_kind_of_mix()
    {
        var levels = new KeptLevels();
        var planner = new SoundPlanner();
        foreach (var guitar in Enum.GetValues<GuitarSound>())
        {
            foreach (var click in new ClickPattern?[] { null, ClickPattern.Beats })
            {
                var wishes = Fast with { Guitar = guitar, Click = click, CountInBars = 0 };
                var sound = planner.Plan(Heard.Line(), wishes, levels).OrThrow();

                Assert.InRange(Heard.Pcm(sound, 4_410, 44_100).Max(Math.Abs), 0.05, 0.9);
            }
        }
    }

    private static float Difference(float[] one, float[] other) =>
        one.Zip(other, (a, b) => Math.Abs(a - b)).Max();
}
