using System.Text.Json;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Fonts;

// Values: the metadata file of the music font 1.392 and its glyphs (SMuFL, W3C Music Notation Community Group).
public sealed class MusicFontTests
{
    // Outlines are read in whole font units of 0.004 spaces; at a staff space of 1.75 mm that is 7 thousandths of a mm.
    private const double Exact = 0.003;

    public static TheoryData<string, double> Defaults =>
        new()
        {
            { "staffLineThickness", 0.13 },
            { "stemThickness", 0.12 },
            { "beamThickness", 0.5 },
            { "beamSpacing", 0.25 },
            { "legerLineThickness", 0.16 },
            { "legerLineExtension", 0.4 },
            { "slurEndpointThickness", 0.1 },
            { "slurMidpointThickness", 0.22 },
            { "tieEndpointThickness", 0.1 },
            { "tieMidpointThickness", 0.22 },
            { "thinBarlineThickness", 0.16 },
            { "thickBarlineThickness", 0.5 },
            { "barlineSeparation", 0.4 },
            { "dashedBarlineThickness", 0.16 },
            { "dashedBarlineDashLength", 0.5 },
            { "dashedBarlineGapLength", 0.25 },
            { "repeatBarlineDotSeparation", 0.16 },
            { "bracketThickness", 0.5 },
            { "subBracketThickness", 0.16 },
            { "hairpinThickness", 0.16 },
            { "octaveLineThickness", 0.16 },
            { "repeatEndingLineThickness", 0.16 },
            { "tupletBracketThickness", 0.16 },
            { "textEnclosureThickness", 0.16 },
            { "arrowShaftThickness", 0.16 },
            { "hBarThickness", 1.0 },
            { "lyricLineThickness", 0.16 },
            { "pedalLineThickness", 0.16 },
        };

    [Theory]
    [MemberData(nameof(Defaults))]
    public void Default_gives_the_fonts_own_line_widths(string name, double spaces) =>
        Assert.Equal(spaces, MusicFont.Default(name), Exact);

