using System.Buffers.Binary;
using System.Text;
using Passagework.Engraving.Fonts;
using SkiaSharp;

namespace Passagework.Tests.Engraving.Fonts;

public sealed class SfntTests
{
    private const string Serif = "alegreya-latin-400-normal.woff";

    public static TheoryData<string> WebFonts =>
        [
            .. typeof(Sfnt)
                .Assembly.GetManifestResourceNames()
                .Where(name => name.EndsWith(".woff", StringComparison.Ordinal))
                .Select(name => name["fonts/".Length..]),
        ];

    [Fact]
    public void Fifty_six_web_fonts_are_built_in() => Assert.Equal(8 * 7, WebFonts.Count);

    // The web font lists the sum of each table as its maker computed it from the unpacked bytes.
    [Theory]
    [MemberData(nameof(WebFonts))]
    public void Unwrapped_every_table_adds_up_as_its_maker_wrote(string name)
    {
        var woff = FontResource.Read(name);
        var file = Sfnt.FromWoff(woff).ToBytes();

        Assert.Equal(Sums(woff, header: 44, entry: 20, at: 16), Sums(file, header: 12, entry: 16, at: 4));
    }

    [Theory]
    [MemberData(nameof(WebFonts))]
    public void Unwrapped_the_whole_file_adds_up_to_the_fixed_number(string name)
    {
        var file = Sfnt.FromWoff(FontResource.Read(name)).ToBytes();

        var sum = Enumerable
            .Range(0, file.Length / 4)
            .Aggregate(0u, (sum, i) => unchecked(sum + Number(file, 4 * i)));

        // OpenType specification, table head: checkSumAdjustment.
        Assert.Equal(0xB1B0AFBAu, sum);
    }

    [Fact]
    public void What_is_no_web_font_is_refused() =>
        Assert.Throws<InvalidDataException>(() => Sfnt.FromWoff(FontResource.Read("bravura.otf")));

    [Fact]
    public void Letter_map_written_is_read_by_the_font_engine()
    {
        var font = Sfnt.FromWoff(FontResource.Read(Serif));
        var letters = LetterMap.Read(font.Table("cmap"));
        (letters['A'], letters['B']) = (letters['B'], letters['A']);
        font.Replace("cmap", LetterMap.Write(letters));

        using var typeface = Open(font.ToBytes());

        Assert.Equal(232, letters.Count);
        Assert.All(letters, letter => Assert.Equal(letter.Value, GlyphOf(typeface, letter.Key)));
    }

    [Theory]
    [InlineData('A')]
    [InlineData('g')]
    // Made of a letter and an accent.
    [InlineData('é')]
    [InlineData('Å')]
    public void Subset_draws_its_letters_as_before_and_no_other(char letter)
    {
        var whole = Sfnt.FromWoff(FontResource.Read(Serif));
        using var before = Open(whole.ToBytes());
        var glyph = GlyphOf(before, letter);
        var other = GlyphOf(before, 'W');

        var file = GlyphSubset.Of(whole, new HashSet<ushort> { glyph });
        using var after = Open(file);

        Assert.InRange(file.Length, 1, whole.ToBytes().Length / 3);
        Assert.Equal(Drawn(before, glyph), Drawn(after, glyph));
        Assert.NotEqual("", Drawn(before, other));
        Assert.Equal("", Drawn(after, other));
    }

    private static SKTypeface Open(byte[] file)
    {
        using var data = SKData.CreateCopy(file);
        return SKTypeface.FromData(data);
    }

    private static ushort GlyphOf(SKTypeface typeface, int letter)
    {
        using var font = FontCut.Sized(typeface, 1000);
        return font.GetGlyph(letter);
    }

    private static string Drawn(SKTypeface typeface, ushort glyph)
    {
        using var font = FontCut.Sized(typeface, 1000);
        using var path = font.GetGlyphPath(glyph);
        return path?.ToSvgPathData() ?? "";
    }

    private static IEnumerable<(string Tag, uint Sum)> Sums(byte[] file, int header, int entry, int at) =>
        Enumerable
            .Range(0, BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(header == 44 ? 12 : 4)))
            .Select(i => header + (i * entry))
            .Select(place => (Encoding.ASCII.GetString(file, place, 4), Number(file, place + at)))
            .OrderBy(table => table.Item1, StringComparer.Ordinal);

    private static uint Number(byte[] file, int at) => BinaryPrimitives.ReadUInt32BigEndian(file.AsSpan(at));
}
