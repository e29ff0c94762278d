using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

public class ParameterFileTests
{
    // Defaults at levels 0 to 4, with spread and floor; where each comes from stands in the file itself.
    [Theory]
    [InlineData("A", "250 185 135 92 68", 0.10, 62)]
    [InlineData("Λ", "220 165 120 85 62", 0.20, 50)]
    [InlineData("C", "420 320 240 180 150", 0.10, 100)]
    [InlineData("R", "410 300 215 145 105", 0.30, 0)]
    [InlineData("b_L", "60 50 42 34 28", 0.20, 0)]
    [InlineData("a_sh", "100 80 62.5 47.5 37.5", 0.30, 0)]
    [InlineData("b_sh", "60 50 40 30 24", 0.20, 0)]
    [InlineData("ω", "0 0.15 0.3 0.45 0.6", 0.30, 0)]
    [InlineData("φ1", "1 1 1 1 1", 0, 0)]
    [InlineData("φ2", "1.05 1.05 1.05 1.05 1.05", 0.30, 0)]
    [InlineData("φ3", "1.2 1.16 1.12 1.08 1.05", 0.30, 0)]
    [InlineData("φ4", "1.3 1.24 1.18 1.12 1.08", 0.30, 0)]
    [InlineData("H", "220 160 120 84 68", 0.10, 50)]
    [InlineData("b_R", "70 50 35 20 13", 0.30, 0)]
    [InlineData("S", "150 110 80 58 45", 0.30, 25)]
    [InlineData("X", "260 190 140 105 85", 0.30, 0)]
    [InlineData("M_im", "240 175 130 95 75", 0.10, 0)]
    [InlineData("C_R", "380 280 220 175 150", 0.10, 100)]
    [InlineData("σ", "45 30 20 11 8", 0.20, 0)]
    public void Parameter_has_its_defaults(string id, string values, double spread, double floor)
    {
        var entry = ParameterFile.Parameters.Single(parameter => parameter.Id == id);

        Assert.Equal(
            values,
            string.Join(' ', entry.Values.Select(value => FormattableString.Invariant($"{value}")))
        );
        Assert.Equal((spread, floor), (entry.Spread, entry.Floor ?? 0));
        Assert.All(entry.Values, value => Assert.True(value >= floor));
    }

    [Fact]
    public void Parameters_stand_in_the_order_that_the_basis_and_the_draws_count_on() =>
        Assert.Equal(
            "A Λ C R b_L a_sh b_sh ω φ1 φ2 φ3 φ4 H b_R S X M_im C_R σ",
            string.Join(' ', ParameterFile.Parameters.Select(entry => entry.Id))
        );

    [Fact]
    public void Every_number_says_where_it_comes_from()
    {
        var sources = ParameterFile
            .Parameters.Select(entry => (entry.Id, entry.Meaning, entry.Source))
            .Concat(ParameterFile.Constants.Select(entry => (entry.Id, entry.Meaning, entry.Source)));

        Assert.All(
            sources,
            entry => Assert.True(entry.Meaning.Length > 2 && entry.Source.Length > 2, entry.Id)
        );
        Assert.Equal(
            ParameterFile.Constants.Length,
            ParameterFile.Constants.Select(entry => entry.Id).Distinct().Count()
        );
    }

    // Geometric between levels, the overlap linear: level 1.5 of A is the root of 185 × 135.
    [Theory]
    [InlineData(1.5, "A", 158.035)]
    [InlineData(2.5, "ω", 0.375)]
    [InlineData(0, "H", 220)]
    [InlineData(4, "H", 68)]
    public void Levels_between_are_interpolated(double level, string id, double expected) =>
        Assert.Equal(expected, Player.At(level).Parameters[id], 0.001);

    [Theory]
    [InlineData(-0.1)]
    [InlineData(4.1)]
    [InlineData(double.NaN)]
    public void Levels_outside_are_refused(double level) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Player.At(level));

    [Fact]
    public void Player_file_is_read_whole()
    {
        var player = PlayerJson
            .Read(
                """{ "passagework": 1, "level": "advanced", "handSize": 0.85, "avoid": [4, 2], "clear": "after-down", "parameters": { "R": 190, "omega": 0.5, "phi4": 1.3 } }"""
            )
            .OrThrow();

        Assert.Equal((3.0, 0.85, Clear.AfterDown), (player.Level, player.HandSize, player.Clear));
        Assert.Equal([4, 2], player.Avoid);
        Assert.Equal(
            (190.0, 0.5, 1.3, 84.0),
            (player.Parameters["R"], player.Parameters["ω"], player.Parameters["φ4"], player.Parameters["H"])
        );
    }

    [Fact]
    public void Smaller_hand_stretches_where_a_larger_one_does_not()
    {
        var line = Lines.Of("6:5 6:9 5:5 5:9");

        double Fretting(double size) =>
            Measurer.Measure(line, Player.At(2) with { HandSize = size }).OrThrow().Ceiling.Fretting ?? 0;

        Assert.True(Fretting(0.85) < Fretting(1.15));
    }
}
