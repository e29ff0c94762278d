using Passagework.Instrument;
using static Passagework.Tests.Instrument.Necks;

namespace Passagework.Tests.Instrument;

/// <summary>Fret positions of equal temperament; millimetres rounded to 0.1, as fret tables print them.</summary>
public class GeometryTests
{
    private const double Rounding = 0.05 + 1e-9;

    [Theory]
    [InlineData(
        628,
        "35.2 68.5 99.9 129.6 157.5 183.9 208.9 232.4 254.6 275.5 295.3 314.0 331.6 348.3 364.0 378.8 392.8 406.0 418.4 430.2 441.3 451.8 461.7 471.0"
    )]
    [InlineData(
        648,
        "36.4 70.7 103.1 133.7 162.5 189.8 215.5 239.8 262.7 284.3 304.7 324.0 342.2 359.3 375.5 390.8 405.3 418.9 431.8 443.9 455.3 466.2 476.4 486.0"
    )]
    [InlineData(
        650,
        "36.5 70.9 103.4 134.1 163.1 190.4 216.2 240.5 263.5 285.2 305.7 325.0 343.2 360.5 376.7 392.0 406.5 420.2 433.1 445.3 456.8 467.6 477.8 487.5"
    )]
    public void Frets_stand_where_equal_temperament_puts_them(double scaleLengthMm, string table)
    {
        var expected = table.Split(' ');

        for (var fret = 1; fret <= 24; fret++)
        {
            var mm = double.Parse(expected[fret - 1], System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(mm, Geometry.FretDistanceMm(scaleLengthMm, fret), Rounding);
        }
    }

    [Fact]
    public void Gaps_shrink_by_the_twelfth_root_of_two()
    {
        var neck = Geometry.Of(Fretboard.Standard);
        double[] expected = [36.4, 34.3, 32.4, 30.6, 28.9, 27.2, 25.7, 24.3, 22.9, 21.6, 20.4, 19.3];

        for (var fret = 1; fret <= 12; fret++)
        {
            Assert.Equal(expected[fret - 1], neck.GapMm(1, fret), Rounding);
        }

        Assert.Equal(0.943874, neck.GapMm(1, 6) / neck.GapMm(1, 5), 1e-6);
    }

    [Fact]
    public void Strings_spread_towards_the_bridge()
    {
        var neck = Geometry.Of(Fretboard.Standard);

        Assert.Equal(7.0, neck.SpacingMm(1, 0), 1e-9);
        Assert.Equal(7.20, neck.SpacingMm(1, 1), 0.005);
        Assert.Equal(7.88, neck.SpacingMm(1, 5), 0.005);
        Assert.Equal(8.42, neck.SpacingMm(1, 9), 0.005);
        Assert.Equal(8.75, neck.SpacingMm(1, 12), 0.005);
        Assert.Equal(10.07, neck.PickingSpacingMm, 0.005);
    }

    [Theory]
    [InlineData("standard", 648, 7.0)]
    [InlineData("bass", 864, 10.0)]
    [InlineData("five-string bass", 864, 9.5)]
    [InlineData("E1 A1 D2 G2", 648, 7.0)]
    public void A_named_bass_brings_its_own_measures(string tuning, double scaleLengthMm, double nutMm)
    {
        var neck = Geometry.Of(Tuned(tuning));

        Assert.Equal(scaleLengthMm / 2, neck.FretMm(1, 12), 1e-9);
        Assert.Equal(nutMm, neck.SpacingMm(1, 0), 1e-9);
    }

    [Theory]
    [InlineData(2, 577.30)]
    [InlineData(5, 485.45)]
    public void A_capo_shortens_the_scale(int capo, double restMm)
    {
        var neck = Geometry.Of(Tuned("standard", capo: capo));
        var open = Geometry.Of(Fretboard.Standard);

        Assert.Equal(restMm, 648 - neck.FretMm(1, 0), 0.005);
        Assert.Equal(open.FretMm(1, capo + 3), neck.FretMm(1, 3), 1e-9);
        Assert.Equal(restMm * (1 - Math.Pow(2, -3 / 12.0)), neck.FretMm(1, 3) - neck.FretMm(1, 0), 0.005);
        Assert.Equal(open.SpacingMm(1, capo), neck.SpacingMm(1, 0), 1e-9);
    }

    [Fact]
    public void Strings_of_different_lengths_line_up_at_the_neutral_fret()
    {
        var fanned = Geometry.Of(
            Tuned("seven-string") with
            {
                ScaleLengthsMm = [648, 652, 656, 660, 664, 668, 673],
            }
        );

        Assert.Equal(fanned.FretMm(1, 7), fanned.FretMm(7, 7), 1e-9);
        Assert.Equal(673 / 2.0, fanned.FretMm(7, 12) + Nut(fanned, 7), 1e-9);
        Assert.True(fanned.FretMm(7, 0) < fanned.FretMm(1, 0));

        static double Nut(Geometry neck, int number) => -neck.FretMm(number, 0);
    }
}
