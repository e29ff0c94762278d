using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Notes too high for the staff.</summary>
public sealed class OctaveLineTests
{
    // String 1 (E4): fret 19 is B5, written an octave higher B6 on the fifth ledger line; fret 18 has four.
    // Fret 8 is C5, written C6 on the second ledger line; fret 7 has one.
    [Theory]
    [InlineData("0000", "1:5 1:10 1:15 1:18")]
    [InlineData("0001", "1:5 1:7 1:7 1:19")]
    [InlineData("0111", "1:7 1:8 1:15 1:19")]
    [InlineData("1111", "1:19 1:15 1:8 1:8")]
    [InlineData("1100", "1:19 1:15 1:5 1:15")]
    [InlineData("10111", "1:22 1:7 1:12 1:20 1:10")]
    public void Notes_with_more_than_four_ledger_lines_stand_an_octave_lower(string expected, string places)
    {
        var columns = Engraved(places).Systems.SelectMany(system => system.Columns);
        var marks = Engraved(places).Systems.SelectMany(system => system.Marks).ToList();
        var lowered = columns
            .SelectMany(column => column.Heads)
            .Select(head => Written(marks, head.Note) == Ledgers(head.Place.Fret) ? '0' : '1');

        Assert.Equal(expected, string.Concat(lowered));
    }

    [Fact]
    public void The_line_stands_over_its_notes_and_closes_with_a_hook()
    {
        var system = Assert.Single(Engraved("1:5 1:15 1:20 1:22 1:19 1:5").Systems);
        var sign = Assert.IsType<GlyphMark>(system.Marks.Single(mark => mark.Kind == "octave"));
        var line = Assert.IsType<LineMark>(system.Marks.Single(mark => mark.Kind == "octave-line"));
        var hook = Assert.IsType<LineMark>(system.Marks.Single(mark => mark.Kind == "octave-hook"));

        // SMuFL ottavaAlta.
        Assert.Equal(0xE511, sign.CodePoint);
        Assert.InRange(system.Columns[1].XMm - sign.At.X, 0, 1.75);
        Assert.InRange(line.To.X - system.Columns[4].XMm, 0, 1.75);
        Assert.Equal(line.To.X, hook.From.X, 1e-9);
        Assert.True(hook.To.Y > hook.From.Y);
        Assert.NotEmpty(line.DashMm);
        Assert.All(
            system.Marks.Where(mark => mark.Kind == "head" && mark.Note is > 0 and < 5),
            head => Assert.True(MarkBox.Of(head).Top > line.To.Y)
        );
        Assert.Equal(["5", "15", "20", "22", "19", "5"], Numbers(system));
    }

    [Fact]
    public void A_line_over_a_new_system_is_told_again()
    {
        var places = string.Join(' ', Enumerable.Repeat("1:19 1:20 1:22 1:20", 16));
        var systems = Engraved(places).Systems;

        Assert.True(systems.Length > 1);
        Assert.All(systems, system => Assert.Single(system.Marks, mark => mark.Kind == "octave"));
        Assert.Empty(systems[0].Marks.Where(mark => mark.Kind == "octave-hook"));
        Assert.Single(systems[^1].Marks, mark => mark.Kind == "octave-hook");
    }

    [Theory]
    [InlineData(ScoreLayout.StaffAndTab)]
    [InlineData(ScoreLayout.Staff)]
    public void High_notes_keep_every_rule(ScoreLayout layout)
    {
        var broken = new List<string>();
        foreach (var width in new[] { 60.0, 110, 180 })
        {
            var played = Played.Of(
                Line("1:5 1:19 1:7 1:22 1:20 1:12 1:10 1:8 1:5 1:19 1:20 2:22 2:20 1:15 1:22 1:3")
            );
            var options = new ScoreOptions
            {
                Layout = layout,
                WidthMm = width,
                Strokes = ShownStrokes.All,
                Strings = true,
            };
            broken.AddRange(
                ScoreRules.Broken(ScoreEngraver.Engrave(played, options).OrThrow(), played, options)
            );
        }

        Offenders.AreNone(broken);
    }

    // Ledger lines over the staff of a fret on string 1, as written: E5 in the highest space, with its fifths of steps.
    private static int Ledgers(int fret)
    {
        // Steps of A minor above E, by half-steps: E F G A B C D.
        int[] steps = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6];
        // E5 is written 3 half spaces above the middle line.
        var position = 3 + (7 * (fret / 12)) + steps[fret % 12];
        return Math.Max(0, (position - 4) / 2);
    }

    private static int Written(List<Mark> marks, int note) =>
        marks.Count(mark => mark.Kind == "ledger" && mark.Note == note);

    private static IEnumerable<string> Numbers(ScoreSystem system) =>
        system.Marks.OfType<TextMark>().Where(mark => mark.Kind == "tab-number").Select(mark => mark.Text);

    private static Score Engraved(string places) =>
        ScoreEngraver.Engrave(Played.Of(Line(places)), new ScoreOptions()).OrThrow();

    private static Recipe Line(string places) =>
        RecipeJson
            .Read(
                $$"""
                { "passagework": 1, "title": "High", "notes": { "root": "A", "scale": "natural minor" }, "written": [
                {{string.Join(
                    ',',
                    places
                        .Split(' ')
                        .Select(place => $$"""{ "place": "{{place}}", "duration": "1/8" }""")
                )}} ] }
                """
            )
            .OrThrow();
}
