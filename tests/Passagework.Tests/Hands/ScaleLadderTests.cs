using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Hands;

/// <summary>
/// Outside check: ABRSM's recommended guitar scale speeds of 2009 in notes a minute, grades 1 to 8 (as quoted by
/// D. Hasted), taken as relaxed, that is 0.6 of the ceiling (assumed). The level parameters were fitted on box 1
/// alone; the two scales of the check were not used in fitting.
/// </summary>
public class ScaleLadderTests
{
    private static readonly int[] Ladder = [96, 112, 132, 160, 192, 224, 252, 288];

    /// <summary>Calibration, not a check: the level parameters were chosen so that this holds.</summary>
    [Fact]
    public void Calibration_box_1_lies_on_the_ladder() =>
        Assert.Equal(
            "-2.4 -0.8 -0.1 -1.4 -1.6 -2.7 -0.2 1.0",
            Deviations(new Layout.Box(1, 5), "minor pentatonic", 23)
        );

    [Fact]
    public void Calibration_box_1_holds_along_the_neck() =>
        AssertWithin(-3.9, 1.0, fret => new Layout.Box(1, fret), "minor pentatonic");

    [Fact]
    public void Two_octaves_of_a_major_scale_in_position_lie_within_a_fifth_of_the_ladder() =>
        Assert.Equal("-4.6 -2.8 -1.8 -2.8 -2.7 -3.5 -0.8 0.7", Deviations(MajorInPosition(5), "major", 29));

    [Fact]
    public void Major_scale_in_position_holds_along_the_neck() =>
        AssertWithin(-5.8, 0.7, MajorInPosition, "major");

    [Fact]
    public void Three_notes_per_string_lie_within_a_fifth_of_the_ladder() =>
        Assert.Equal(
            "-14.3 -13.8 -14.1 -16.0 -16.9 -18.4 -16.9 -17.4",
            Deviations(new Layout.PerString(3, Place.At(6, 5)), "natural minor", 35)
        );

    [Fact]
    public void Three_notes_per_string_hold_along_the_neck() =>
        AssertWithin(-18.4, -9.8, fret => new Layout.PerString(3, Place.At(6, fret)), "natural minor");

    // The two octaves from 6:5 to 1:5, with the fingers of box 1 in position 4.
    private static Layout.Given MajorInPosition(int fret)
    {
        const string atFive = "6:5 6:7 5:4 5:5 5:7 4:4 4:6 4:7 3:4 3:6 3:7 2:5 2:7 1:4 1:5";
        return new Layout.Given([
            .. atFive
                .Split(' ')
                .Select(Lines.PlaceOf)
                .Select(place => Place.At(place.String, place.Fret + fret - 5)),
        ]);
    }

    private static void AssertWithin(double least, double most, Func<int, Layout> layout, string scale)
    {
        var all = Enumerable.Range(5, 8).SelectMany(fret => Percent(layout(fret), scale, fret)).ToArray();

        Assert.Equal(least, all.Min(), 0.05);
        Assert.Equal(most, all.Max(), 0.05);
        Assert.All(all, percent => Assert.InRange(percent, -20, 20));
    }

    private static string Deviations(Layout layout, string scale, int notes)
    {
        Assert.Equal(notes, LineBuilder.Build(ScaleOf(layout, scale, 5)).OrThrow().Notes.Length);
        return string.Join(
            ' ',
            Percent(layout, scale, 5)
                .Select(percent => FormattableString.Invariant($"{Math.Round(percent, 1):0.0}"))
        );
    }

    private static IEnumerable<double> Percent(Layout layout, string scale, int fret)
    {
        var line = LineBuilder.Build(ScaleOf(layout, scale, fret)).OrThrow();
        for (var grade = 1; grade <= 8; grade++)
        {
            var level = grade <= 5 ? (grade - 1) / 2.0 : 2 + ((grade - 5) / 3.0);
            var player = Player.At(level);
            var ceiling = CeilingFinder.Plain(
                Realizer.Plan(line, player).OrThrow().Demands,
                player.Parameters
            );
            yield return 100 * ((0.6 * 60 * (ceiling.Least ?? 0) / Ladder[grade - 1]) - 1);
        }
    }

    private static Recipe ScaleOf(Layout layout, string scale, int fret) =>
        new()
        {
            // The root lies on string 6 at the fret: A at 5.
            Notes = NoteSet.TryNamed(RootNames.Usual(40 + fret, minor: scale != "major"), scale, out var set)
                ? set
                : null,
            Instrument = new Fretboard { Frets = 24 },
            Layout = layout,
            Cell = new Cell { Offsets = [0] },
            Movement = new Movement { Direction = Direction.UpAndDown, Turn = Turn.Shared },
        };
}
