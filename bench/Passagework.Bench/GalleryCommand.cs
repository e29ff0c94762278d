using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Bench;

/// <summary><c>gallery FOLDER</c>: renders varied exercises as pictures and sheets, to be looked at.</summary>
internal static class GalleryCommand
{
    private const double Dpi = 110;

    public static int Run(string[] args)
    {
        if (args is not [var folder])
        {
            Console.Error.WriteLine("gallery FOLDER");
            return 2;
        }

        Directory.CreateDirectory(folder);
        var failed = 0;
        foreach (var entry in GalleryCases.All())
        {
            failed += Render(folder, entry) ? 0 : 1;
        }

        Console.WriteLine($"{failed} cases failed");
        return failed == 0 ? 0 : 1;
    }

    private static bool Render(string folder, GalleryCase entry)
    {
        var made = entry
            .Recipe.Then(recipe => Measurer.Measure(recipe, entry.Player))
            .Then(measured => Pages(measured, entry));
        if (!made.TryGet(out var page, out var fault))
        {
            Console.Error.WriteLine($"{entry.Name}: {fault}");
            return false;
        }

        return Save(folder, entry.Name, page);
    }

    private static Outcome<Page> Pages(Measurement measured, GalleryCase entry) =>
        entry.IsSheet
            ? SheetMaker.Make(measured.Realization, SheetDefaults.Of(measured), entry.Sheet)
            : ExercisePrint.Picture(measured, entry.Print);

    private static bool Save(string folder, string name, Page page)
    {
        if (
            !PngWriter.Write(page, Dpi, Palette.Light).TryGet(out var png, out var fault)
            || !SvgWriter.Write(page, SvgStyle.Screen).TryGet(out var svg, out fault)
        )
        {
            Console.Error.WriteLine($"{name}: {fault}");
            return false;
        }

        File.WriteAllBytes(Path.Combine(folder, name + ".png"), png);
        File.WriteAllText(Path.Combine(folder, name + ".svg"), svg);
        return true;
    }
}
