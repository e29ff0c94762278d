using CsCheck;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Setting;

namespace Passagework.Tests.Engraving.Setting;

public sealed class TextBlockTests
{
    private static readonly TextStyle Style = TextStyle.InPoints(Face.Sans, 11, 13.5);

    [Fact]
    public void Lines_take_as_many_words_as_fit()
    {
        var width = TextFont.Width("up and down", Face.Sans, Style.SizeMm) + 0.01;

        Assert.Equal(
            ["up and down", "the neck"],
            Lines(TextBlock.Set("up  and\ndown the neck", Style, width))
        );
    }

    [Fact]
    public void A_word_wider_than_a_line_is_cut_between_letters()
    {
        var width = (3 * TextFont.Width("m", Face.Sans, Style.SizeMm)) + 0.01;

        Assert.Equal(["mmm", "mmm", "m"], Lines(TextBlock.Set("mmmmmmm", Style, width)));
    }

    [Fact]
    public void Letters_with_their_accents_stay_together()
    {
        var width = TextFont.Width("e", Face.Sans, Style.SizeMm) + 0.01;

        Assert.Equal(["e\u0301", "e\u0301"], Lines(TextBlock.Set("e\u0301e\u0301", Style, width)));
    }

    [Fact]
    public void What_does_not_fit_is_left_out_with_dots()
    {
        var block = TextBlock.Set("one two three four five six", Style, 14, mostLines: 2);

        Assert.True(block.IsCut);
        Assert.Equal(2, block.Lines);
        Assert.EndsWith("…", Lines(block)[1], StringComparison.Ordinal);
        Assert.True(block.WidthMm <= 14);
        Assert.False(TextBlock.Set("one two three four five six", Style, 60, mostLines: 2).IsCut);
    }

    [Fact]
    public void Signs_of_music_stand_between_letters()
    {
        var marks = TextBlock.Set("E♭ or \uECA5", Style, 100).MarksAt(default, "t", "text").ToList();

        Assert.Equal([0xE260, 0xECA5], marks.OfType<GlyphMark>().Select(mark => mark.CodePoint));
        Assert.Equal(["E", " or "], marks.OfType<TextMark>().Select(mark => mark.Text));
    }

    [Fact]
    public void Weighed_words_have_the_strong_face()
    {
        var marks = TextBlock
            .Set([" at ", new Phrase("52", Strong: true), "; slow"], Style, 100)
            .MarksAt(default, "t", "text");

        Assert.Equal(
            [("at ", Face.Sans), ("52", Face.SansBold), ("; slow", Face.Sans)],
            marks.OfType<TextMark>().Select(mark => (mark.Text, mark.Face))
        );
    }

    [Fact]
    public void No_words_make_no_lines()
    {
        Assert.Equal(0, TextBlock.Set(" \n ", Style, 10).Lines);
        Assert.Equal(0, TextBlock.Set(" \n ", Style, 10).HeightMm);
    }

    [Fact]
    public void Lines_end_and_stand_where_they_are_asked_to()
    {
        var block = TextBlock.Set("down up", Style, 100);
        var at = new Point(50, 10);

        Assert.Equal(50 - block.WidthMm, First(block.MarksEndingAt(at, "t", "text")).At.X, 9);
        Assert.Equal(50 - (block.WidthMm / 2), First(block.MarksAround(at, "t", "text")).At.X, 9);
        Assert.Equal(10 + Style.BaselineMm, First(block.MarksAt(at, "t", "text")).At.Y, 9);
    }

    [Fact]
    public void No_line_is_wider_than_asked_and_no_letter_is_lost()
    {
        Gen.Select(Gen.String[Gen.Char["ab wim  é"], 0, 60], Gen.Double[8, 60])
            .Sample(
                (text, width) =>
                {
                    var block = TextBlock.Set(text, Style, width);
                    var letters = string.Concat(Lines(block)).Replace(" ", "", StringComparison.Ordinal);
                    return block.WidthMm <= width + 1e-9
                        && letters == text.Replace(" ", "", StringComparison.Ordinal);
                },
                iter: 300
            );
    }

    private static TextMark First(IEnumerable<Mark> marks) => marks.OfType<TextMark>().First();

    private static List<string> Lines(TextBlock block) =>
        [
            .. block
                .MarksAt(default, "t", "text")
                .OfType<TextMark>()
                .GroupBy(mark => mark.At.Y)
                .Select(line => string.Concat(line.Select(mark => mark.Text))),
        ];
}
