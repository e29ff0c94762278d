using CsCheck;
using Passagework.Sound.Mixing;

namespace Passagework.Tests.Sound.Mixing;

public sealed class StrikeTrackTests
{
    [Fact]
    public void Strikes_begin_at_their_sample_and_add_up()
    {
        float[] sound = [1, 0.5f, 0.25f];
        var track = new StrikeTrack([new Strike(4, sound, 2), new Strike(2, sound, 1)]);
        var heard = new float[track.SamplesNeeded + 1];
        track.Render(heard, 0);

        Assert.Equal([0, 0, 1, 0.5f, 2.25f, 1, 0.5f, 0], heard);
    }

    [Fact]
    public void An_end_fades_over_ten_milliseconds()
    {
        var sound = Enumerable.Repeat(1f, 2000).ToArray();
        var track = new StrikeTrack([new Strike(0, sound, 1, End: 1000)]);
        var heard = new float[2000];
        track.Render(heard, 0);

        Assert.Equal(1480, track.SamplesNeeded);
        Assert.Equal((1f, 1f, 0.5f, 0f), (heard[999], heard[1000], heard[1240], heard[1480]));
    }

    [Fact]
    public void Any_stretch_is_the_same_as_in_the_whole() =>
        Gen.Select(
                Gen.Select(Gen.Int[0, 3000], Gen.Int[1, 900], Gen.Int[0, 4000]).Array[0, 30],
                Gen.Int[0, 4000],
                Gen.Int[1, 2000]
            )
            .Sample(
                (strikes, first, count) =>
                {
                    var track = new StrikeTrack(
                        strikes.Select(strike => new Strike(
                            strike.Item1,
                            [.. Enumerable.Range(0, strike.Item2).Select(i => MathF.Sin(i))],
                            0.7f,
                            strike.Item3
                        ))
                    );
                    var (whole, part) = (new float[6000], new float[count]);
                    track.Render(whole, 0);
                    track.Render(part, first);

                    Assert.Equal(whole[first..(first + count)], part);
                },
                iter: 200
            );
}
