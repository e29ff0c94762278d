using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Exercises;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Brackets of tuplets slope with their notes.</summary>
public sealed class TupletBracketTests
{
    // Seven to the beat, and one of them followed by a rest: a dotted quarter of the septuplet.
    [Fact]
    public void A_bracket_covers_the_dot_of_a_rest()
    {
        var recipe = Played.Recipe("groups-of-four-up");
        recipe = recipe with { Rhythm = recipe.Rhythm with { NotesPerBeat = 7 } };
        var marks = ScoreEngraver.Engrave(Played.Of(recipe), new ScoreOptions()).OrThrow().Systems[^1].Marks;
        var dot = marks.Last(mark => mark.Kind == "dot");

        Assert.True(
            marks.Where(mark => mark.Kind == "tuplet-bracket").Max(mark => MarkBox.Of(mark).Right)
                >= MarkBox.Of(dot).Right
        );
    }

    // Slants as for beams (chosen by us): a fifth 1 space, an octave and more 1.5; half where it is shorter than 4 spaces; none where an
    // inner note is nearer.
    [Theory]
    [InlineData("A3 E4", "1/6", 0.5)]
    [InlineData("E4 A3", "1/6", -0.5)]
    [InlineData("A3 A4", "1/6", 0.75)]
    [InlineData("A3 A3", "1/6", 0)]
    [InlineData("A3 E4", "1/3", 1.0)]
    [InlineData("A3 A4", "1/3", 1.5)]
    public void A_bracket_rises_as_a_beam_would(string pitches, string third, double expected)
    {
        var names = pitches.Split(' ');
        var line = $$"""
            { "pitch": "{{names[0]}}", "duration": "{{third.Replace('1', '2')}}" }, { "pitch": "{{names[
                1
            ]}}", "duration": "{{third}}" }
            """;
        var recipe = RecipeJson
            .Read(
                $$"""{ "passagework": 1, "title": "Line", "notes": { "root": "A", "scale": "natural minor" }, "written": [{{line}}] }"""
            )
            .OrThrow();
        var score = ScoreEngraver.Engrave(Played.Of(recipe), new ScoreOptions()).OrThrow();
        var bracket = score
            .Systems[0]
            .Marks.OfType<LineMark>()
            .Where(mark => mark.Kind == "tuplet-bracket")
            .ToList();

        Assert.Equal(4, bracket.Count);
        Assert.Equal(expected, (bracket[0].To.Y - bracket[3].From.Y) / score.SpaceMm, 6);
        Assert.Empty(ScoreGeometry.Collisions(score.Systems[0]));
    }
}
