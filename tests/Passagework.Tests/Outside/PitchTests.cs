using Passagework.Tests.Theory;
using Passagework.Theory;

namespace Passagework.Tests.Outside;

/// <summary>Keys, intervals and frequencies against an independent theory library (npm package "tonal", pinned).</summary>
public sealed class PitchTests
{
    [Fact]
    public void Midi_keys_equal_the_outside_ones()
    {
        var keys = TheoryLibrary.Said.GetProperty("midi").EnumerateObject().ToArray();

        Assert.Equal(42, keys.Length);
        Assert.All(keys, pitch => Assert.Equal(pitch.Value.GetInt32(), Music.Pitch(pitch.Name).Midi));
    }

    // Where letters and sound go different ways (Cb4 to B3, E#3 to Fb3) the library reckons from another octave and
    // says a seventh; that is not where the interval leads, so these pairs are left out.
    [Fact]
    public void Intervals_equal_the_outside_ones()
    {
        var compared = 0;
        foreach (var low in TheoryLibrary.Said.GetProperty("intervals").EnumerateObject())
        {
            foreach (var high in low.Value.EnumerateObject())
            {
                var interval = Music.Pitch(high.Name) - Music.Pitch(low.Name);
                if (interval is { Letters: < 0, Semitones: >= 0 } or { Letters: > 0, Semitones: < 0 })
                {
                    continue;
                }

                var theirs = Turned(high.Value.GetString() ?? "nothing");
                Assert.Equal($"{low.Name} {high.Name} {theirs}", $"{low.Name} {high.Name} {interval}");
                compared++;
            }
        }

        Assert.Equal(1742, compared);
    }

    // Equal temperament on A4 = 440 Hz (ISO 16:1975), all 128 keys.
    [Fact]
    public void Frequencies_equal_the_outside_ones()
    {
        var hertz = TheoryLibrary.Said.GetProperty("hertz").EnumerateArray().ToArray();

        Assert.Equal(128, hertz.Length);
        for (var key = 0; key < hertz.Length; key++)
        {
            // 1e-9 Hz: both sides round a power of two, nothing else.
            Assert.Equal(hertz[key].GetDouble(), EqualTemperament.FrequencyOf(key).Value, 1e-9);
        }
    }

    // The library writes the number before the quality: -3m for our -m3.
    private static string Turned(string interval)
    {
        var quality = interval.TrimStart('-').TrimStart("0123456789".ToCharArray());
        var number = interval.TrimStart('-')[..^quality.Length];
        return (interval[0] == '-' ? "-" : "") + quality + number;
    }
}
