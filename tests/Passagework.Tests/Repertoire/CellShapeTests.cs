using CsCheck;
using Passagework.Foundation;
using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class CellShapeTests
{
    [Theory]
    [InlineData("+2 +2", "60 62 64")]
    [InlineData("+3 -2 0", "60 63 61 61")]
    [InlineData("+2 <+2", "60*2 62 64")]
    [InlineData("+2 >+2", "60 62*2 64")]
    [InlineData("+2 +2", "60*3 62*4 64")]
    [InlineData("+2 >+1 <-3", "60 62*3 63*2 60")]
    [InlineData("+127 -127 +127", "0 127 0 127")]
    [InlineData("+1 +1 +1 +1 +1 +1 +1 +1 +1 +1 -60", "60 61 62 63 64 65 66 67 68 69 70 10")]
    public void Shapes_read_as_intervals_and_coarse_rhythm(string expected, string tune) =>
        Assert.Equal(expected, Shape(tune).ToString());

    [Fact]
    public void The_same_figure_higher_or_at_another_tempo_is_the_same_shape()
    {
        Assert.Equal(Shape("60 62 64*2 60"), Shape("67*2 69*2 71*4 67"));
        Assert.NotEqual(Shape("60 62 64 60"), Shape("60 62 64*2 60"));
        Assert.NotEqual(Shape("60 62 64"), Shape("60 62 63"));
        Assert.NotEqual(Shape("60 62 64"), Shape("60 62 64 66"));
    }

    [Fact]
    public void The_default_holds_no_notes() => Assert.Equal(0, default(CellShape).Notes);

    [Theory]
    [InlineData("60 62")]
    [InlineData("1 2 3 4 5 6 7 8 9 10 11 12 13")]
    public void Other_sizes_are_no_figures(string tune) =>
        Assert.Throws<ArgumentException>(() => Shape(tune));

    [Fact]
    public void Every_part_can_be_read_back() =>
        Gen.Select(Gen.Int[0, 127].Array[3, 12], Gen.Int[1, 6].Array[12])
            .Sample(
                (keys, gaps) =>
                {
                    var shape = Shape(string.Join(' ', keys.Select((key, i) => $"{key}*{gaps[i]}")));

                    Assert.Equal(keys.Length, shape.Notes);
                    for (var i = 1; i < keys.Length; i++)
                    {
                        Assert.Equal(keys[i] - keys[i - 1], shape.Interval(i - 1));
                    }

                    for (var i = 1; i < keys.Length - 1; i++)
                    {
                        Assert.Equal(Step(gaps[i - 1], gaps[i]), shape.Step(i - 1));
                    }
                }
            );

    [Fact]
    public void A_line_is_cut_at_rests_of_a_beat()
    {
        // Eight figures of three in ten notes; a rest of a quarter after the fifth leaves three and three.
        Assert.Equal(8, Threes("60 61 62 63 64 65 66 67 68 69"));
        Assert.Equal(6, Threes("60 61 62 63 64 r*2 65 66 67 68 69"));
        Assert.Equal(8, Threes("60 61 62 63 64 r 65 66 67 68 69"));
    }

    [Fact]
    public void A_line_holds_figures_of_three_to_six_notes()
    {
        var cells = Cells.In(Tunes.Of("60 62 64 65 67 69 71"));

        Assert.Equal([5, 4, 3, 2], Enumerable.Range(3, 4).Select(notes => Of(cells, notes)));
        Assert.True(Cells.In(Tunes.Of("60 62")).IsEmpty);
    }

    private static int Threes(string tune) => Of(Cells.In(Tunes.Of(tune)), 3);

    private static int Of(Distribution<CellShape> cells, int notes) =>
        cells.Classes.Where(shape => shape.Notes == notes).Sum(cells.CountOf);

    private static RhythmStep Step(int before, int after) =>
        ((double)after / before) switch
        {
            <= 0.667 => RhythmStep.Quicker,
            >= 1.499 => RhythmStep.Slower,
            _ => RhythmStep.Even,
        };

    private static CellShape Shape(string tune)
    {
        var line = Tunes.Of(tune);
        int[] keys = [.. line.Notes.Select(note => note.Midi)];
        Fraction[] onsets = [.. line.Notes.Select(note => note.Onset)];
        return CellShape.Of(keys, onsets);
    }

    [Fact]
    public void The_first_place_of_a_figure_is_found_or_is_not_there()
    {
        var line = Tunes.Of("60 61 60 62 64 65 67 69 r r 60 63 66");

        Assert.Equal(2, Cells.FirstIn(line, Cells.In(Tunes.Of("50 52 54")).Classes[0]));
        Assert.Equal(8, Cells.FirstIn(line, Cells.In(Tunes.Of("50 53 56")).Classes[0]));
        // Over the rest.
        Assert.Equal(-1, Cells.FirstIn(line, Cells.In(Tunes.Of("67 69*3 60")).Classes[0]));
    }
}
