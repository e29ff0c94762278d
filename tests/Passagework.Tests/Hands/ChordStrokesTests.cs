using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>How chords are struck, technique by technique, and what that asks.</summary>
public class ChordStrokesTests
{
    [Theory]
    [InlineData(Technique.Alternate, "6:5 1:5+2:5+3:5", "D UUU")]
    [InlineData(Technique.AllDown, "6:5 1:5+2:5+3:5", "D DDD")]
    [InlineData(Technique.Fingers, "6:5 1:5+2:5+3:5", "p ami")]
    [InlineData(Technique.Hybrid, "6:5 1:5+2:5+3:5 5:5", "D amD D")]
    [InlineData(Technique.Fingers, "1:5+2:5+3:5+6:5 1:5+2:5+3:5+6:5", "amip amip")]
    public void Chord_is_struck_as_the_technique_says(Technique technique, string places, string expected) =>
        Assert.Equal(expected, Strokes(technique, places));

    [Fact]
    public void Five_strings_are_too_many_for_four_fingers() =>
        Assert.Contains(
            "fingers has no way to strike the 5 strings of note 0 at once",
            Fault(Technique.Fingers, "1:5+2:5+3:5+4:7+5:7"),
            StringComparison.Ordinal
        );

    [Fact]
    public void Slurring_to_a_chord_is_refused() =>
        Assert.Contains(
            "a chord can't be slurred to",
            RecipeJson
                .Read(
                    """{"passagework":1,"written":[{"place":"1:5","with":["2:5"],"duration":"1/8","slur":"hammer"}]}"""
                )
                .ToString(),
            StringComparison.Ordinal
        );

    // A down-stroke through strings 3 to 1 ends at string 1; the next note on string 1 is on the same string, one full
    // cycle at level 2: 2H = 150. Into the chord: from string 6 to 3 over two strings, H + b_R log2(30.21/5.035 + 1), and S/2
    // for each of the two further strings.
    [Fact]
    public void Brush_takes_half_a_sweep_step_for_each_further_string()
    {
        var planned = Plan(Technique.AllDown, "6:5 1:5+2:5+3:5 1:8");
        var basis = Player.At(2).Parameters.Basis;
        var into = planned.Strokes.Struck[1].Demand.At(basis);
        var alone = Plan(Technique.AllDown, "6:5 3:5").Strokes.Struck[1].Demand.At(basis);

        Assert.Equal(basis[Basis.SweepStep], into - alone, 9);
        Assert.Equal(2 * basis[Basis.HalfCycle], planned.Strokes.Struck[2].Demand.At(basis), 9);
    }

    [Fact]
    public void Measure_counts_a_chord_as_one_stroke()
    {
        var measured = Measurer
            .Measure(LineOf("6:5 1:5+2:5+3:5 5:5", Technique.Alternate), Player.At(2))
            .OrThrow();

        Assert.Equal(3, measured.Picking.Strokes);
        Assert.Equal([2, 2], [measured.Picking.Skips, measured.Picking.Inside + measured.Picking.Outside]);
        Assert.Equal(
            "3:5=1 2:5=1",
            string.Join(
                ' ',
                measured.Realization.Notes[1].With.Reverse().Select(tone => $"{tone.Place}={tone.Finger}")
            )
        );
    }

    // Finger 1 goes from string 6 under the barre and back, finger 3 rolls from string 4 to string 3 of the chord.
    [Fact]
    public void Every_tone_of_a_chord_counts()
    {
        var span = new HandSpan(Geometry.Of(Fretboard.Standard), 1);
        ImmutableArray<FingeredTone> tones =
        [
            new(Place.At(1, 5), 1),
            new(Place.At(2, 5), 1),
            new(Place.At(3, 7), 3),
        ];
        var chord = new FretState(tones[0].Place, 1, 5) { Form = new FretForm(tones, span) };

        var counts = FrettingCounts.Of(
            new Fingering(
                [
                    new FingeredNote(Place.At(6, 5), 1, 5),
                    new FingeredNote(Place.At(4, 7), 3, 5),
                    FingeredNote.Of(chord),
                    new FingeredNote(Place.At(6, 5), 1, 5),
                ],
                0
            )
        );

        Assert.Equal([4 / 6.0, 0, 2 / 6.0, 0], counts.FingerShare);
        Assert.Equal((1, 1), (counts.Rolls, counts.SameFingerMoves));
    }

    private static string Strokes(Technique technique, string places) =>
        string.Join(
            ' ',
            Plan(technique, places)
                .Realization.Notes.Select(note =>
                    string.Concat(note.Tones.Select(tone => PickingCounts.LetterOf(tone.Stroke)))
                )
        );

    private static string Fault(Technique technique, string places) =>
        Realizer.Realize(LineOf(places, technique), Player.At(2)).TryGet(out _, out var fault)
            ? ""
            : fault.ToString();

    private static PlannedLine Plan(Technique technique, string places) =>
        Realizer.Plan(LineOf(places, technique), Player.At(2)).OrThrow();

    // Tones of a chord are joined by +.
    private static Line LineOf(string places, Technique technique)
    {
        var entries = places
            .Split(' ')
            .Select(word => word.Split('+').Select(Lines.PlaceOf).ToList())
            .Select(tones => new WrittenEntry
            {
                Place = tones[0],
                With = [.. tones.Skip(1).Select(place => new WrittenTone(place))],
                Duration = Passagework.Foundation.Fraction.Of(1, 16),
            });
        var recipe = new Recipe
        {
            Picking = new PickingPlan { Technique = technique },
            Written = new WrittenLine([.. entries]),
        };
        return LineBuilder.Build(recipe).OrThrow();
    }
}
