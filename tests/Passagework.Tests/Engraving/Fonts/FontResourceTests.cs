using System.Text;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Fonts;

public sealed class FontResourceTests
{
    [Theory]
    [InlineData("bravura", "Steinberg Media Technologies GmbH")]
    [InlineData("alegreya", "The Alegreya Project Authors")]
    [InlineData("alegreya-sans", "The Alegreya Sans Project Authors")]
    [InlineData("alegreya-sans-sc", "The Alegreya Sans Project Authors")]
    public void Each_font_brings_its_licence(string font, string owner)
    {
        var licence = Encoding.UTF8.GetString(FontResource.Read($"licence-{font}.txt"));

        Assert.Contains(owner, licence, StringComparison.Ordinal);
        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", licence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_font_that_is_not_built_in_is_an_error() =>
        Assert.Throws<InvalidOperationException>(() => FontResource.Read("none.woff"));
}
