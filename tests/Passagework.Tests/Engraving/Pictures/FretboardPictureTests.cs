using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Pictures;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving.Pictures;

public sealed class FretboardPictureTests
{
    // Box 1 of A minor pentatonic at fret 5 (common practice): roots at 6:5, 4:7 and 1:5.
    [Fact]
    public void First_group_is_filled_and_roots_are_square()
    {
        var picture = Draw("groups-of-five-up", new FretboardOptions());

        Assert.Equal(
            "dot-6:5",
            string.Join(' ', NeckInk.Of(picture, "dot-played-root").Select(mark => mark.Id))
        );
        Assert.Equal(
            "dot-6:8 dot-5:5 dot-5:7 dot-4:5",
            string.Join(' ', NeckInk.Of(picture, "dot-played").Select(mark => mark.Id))
        );
        Assert.Equal(
            "dot-4:7 dot-1:5",
            string.Join(' ', NeckInk.Of(picture, "dot-hollow-root").Select(mark => mark.Id))
        );
        Assert.All(NeckInk.Of(picture, "dot-played-root"), mark => Assert.IsType<PolygonMark>(mark));
        Assert.All(NeckInk.Of(picture, "dot-hollow"), mark => Assert.IsType<CircleMark>(mark));
    }

    [Theory]
    [InlineData(DotText.Order, "1 2 3 4 5")]
    [InlineData(DotText.Finger, "1 4 1 3 1")]
    [InlineData(DotText.Degree, "1 3 4 5 7")]
    [InlineData(DotText.Name, "A C D E G")]
    [InlineData(DotText.None, "")]
    public void Dots_say_what_they_are_asked_for(DotText text, string expected)
    {
        var picture = Draw("groups-of-five-up", new FretboardOptions { Dots = text });
        var words = NeckInk.Of(picture, "dot-text").OfType<TextMark>().Select(mark => mark.Text);

        Assert.Equal(expected, string.Join(' ', words));
    }

    // b3 and b7 of the minor pentatonic.
    [Fact]
    public void Lowered_degrees_carry_the_flat_of_the_music_font()
    {
        var picture = Draw("groups-of-five-up", new FretboardOptions { Dots = DotText.Degree });
        var flats = NeckInk.Of(picture, "dot-text").OfType<GlyphMark>().Select(mark => mark.CodePoint);

        Assert.Equal([0xE260, 0xE260], flats);
    }

    [Fact]
    public void A_place_played_again_keeps_its_first_number()
    {
        var picture = Draw("pedal-up", new FretboardOptions());
        var words = NeckInk
            .Of(picture, "dot-text")
            .OfType<TextMark>()
            .Select(mark => $"{mark.Id}={mark.Text}");

        Assert.Equal(
            "dot-text-6:5-0-0=1 dot-text-6:8-0-0=2 dot-text-5:5-0-0=4 dot-text-5:7-0-0=6",
            string.Join(' ', words)
        );
    }

    [Fact]
    public void Way_to_the_next_group_is_dashed_and_ends_at_its_first_dot()
    {
        var picture = Draw("groups-of-five-up", new FretboardOptions());
        var dot = MarkBox.Of(picture.Marks.Single(mark => mark.Id == "dot-6:8"));
        var head = Assert.IsType<PolygonMark>(picture.Marks.Single(mark => mark.Id == "join-head"));
        var tip = head.Corners[0];

        Assert.Equal(4, NeckInk.Of(picture, "route").Count());
        Assert.All(
            NeckInk.Of(picture, "route-join").OfType<LineMark>(),
            line => Assert.NotEmpty(line.DashMm)
        );
        Assert.True(dot.Grown(0.3).Holds(new Box(tip.X, tip.Y, tip.X, tip.Y)));
        Assert.False(dot.Overlaps(new Box(tip.X, tip.Y, tip.X + 0.01, tip.Y + 0.01)));
    }

    [Theory]
    [InlineData("trill-one-three")]
    [InlineData("two-string-loop")]
    [InlineData("one-sided-rolls-low-up")]
    [InlineData("position-shift-up")]
    public void Hidden_way_goes_round(string id)
    {
        Assert.Equal(3, NeckInk.Of(Draw(id, new FretboardOptions()), "route-join").Count());
    }

    [Fact]
    public void Left_handed_picture_is_the_mirror()
    {
        var right = Draw("groups-of-five-up", new FretboardOptions());
        var left = Draw("groups-of-five-up", new FretboardOptions { LeftHanded = true });

        foreach (var (a, b) in NeckInk.Of(right, "dot-hollow").Zip(NeckInk.Of(left, "dot-hollow")))
        {
            var (there, here) = (((CircleMark)a).Centre, ((CircleMark)b).Centre);
            Assert.Equal(right.WidthMm - there.X, here.X, 9);
            Assert.Equal(there.Y, here.Y, 9);
        }
    }

