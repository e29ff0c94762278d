namespace Passagework.Engraving.Fonts;

/// <summary>The files of the text faces, for pages that show words as text beside pictures.</summary>
public static class WebFonts
{
    private const string Folder = "fonts/";
    private const string Kind = ".woff";

    /// <summary>
    /// The file of a face and script, such as <c>alegreya-sans-latin-400-normal.woff</c>, to be disposed; null when there
    /// is none of that name.
    /// </summary>
    public static Stream? Open(string fileName) =>
        fileName.EndsWith(Kind, StringComparison.Ordinal)
            ? typeof(WebFonts).Assembly.GetManifestResourceStream(Folder + fileName)
            : null;
}
