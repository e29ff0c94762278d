using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Screens;
using Passagework.Engraving.Strips;
using Passagework.Hands;

namespace Passagework.Tests.Engraving.Screens;

// Everything that was engraved is found again in the markup, in its place and its ink, and nothing else.
public sealed class ScreenGeometryTests
{
    private const double TempoBpm = 66;

    [Theory]
    [InlineData("groups-of-five-up", 1312)]
    [InlineData("groups-of-five-up", 944)]
    [InlineData("groups-of-five-up", 358)]
    [InlineData("slurred-threes-up", 944)]
    [InlineData("thumb-and-fingers-rolling", 944)]
    [InlineData("bursts-nine", 1312)]
    [InlineData("one-sided-rolls-low-up", 358)]
    public void Gathered_marks_are_the_engraved_ones(string id, double widthPx)
    {
        var measured = Played.Measured(id);
        var options = new ScreenOptions { WidthPx = widthPx, TempoBpm = TempoBpm };
        var layout = LayoutOf(measured, options);
        var expected = new ExpectedThings(layout.Frame.PxPerMm, layout.Frame.LeftPx);

        var drawn = ScreenScore.Draw(measured, options).OrThrow();
        var engraved = Engraved(measured, layout);

        Assert.Equal(engraved.Systems.Length, drawn.Systems.Length);
        foreach (var (system, marks) in drawn.Systems.Zip(engraved.Systems))
        {
            var found = CompactReading.Of(system.Svg).Things.Where(IsOfTheScore);

            Assert.Equal(expected.Of(marks.Marks.Select(Softened)), found);
        }
    }

    [Fact]
    public void Signs_of_moves_stand_where_the_strip_on_paper_has_them()
    {
        var measured = Played.Measured("groups-of-five-up");
        var options = new ScreenOptions { TempoBpm = TempoBpm };
        var layout = LayoutOf(measured, options);
        var strip = HandsStrip.Of(measured, TempoBpm).OrThrow();
        var onPaper = strip.Under(Score(measured, layout), layout.Strip with { Signs = true }).Systems[0];

        var found = CompactReading
            .Of(ScreenScore.Draw(measured, options).OrThrow().Systems[0].Svg)
            .Things.Where(thing => thing.Contains("-move-", StringComparison.Ordinal))
            .ToList();

        // A string is passed over: three marks, the hollow one in the middle.
        var hollow = onPaper.Marks.Where(mark =>
            mark.Kind == "move-sign"
            && mark
                is CircleMark { Filling: Filling.Paper }
                    or PolygonMark { Kind: "move-sign", Filling: Filling.Paper }
        );
        var expected = hollow
            .Select(mark => mark is CircleMark circle ? circle.Centre : Middle((PolygonMark)mark))
            .Select(at =>
                CompactReading.At(
                    (at.X * layout.Frame.PxPerMm) + layout.Frame.LeftPx,
                    at.Y * layout.Frame.PxPerMm
                )
            );
        Assert.Equal(8, found.Count);
        Assert.Equal(
            expected.Order(StringComparer.Ordinal),
            found.Select(thing => thing.Split(' ')[^1]).Order(StringComparer.Ordinal)
        );
        Assert.Equal(
            4,
            found.Count(thing => thing.StartsWith("sign pw-fretting-move-0-1 8.7", StringComparison.Ordinal))
        );
        Assert.Equal(
            4,
            found.Count(thing => thing.StartsWith("sign pw-picking-move-0-1 8.7", StringComparison.Ordinal))
        );
    }

    [Theory]
    [InlineData(1312)]
    [InlineData(358)]
    public void Columns_stand_on_whole_pixels_where_the_notes_are(double widthPx)
    {
        var measured = Played.Measured("groups-of-five-up");
        var drawn = ScreenScore.Draw(measured, new ScreenOptions { WidthPx = widthPx }).OrThrow();

        foreach (var system in drawn.Systems)
        {
            var digits = CompactReading
                .Of(system.Svg)
                .Things.Select(thing => thing.Split(' '))
                // Bold figures are frets, and smaller ones counts.
                .Where(words => words is ["letter", "pw-main", "pw-sans-bold", not "13.5", ..])
                .Select(words => words[^2].Split(',')[0])
                .ToHashSet();

            Assert.All(system.Notes, note => Assert.Equal(Math.Round(note.XPx), note.XPx));
            // Frets are one digit each, so each stands at its note.
            Assert.Equal(
                system.Notes.Select(note => CompactReading.Tenth(note.XPx)).Order(StringComparer.Ordinal),
                digits.Order(StringComparer.Ordinal)
            );
        }
    }

    private static ScreenLayout LayoutOf(Measurement measured, ScreenOptions options) =>
        new(options, measured.Realization.Line.Recipe.Rhythm.Meter);

    private static Score Score(Measurement measured, ScreenLayout layout) =>
        ScoreEngraver.Engrave(measured.Realization, layout.Music).OrThrow();

    private static Score Engraved(Measurement measured, ScreenLayout layout) =>
        HandsStrip.Of(measured, TempoBpm).OrThrow().Under(Score(measured, layout), layout.Strip);

    // Signs of moves, names in the margin and frames of locks have tests of their own.
    private static bool IsOfTheScore(string thing) =>
        !thing.Contains("-move-", StringComparison.Ordinal)
        && !thing.Contains("pw-small-caps", StringComparison.Ordinal)
        && !thing.StartsWith("figure pw-main pw-line", StringComparison.Ordinal);

    // Counts between the beats and group brackets are in the second ink on a screen.
    private static Mark Softened(Mark mark) =>
        mark.Kind.StartsWith("group", StringComparison.Ordinal)
        || mark is TextMark { Kind: "count", Face: Face.Sans }
            ? mark with
            {
                Ink = Ink.Soft,
            }
            : mark;

    private static Point Middle(PolygonMark figure) =>
        new(figure.Corners.Average(corner => corner.X), figure.Corners.Average(corner => corner.Y));
}
