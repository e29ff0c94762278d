using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Setting;
using Passagework.Instrument;

namespace Passagework.Engraving.Pictures;

/// <summary>Draws the neck itself: wires, nut or capo, strings and their numbers.</summary>
internal sealed class NeckGrid(NeckFrame frame, Fretboard instrument)
{
    private const double WireMm = 0.25;
    private const double NutMm = 1;
    private const double CapoMm = 1.6;
    private const double ThinnestMm = 0.23;
    private const double ThickerByMm = 0.05;
    private const double MostThickMm = 0.5;

    public IEnumerable<Mark> Marks() =>
        [.. Wires(), .. Start(), .. Strings(), .. StringNumbers(), .. FretNumbers()];

    private IEnumerable<Mark> Wires() =>
        Enumerable
            .Range(frame.Range.First - 1, frame.Range.Last - frame.Range.First + 2)
            .Where(fret => fret > 0)
            .Select(fret => Across(frame.WireMm(fret), WireMm, Ink.Rule, $"wire-{fret}", "fret-wire"));

    // The nut is a thick wire; a capo is thicker, lies on the strings and reaches beyond them.
    private IEnumerable<Mark> Start()
    {
        if (!frame.Range.BeginsAtNut)
        {
            yield break;
        }

        yield return instrument.Capo == 0
            ? Across(-NutMm / 2, NutMm, Ink.Main, "nut", "nut")
            : Across(-CapoMm / 2, CapoMm, Ink.Main, "capo", "capo", beyond: 1.1);
    }

    private LineMark Across(
        double along,
        double width,
        Ink ink,
        string id,
        string kind,
        double beyond = 0.12
    ) =>
        new(
            frame.Turned(along, -beyond),
            frame.Turned(along, NeckFrame.AcrossMm(frame.Strings) + beyond),
            width
        )
        {
            Id = id,
            Kind = kind,
            Ink = ink,
            RoundEnds = kind == "capo",
        };

    private IEnumerable<Mark> Strings() =>
        Enumerable
            .Range(1, frame.Strings)
            .Select(number => new LineMark(
                frame.Turned(0, NeckFrame.AcrossMm(number)),
                frame.Turned(frame.EndMm, NeckFrame.AcrossMm(number)),
                Math.Min(MostThickMm, ThinnestMm + (ThickerByMm * (number - 1)))
            )
            {
                Id = $"string-{number}",
                Kind = "string",
                Ink = Ink.Staff,
            });

    private IEnumerable<Mark> StringNumbers() =>
        Enumerable
            .Range(1, frame.Strings)
            .Select(number =>
                Number(
                    number,
                    frame.Turned(frame.NumbersAlongMm, NeckFrame.AcrossMm(number)),
                    Face.Sans,
                    $"string-number-{number}",
                    "string-number"
                )
            );

    private IEnumerable<Mark> FretNumbers() =>
        Enumerable
            .Range(frame.Range.First, frame.Range.Last - frame.Range.First + 1)
            .Select(fret =>
                Number(
                    fret,
                    frame.Turned(frame.AlongMm(fret), frame.NumbersAcrossMm),
                    HasInlay(fret) ? Face.SansBold : Face.Sans,
                    $"fret-number-{fret}",
                    "fret-number"
                )
            );

    /// <summary>Whether the neck is marked there, counted from the nut (common practice).</summary>
    private bool HasInlay(int fret) => ((fret + instrument.Capo) % 12) is 0 or 3 or 5 or 7 or 9;

    private static TextMark Number(int number, Point middle, Face face, string id, string kind) =>
        Centred(
            number.ToString(CultureInfo.InvariantCulture),
            middle,
            face,
            PrintSizes.PictureFigureMm,
            id
        ) with
        {
            Kind = kind,
        };

    /// <summary>A text whose ink has its middle at a point.</summary>
    internal static TextMark Centred(string text, Point middle, Face face, double sizeMm, string id)
    {
        var ink = TextFont.InkBox(text, face, sizeMm);
        var at = middle.Moved(-(ink.Left + ink.Right) / 2, -(ink.Top + ink.Bottom) / 2);
        return new TextMark(text, at, face, sizeMm) { Id = id, Kind = "text" };
    }
}
