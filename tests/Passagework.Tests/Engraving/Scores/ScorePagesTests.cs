using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Engraving.Scores;

public sealed class ScorePagesTests
{
    // The box that fits A4 and Letter alike, and the room that a title takes.
    private static readonly PaperBox Common = new(180, 249, 0, 0);
    private const double Title = 22;

    // As tabulated for notation over tab with marks, a system every 24.5 spaces: A4 and Letter, margins of 15 mm.
    [Theory]
    [InlineData(267, 6.5, 6)]
    [InlineData(267, 7.0, 5)]
    [InlineData(267, 7.9, 5)]
    [InlineData(249.4, 6.5, 5)]
    [InlineData(249.4, 7.0, 5)]
    [InlineData(249.4, 7.9, 4)]
    public void A_page_with_a_title_holds_as_many_systems(double heightMm, double staffMm, int expected)
    {
        var pages = ScorePages.Fill(Long(staffMm), Common with { HeightMm = heightMm }, Title);

        Assert.Equal(expected, SystemsOn(pages[0]));
    }

    [Fact]
    public void A_full_page_is_filled_to_its_foot()
    {
        var page = ScorePages.Fill(Long(7), Common, Title)[0];

        var ink = page.Marks.Select(Passagework.Engraving.Fonts.MarkBox.Of).Aggregate((a, b) => a.With(b));

        Assert.Equal(Title, ink.Top, 0.1);
        Assert.Equal(249, ink.Bottom, 0.1);
    }

    [Theory]
    [InlineData(3, "3")]
    [InlineData(4, "2 2")]
    [InlineData(5, "3 2")]
    [InlineData(6, "3 3")]
    [InlineData(7, "3 2 2")]
    public void No_system_is_left_alone_on_the_last_page(int systems, string expected)
    {
        var pages = ScorePages.Fill(Blank(systems), new PaperBox(100, 100, 0, 0));

        Assert.Equal(expected, string.Join(' ', pages.Select(SystemsOn)));
    }

    // The page before gives a system only while it keeps two: three of 30 mm on pages of 70 mm.
    [Theory]
    [InlineData(3, "2 1")]
    [InlineData(5, "2 2 1")]
    public void No_page_is_emptied_for_a_lone_system(int systems, string expected) =>
        Assert.Equal(
            expected,
            string.Join(' ', ScorePages.Fill(Blank(systems), new PaperBox(100, 70, 0, 0)).Select(SystemsOn))
        );

    [Fact]
    public void A_tall_picture_holds_all_systems_at_the_usual_distance()
    {
        var page = ScorePages.Tall(Blank(3), marginMm: 5);

        // 3 × 30 mm, twice 3.5 spaces of 1.75 mm, two margins.
        Assert.Equal(112.25, page.HeightMm, 1e-9);
        Assert.Equal([5.0, 41.125, 77.25], page.Marks.OfType<CircleMark>().Select(mark => mark.Centre.Y));
    }

    private static Score Long(double staffMm)
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;
        recipe = recipe with { Movement = recipe.Movement with { Repeat = 12 } };
        var played = Realizer.Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2)).OrThrow();
        return ScoreEngraver
            .Engrave(
                played,
                new ScoreOptions
                {
                    StaffMm = staffMm,
                    Counting = CountedBars.None,
                    Positions = false,
                    Groups = false,
                }
            )
            .OrThrow();
    }

    // Systems 30 mm high with one mark at their top.
    private static Score Blank(int systems) =>
        new(
            [
                .. Enumerable
                    .Range(1, systems)
                    .Select(number => new ScoreSystem
                    {
                        Number = number,
                        FirstBar = number,
                        LastBar = number,
                        Marks = [new CircleMark(default, 1) { Id = $"top-{number}", Kind = "system" }],
                        Columns = [],
                        WidthMm = 100,
                        HeightMm = 30,
                        MusicStartMm = 0,
                        MusicEndMm = 100,
                    }),
            ],
            1.75
        );

    private static int SystemsOn(Page page) =>
        page.Marks.Count(mark =>
            mark.Kind is "system" || mark.Id.EndsWith("-staff-line-1", StringComparison.Ordinal)
        );
}