    [Theory]
    [InlineData("thinThickBarlineSeparation")]
    [InlineData("textFontFamily")]
    public void Default_refuses_what_is_no_length_of_the_font(string name) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MusicFont.Default(name));

    [Theory]
    [InlineData(Glyphs.GClef, 2.684, -2.632, 4.392)]
    [InlineData(Glyphs.GClef8vb, 2.656, -3.512, 4.392)]
    [InlineData(Glyphs.SixStringTabClef, 1.636, -2.992, 3.056)]
    [InlineData(Glyphs.SixStringTabClefTall, 2.064, -4.02, 4.028)]
    [InlineData(Glyphs.TimeSig4, 1.88, -1, 1.004)]
    [InlineData(Glyphs.NoteheadBlack, 1.18, -0.5, 0.5)]
    [InlineData(Glyphs.RestWhole, 1.132, -0.54, 0.036)]
    [InlineData(Glyphs.RestQuarter, 1.08, -1.5, 1.492)]
    [InlineData(Glyphs.AccidentalFlat, 0.904, -0.7, 1.756)]
    [InlineData(Glyphs.AccidentalNatural, 0.672, -1.34, 1.364)]
    [InlineData(Glyphs.AccidentalSharp, 0.996, -1.392, 1.4)]
    [InlineData(Glyphs.StringsDownBow, 1.248, 0, 1.272)]
    [InlineData(Glyphs.StringsUpBow, 1.0, 0.004, 1.98)]
    public void Glyph_has_the_fonts_width_and_height(int sign, double advance, double bottom, double top)
    {
        var shape = MusicFont.Glyph(sign);

        Assert.Equal(advance, shape.Advance, Exact);
        Assert.Equal(bottom, shape.Bottom, Exact);
        Assert.Equal(top, shape.Top, Exact);
    }

    [Theory]
    [InlineData(Glyphs.NoteheadWhole, 1.688)]
    [InlineData(Glyphs.NoteheadHalf, 1.18)]
    [InlineData(Glyphs.NoteheadXBlack, 1.16)]
    [InlineData(Glyphs.Flag8thUp, 1.056)]
    [InlineData(Glyphs.Flag8thDown, 1.224)]
    [InlineData(Glyphs.Rest8th, 1.0)]
    [InlineData(Glyphs.Rest16th, 1.28)]
    [InlineData(Glyphs.Rest32nd, 1.452)]
    [InlineData(Glyphs.AugmentationDot, 0.4)]
    [InlineData(Glyphs.TimeSig1, 1.336)]
    [InlineData(Glyphs.TimeSig3, 1.684)]
    [InlineData(Glyphs.TimeSig8, 1.744)]
    [InlineData(Glyphs.Tuplet3, 1.184)]
    [InlineData(Glyphs.Tuplet5, 1.268)]
    [InlineData(Glyphs.Tuplet6, 1.216)]
    [InlineData(Glyphs.Tuplet7, 1.212)]
    [InlineData(Glyphs.ArticAccentAbove, 1.356)]
    [InlineData(Glyphs.ArticStaccatoBelow, 0.336)]
    [InlineData(Glyphs.ArticTenutoAbove, 1.352)]
    [InlineData(Glyphs.ArticMarcatoBelow, 0.944)]
    [InlineData(Glyphs.Fingering1, 0.628)]
    [InlineData(Glyphs.Fingering2, 0.968)]
    [InlineData(Glyphs.Fingering3, 0.9)]
    [InlineData(Glyphs.Fingering4, 0.944)]
    [InlineData(Glyphs.FingeringPLower, 1.088)]
    [InlineData(Glyphs.FingeringILower, 0.656)]
    [InlineData(Glyphs.FingeringMLower, 1.66)]
    [InlineData(Glyphs.FingeringALower, 1.068)]
    [InlineData(Glyphs.GuitarVibratoStroke, 0.608)]
    [InlineData(Glyphs.GuitarWideVibratoStroke, 0.82)]
    [InlineData(Glyphs.WiggleArpeggiatoUp, 1.02)]
    [InlineData(Glyphs.RepeatDots, 0.4)]
    [InlineData(Glyphs.MetNoteHalfUp, 1.364)]
    [InlineData(Glyphs.MetNoteQuarterUp, 1.328)]
    [InlineData(Glyphs.MetNote8thUp, 2.136)]
    [InlineData(Glyphs.MetNote16thUp, 2.088)]
    public void Glyph_is_as_wide_as_the_font_says(int sign, double advance) =>
        Assert.Equal(advance, MusicFont.Glyph(sign).Advance, Exact);

    [Theory]
    [InlineData(Glyphs.NoteheadBlack, "stemUpSE", 1.18, 0.168)]
    [InlineData(Glyphs.NoteheadBlack, "stemDownNW", 0, -0.168)]
    [InlineData(Glyphs.NoteheadHalf, "stemUpSE", 1.18, 0.168)]
    [InlineData(Glyphs.NoteheadHalf, "stemDownNW", 0, -0.168)]
    [InlineData(Glyphs.NoteheadXBlack, "stemUpSE", 1.16, 0.444)]
    [InlineData(Glyphs.NoteheadXBlack, "stemDownNW", 0, -0.44)]
    [InlineData(Glyphs.Flag8thUp, "stemUpNW", 0, -0.04)]
    [InlineData(Glyphs.Flag8thDown, "stemDownSW", 0, 0.132)]
    [InlineData(Glyphs.Flag16thUp, "stemUpNW", 0, -0.088)]
    [InlineData(Glyphs.Flag16thDown, "stemDownSW", 0, 0.128)]
    [InlineData(Glyphs.Flag32ndUp, "stemUpNW", 0, 0.376)]
    [InlineData(Glyphs.Flag32ndDown, "stemDownSW", 0, -0.448)]
    public void Glyph_has_the_fonts_anchors(int sign, string anchor, double x, double y) =>
        Assert.Equal((x, y), MusicFont.Glyph(sign).Anchors[anchor]);

    [Fact]
    public void Every_sign_that_is_used_has_the_name_and_the_size_that_the_metadata_gives()
    {
        using var metadata = JsonDocument.Parse(FontResource.Read("metadata.json"));
        var widths = metadata.RootElement.GetProperty("glyphAdvanceWidths");
        var boxes = metadata.RootElement.GetProperty("glyphBBoxes");

        Assert.Equal(142, GlyphNames.ByCodePoint.Count);
        Assert.All(
            GlyphNames.ByCodePoint,
            sign =>
            {
                var shape = MusicFont.Glyph(sign.Key);
                var upper = boxes.GetProperty(sign.Value).GetProperty("bBoxNE");
                var lower = boxes.GetProperty(sign.Value).GetProperty("bBoxSW");
                Assert.Equal(widths.GetProperty(sign.Value).GetDouble(), shape.Advance, Exact);
                Assert.Equal(lower[0].GetDouble(), shape.Left, Exact);
                Assert.Equal(lower[1].GetDouble(), shape.Bottom, Exact);
                Assert.Equal(upper[0].GetDouble(), shape.Right, Exact);
                Assert.Equal(upper[1].GetDouble(), shape.Top, Exact);
            }
        );
    }

    [Fact]
    public void Every_sign_that_has_a_constant_has_a_name()
    {
        var constants = typeof(Glyphs).GetFields().Select(field => (int)field.GetRawConstantValue()!);

        Assert.Equal(GlyphNames.ByCodePoint.Keys.Order(), constants.Order());
    }

    [Fact]
    public void Glyph_outside_the_font_is_refused()
    {
        Assert.False(MusicFont.Has('\u4E2D'));
        Assert.Throws<ArgumentOutOfRangeException>(() => MusicFont.Glyph('\u4E2D'));
    }
}
