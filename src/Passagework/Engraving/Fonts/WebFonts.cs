using System.Collections.Immutable;
using System.Text;

namespace Passagework.Engraving.Fonts;

/// <summary>The files of the text faces, for pages that show words as text beside pictures.</summary>
public static class WebFonts
{
    private const string Folder = "fonts/";
    private const string Kind = ".woff";

    /// <summary>The families that are built in; all under the SIL Open Font License 1.1.</summary>
    public static ImmutableArray<string> Families { get; } =
    ["alegreya", "alegreya-sans", "alegreya-sans-sc", "bravura"];

    /// <summary>The text of the licence of a family; null when there is none of that name.</summary>
    public static string? Licence(string family) =>
        Families.Contains(family)
            ? Encoding.UTF8.GetString(FontResource.Read($"licence-{family}.txt"))
            : null;

    /// <summary>
    /// The file of a face and script, such as <c>alegreya-sans-latin-400-normal.woff</c>, to be disposed; null when there
    /// is none of that name.
    /// </summary>
    public static Stream? Open(string fileName) =>
        fileName.EndsWith(Kind, StringComparison.Ordinal)
            ? typeof(WebFonts).Assembly.GetManifestResourceStream(Folder + fileName)
            : null;
}
