using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Engraving.Press;

/// <summary>Prints of the sample page in a folder under <c>artifacts</c>, for other programs and for the eye.</summary>
internal static class Printed
{
    public static string Folder { get; } =
        Directory.CreateDirectory(Path.Combine(Repository.Root, "artifacts", "press")).FullName;

    public static string Pdf(string name, Document document, Palette? palette = null) =>
        Put(name, PdfWriter.Write(document, palette).OrThrow());

    public static string Png(string name, Page page, double dpi, Palette? palette = null) =>
        Put(name, PngWriter.Write(page, dpi, palette).OrThrow());

    public static string Svg(string name, Page page, SvgStyle style) =>
        Put(name, System.Text.Encoding.UTF8.GetBytes(SvgWriter.Write(page, style).OrThrow()));

    private static string Put(string name, byte[] bytes)
    {
        var path = Path.Combine(Folder, name);
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
