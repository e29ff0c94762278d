using System.Globalization;
using CsCheck;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class AlignmentTests
{
    [Theory]
    [InlineData(2, 2, "2 / 1", "0", "cons", "1 1 1 1")]
    [InlineData(3, 2, "6 / 3", "0,1", "G3/2", "3 1 3 3")]
    [InlineData(4, 2, "4 / 2", "0", "cons", "1 2 1 2")]
    [InlineData(5, 2, "10 / 5", "0,1", "G5/2", "5 5 5 1")]
    [InlineData(6, 2, "6 / 3", "0", "cons", "3 1 3 3")]
    [InlineData(7, 2, "14 / 7", "0,1", "G7/2", "7 7 7 7")]
    [InlineData(8, 2, "8 / 4", "0", "cons", "2 4 1 4")]
    [InlineData(9, 2, "18 / 9", "0,1", "G9/2", "9 3 9 9")]
    [InlineData(2, 3, "6 / 2", "0,2,1", "G3/2", "1 2 1 2")]
    [InlineData(3, 3, "3 / 1", "0", "cons", "1 1 1 1")]
    [InlineData(4, 3, "12 / 4", "0,1,2", "G4/3", "2 4 1 4")]
    [InlineData(5, 3, "15 / 5", "0,2,1", "G5/3", "5 5 5 1")]
    [InlineData(6, 3, "6 / 2", "0", "cons", "1 2 1 2")]
    [InlineData(7, 3, "21 / 7", "0,1,2", "G7/3", "7 7 7 7")]
    [InlineData(8, 3, "24 / 8", "0,2,1", "G8/3", "4 8 2 8")]
    [InlineData(9, 3, "9 / 3", "0", "cons", "3 1 3 3")]
    [InlineData(2, 4, "4 / 1", "0,2", "cons", "1 1 1 1")]
    [InlineData(3, 4, "12 / 3", "0,3,2,1", "G4/3", "3 1 3 3")]
    [InlineData(4, 4, "4 / 1", "0", "cons", "1 1 1 1")]
    [InlineData(5, 4, "20 / 5", "0,1,2,3", "G5/4", "5 5 5 1")]
    [InlineData(6, 4, "12 / 3", "0,2", "G6/4", "3 1 3 3")]
    [InlineData(7, 4, "28 / 7", "0,3,2,1", "G7/4", "7 7 7 7")]
    [InlineData(8, 4, "8 / 2", "0", "cons", "1 2 1 2")]
    [InlineData(9, 4, "36 / 9", "0,1,2,3", "G9/4", "9 3 9 9")]
    [InlineData(2, 5, "10 / 2", "0,2,4,1,3", "G5/2", "1 2 1 2")]
    [InlineData(3, 5, "15 / 3", "0,3,1,4,2", "G5/3", "3 1 3 3")]
    [InlineData(4, 5, "20 / 4", "0,4,3,2,1", "G5/4", "2 4 1 4")]
    [InlineData(5, 5, "5 / 1", "0", "cons", "1 1 1 1")]
    [InlineData(6, 5, "30 / 6", "0,1,2,3,4", "G6/5", "3 2 3 6")]
    [InlineData(7, 5, "35 / 7", "0,2,4,1,3", "G7/5", "7 7 7 7")]
    [InlineData(8, 5, "40 / 8", "0,3,1,4,2", "G8/5", "4 8 2 8")]
    [InlineData(9, 5, "45 / 9", "0,4,3,2,1", "G9/5", "9 3 9 9")]
    [InlineData(2, 6, "6 / 1", "0,2,4", "cons", "1 1 1 1")]
    [InlineData(3, 6, "6 / 1", "0,3", "cons", "1 1 1 1")]
    [InlineData(4, 6, "12 / 2", "0,4,2", "G6/4", "1 2 1 2")]
    [InlineData(5, 6, "30 / 5", "0,5,4,3,2,1", "G6/5", "5 5 5 1")]
    [InlineData(6, 6, "6 / 1", "0", "cons", "1 1 1 1")]
    [InlineData(7, 6, "42 / 7", "0,1,2,3,4,5", "G7/6", "7 7 7 7")]
    [InlineData(8, 6, "24 / 4", "0,2,4", "G8/6", "2 4 1 4")]
    [InlineData(9, 6, "18 / 3", "0,3", "G9/6", "3 1 3 3")]
    public void Of_equal_groups_meets_beat_and_bar_as_the_table_says(
        int group,
        int perBeat,
        string cycle,
        string starts,
        string label,
        string bars
    )
    {
        var inMeters = Enumerable.Range(2, 4).Select(beats => Alignment.Of(group, perBeat, beats)).ToArray();

        Assert.Equal(
            cycle,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{inMeters[0].CyclePulses} / {inMeters[0].CycleBeats}"
            )
        );
        Assert.Equal(starts, string.Join(',', inMeters[0].Starts));
        Assert.Equal(label, inMeters[0].Label);
        Assert.Equal(bars, string.Join(' ', inMeters.Select(meter => meter.Bars)));
    }

    // Bars until home and places in the bar, for bars of 5 and 7 eighths in eighths, then in sixteenths.
    [Theory]
    [InlineData(2, "2/5 2/7 1/5 1/7")]
    [InlineData(3, "3/5 3/7 3/10 3/14")]
    [InlineData(4, "4/5 4/7 2/5 2/7")]
    [InlineData(5, "1/1 5/7 1/2 5/14")]
    [InlineData(6, "6/5 6/7 3/5 3/7")]
    [InlineData(7, "7/5 1/1 7/10 1/2")]
    [InlineData(8, "8/5 8/7 4/5 4/7")]
    [InlineData(9, "9/5 9/7 9/10 9/14")]
    public void Of_equal_groups_meets_uneven_bars_as_the_table_says(int group, string barsAndPlaces)
    {
        Alignment[] meters =
        [
            Alignment.Of(group, 1, 5),
            Alignment.Of(group, 1, 7),
            Alignment.Of(group, 2, 5),
            Alignment.Of(group, 2, 7),
        ];

        Assert.Equal(
            barsAndPlaces,
            string.Join(
                ' ',
                meters.Select(meter => FormattableString.Invariant($"{meter.Bars}/{meter.PlacesInBar}"))
            )
        );
    }

    // Group starts in beats from 0, up to the one that falls on a beat again in the first place.
    [Theory]
    [InlineData(3, 4, "0 3/4 3/2 9/4 3")]
    [InlineData(5, 4, "0 5/4 5/2 15/4 5")]
    [InlineData(7, 4, "0 7/4 7/2 21/4 7")]
    [InlineData(4, 3, "0 4/3 8/3 4")]
    [InlineData(5, 3, "0 5/3 10/3 5")]
    [InlineData(5, 6, "0 5/6 5/3 5/2 10/3 25/6 5")]
    public void Starts_lie_in_the_beats_of_the_worked_examples(int group, int perBeat, string beats)
    {
        var alignment = Alignment.Of(group, perBeat, 4);
        var expected = beats.Split(' ').Select(Beats.Fraction).ToArray();

        Assert.Equal(expected.Length - 1, alignment.Starts.Length);
        Assert.Equal(
            expected[..^1].Select(beat => beat.Modulo(Fraction.One)),
            alignment.Starts.Select(pulse => Fraction.Of(pulse, perBeat))
        );
        Assert.Equal(expected[^1], Fraction.Of(alignment.CycleBeats));
    }

    [Theory]
    [InlineData(4, 4, 1, "D4+1", "1", "0", "0")]
    [InlineData(4, 4, 4, "cons", "0", "1", "1/4")]
    [InlineData(2, 4, 3, "D2+1", "3,1", "0", "0")]
    [InlineData(2, 4, 2, "cons", "2,0", "1/2", "1/8")]
    [InlineData(8, 4, 5, "D4+1", "1", "0", "0")]
    [InlineData(3, 4, 1, "G4/3", "1,0,3,2", "1/4", "1/16")]
    [InlineData(6, 4, 1, "G6/4", "1,3", "0", "0")]
    public void Of_displaced_groups_is_dissonant_where_layers_would_nest(
        int group,
        int perBeat,
        int offset,
        string label,
        string starts,
        string onBeat,
        string onDownbeat
    )
    {
        var alignment = Alignment.Of(group, perBeat, 4, offset);

        Assert.Equal(label, alignment.Label);
        Assert.Equal(starts, string.Join(',', alignment.Starts));
        Assert.Equal(onBeat, alignment.OnBeat.ToString());
        Assert.Equal(onDownbeat, alignment.OnDownbeat.ToString());
    }

    // Slow twin: walk group by group until a start is where the first one was.
    [Fact]
    public void Of_equal_groups_equals_walking_through_them() =>
        Gen.Int[1, 16]
            .Select(Gen.Int[1, 9], Gen.Int[1, 7], Gen.Int[0, 40])
            .Sample(
                (group, perBeat, beats, offset) =>
                {
                    var alignment = Alignment.Of(group, perBeat, beats, offset);
                    var inBeat = Walk(group, perBeat, offset);
                    var inBar = Walk(group, perBeat * beats, offset);

                    Assert.Equal(inBeat, alignment.Starts);
                    Assert.Equal(inBeat.Count * group, alignment.CyclePulses);
                    Assert.Equal(inBar.Count * group, alignment.Bars * perBeat * beats);
                    Assert.Equal(inBar.Count, alignment.PlacesInBar);
                    Assert.Equal(
                        Fraction.Of(inBeat.Count(place => place == 0), inBeat.Count),
                        alignment.OnBeat
                    );
                    Assert.Equal(
                        Fraction.Of(inBar.Count(place => place == 0), inBar.Count),
                        alignment.OnDownbeat
                    );
                }
            );

    // The identities of grouping arithmetic, with d the greatest common divisor of group and beat.
    [Theory]
    [InlineData(5, 4, 1)]
    [InlineData(6, 4, 2)]
    [InlineData(9, 6, 3)]
    [InlineData(8, 4, 4)]
    public void Of_equal_groups_keeps_the_identities(int group, int perBeat, int d)
    {
        var alignment = Alignment.Of(group, perBeat, 4);

        Assert.Equal(perBeat / d, alignment.Starts.Length);
        Assert.Equal(group * perBeat / d, alignment.CyclePulses);
        Assert.Equal(group / Gcd(group, 4 * perBeat), alignment.Bars);
        Assert.Equal(Fraction.Of(d, perBeat), alignment.OnBeat);
    }

    [Theory]
    [InlineData(0, 4, 4, 0)]
    [InlineData(5, 0, 4, 0)]
    [InlineData(5, 4, 0, 0)]
    [InlineData(5, 4, 4, -1)]
    public void Of_refuses_what_is_no_group_or_bar(int group, int perBeat, int beats, int offset) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Alignment.Of(group, perBeat, beats, offset));

    private static List<int> Walk(int group, int layer, int offset)
    {
        var places = new List<int>();
        var place = offset % layer;
        do
        {
            places.Add(place);
            place = (place + group) % layer;
        } while (place != offset % layer);

        return places;
    }

    private static int Gcd(int a, int b) => b == 0 ? a : Gcd(b, a % b);
}
