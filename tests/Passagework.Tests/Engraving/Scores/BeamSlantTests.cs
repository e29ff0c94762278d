using CsCheck;
using Passagework.Engraving.Scores;

namespace Passagework.Tests.Engraving.Scores;

public sealed class BeamSlantTests
{
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(0.25, 0, 1)]
    [InlineData(0.5, 0, 2)]
    [InlineData(0.75, 0, 3)]
    [InlineData(1.0, 0, 4)]
    [InlineData(1.25, 0, 5)]
    [InlineData(1.25, 0, 6)]
    [InlineData(1.5, 0, 7)]
    [InlineData(1.5, 0, 12)]
    [InlineData(-0.5, 2, 0)]
    public void The_slant_grows_with_the_interval(double expected, int first, int last) =>
        Assert.Equal(expected, BeamSlant.Rise(Stems(2.7, 1, first, first, first, last), up: true), 1e-12);

    [Fact]
    public void A_short_beam_slants_half_as_much() =>
        Assert.Equal(0.5, BeamSlant.Rise(Stems(3.9, 1, 0, 4), up: true), 1e-12);

    [Theory]
    [InlineData(0, true, -5, -1, -3)]
    [InlineData(-0.5, false, -1, 1, -3)]
    [InlineData(0, false, 3, 1, 5)]
    [InlineData(0.5, true, -3, -5, -1)]
    public void An_inner_note_nearest_the_beam_lays_it_flat(
        double expected,
        bool up,
        params int[] positions
    ) => Assert.Equal(expected, BeamSlant.Rise(Stems(3, 1, positions), up), 1e-12);

    [Fact]
    public void A_beam_of_even_notes_lies_three_and_a_half_spaces_away()
    {
        // Notes in the second space (a line and a half below the middle): ends at −0.0, on the top line.
        var beam = BeamSlant.Line(Stems(3, 2, -3, -3, -3, -3), up: true);

        Assert.Equal((0.0, 0.0), (beam.FromY, beam.ToY));
    }

    [Fact]
    public void Low_notes_reach_the_middle_line()
    {
        var beam = BeamSlant.Line(Stems(3, 1, -12, -12), up: true);

        Assert.Equal(2.0, beam.FromY, 1e-12);
    }

    [Fact]
    public void Beams_keep_every_rule() =>
        Gen.Select(Gen.Int[-14, 14].Array[2, 9], Gen.Int[1, 4], Gen.Double[1.2, 6], Gen.Bool)
            .Sample(
                (positions, beams, apart, up) =>
                {
                    var stems = Stems(apart, beams, positions);

                    var beam = BeamSlant.Line(stems, up);

                    foreach (var stem in stems)
                    {
                        var head = 2 - (stem.Position / 2.0);
                        var length = up ? head - beam.At(stem.X) : beam.At(stem.X) - head;
                        Assert.True(length >= StemRules.Least(beams) - 1e-9, $"a stem of {length}");
                    }

                    Assert.True(Math.Abs(beam.ToY - beam.FromY) <= 1.5);
                    Assert.Equal(Math.Round(beam.FromY * 4), beam.FromY * 4, 1e-9);
                    Assert.Equal(Math.Round(beam.ToY * 4), beam.ToY * 4, 1e-9);
                    Assert.False(BeamSlant.Floats(beam.FromY) || BeamSlant.Floats(beam.ToY));
                }
            );

    private static BeamedStem[] Stems(double apart, int beams, params int[] positions) =>
        [.. positions.Select((position, i) => new BeamedStem(i * apart, position, beams))];
}