    // Inlays at 3, 5, 7, 9 and 12 of the neck (common practice): with a capo at 2 these are frets 1, 3, 5, 7 and 10.
    [Fact]
    public void Fret_numbers_are_bold_where_the_neck_is_marked()
    {
        var plain = Draw("groups-of-five-up", new FretboardOptions());
        var capo = FretboardPicture
            .Draw(
                Played.Of(Played.On("groups-of-five-up", "standard", 2)),
                new FretboardOptions { FromFret = 1 }
            )
            .OrThrow();

        Assert.Equal("5 7 9", Bold(plain));
        Assert.Equal("1 3 5 7", Bold(capo));
        Assert.Single(NeckInk.Of(capo, "capo"));
        Assert.StartsWith("B minor pentatonic, box 1", capo.Caption, StringComparison.Ordinal);
        Assert.Contains("squares are B", capo.Caption, StringComparison.Ordinal);
        Assert.EndsWith(
            "Frets count from the capo at fret 2; the shapes are those of A.",
            capo.Caption,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Open_strings_lie_before_the_nut()
    {
        var picture = Draw("thumb-and-fingers-rolling", new FretboardOptions());
        var nut = MarkBox.Of(NeckInk.Of(picture, "nut").Single());

        Assert.All(
            picture.Marks.Where(mark => mark.Id is "dot-1:0" or "dot-5:0"),
            mark => Assert.True(MarkBox.Of(mark).Right < nut.Left)
        );
    }

    [Fact]
    public void Numbers_are_large_enough_to_read()
    {
        var small = Played
            .All.SelectMany(exercise =>
                FretboardPicture.Draw(exercise.Played, new FretboardOptions()).OrThrow().Marks
            )
            .OfType<TextMark>()
            .Where(text => InkBoxes.Points(text) < (text.Kind == "dot-text" ? 7 : 9))
            .Select(text => text.Id);

        Assert.Empty(small);
    }

    [Fact]
    public void A_range_without_the_notes_is_refused()
    {
        var drawn = FretboardPicture.Draw(
            Played.Of("groups-of-five-up"),
            new FretboardOptions { FromFret = 7 }
        );

        Assert.False(drawn.TryGet(out _, out var fault));
        Assert.Equal("6:5 lies outside frets 7 to 11; frets 5 to 8 at least", fault!.ToString());
    }

    [Fact]
    public void Caption_tells_how_to_read_the_picture()
    {
        Assert.Equal(
            "A minor pentatonic, box 1, position V. The first group in order; squares are A. "
                + "The dashed line leads to the next group. Strings as in tab: string 1 on top.",
            Draw("groups-of-five-up", new FretboardOptions()).Caption
        );
    }

    [Fact]
    public void Description_names_every_note_of_the_first_group()
    {
        Assert.StartsWith(
            "Neck with six strings, frets 4 to 9; the first group is 6:5 finger 1, 6:8 finger 4, 5:5 finger 1, "
                + "5:7 finger 3, 4:5 finger 1; the next group begins at 6:8; not played in it: ",
            Draw("groups-of-five-up", new FretboardOptions()).Description,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_written_line_without_a_root_has_no_degrees()
    {
        var recipe = new Recipe
        {
            Written = new WrittenLine([
                new WrittenEntry
                {
                    Place = Place.At(6, 5),
                    Duration = Passagework.Foundation.Fraction.Of(1, 4),
                },
            ]),
        };
        var degrees = FretboardPicture.Draw(
            Played.Of(recipe),
            new FretboardOptions { Dots = DotText.Degree }
        );
        var order = FretboardPicture.Draw(Played.Of(recipe), new FretboardOptions());

        Assert.False(degrees.TryGet(out _, out var fault));
        Assert.Equal("$.notes", fault!.Where);
        Assert.Single(NeckInk.Of(order.OrThrow(), "dot-played"));
    }

    private static Figure Draw(string id, FretboardOptions options) =>
        FretboardPicture.Draw(Played.Of(id), options).OrThrow();

    private static string Bold(Figure picture) =>
        string.Join(
            ' ',
            NeckInk
                .Of(picture, "fret-number")
                .OfType<TextMark>()
                .Where(mark => mark.Face == Face.SansBold)
                .Select(mark => mark.Text)
        );
}
