using System.Text;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Fonts;

public sealed class WebFontsTests
{
    [Fact]
    public void A_face_is_a_WOFF_file_as_the_W3C_recommendation_WOFF_1_begins_it()
    {
        using var file = WebFonts.Open("alegreya-sans-latin-700-normal.woff");

        var signature = new byte[4];
        file!.ReadExactly(signature);

        Assert.Equal("wOFF", Encoding.ASCII.GetString(signature));
    }

    [Theory]
    [InlineData("bravura.otf")]
    [InlineData("compositions.txt")]
    [InlineData("../fonts/alegreya-sans-latin-700-normal.woff")]
    [InlineData("")]
    public void Nothing_but_faces_is_handed_out(string name) => Assert.Null(WebFonts.Open(name));
}
