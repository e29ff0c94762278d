using System.CommandLine;
using System.Globalization;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Prints;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>What was asked for of a picture.</summary>
/// <param name="Print">What is shown.</param>
/// <param name="Dpi">Dots to the inch, for a picture of dots.</param>
internal sealed record PictureChoice(PrintOptions Print, double Dpi);

/// <summary>Options of drawn forms: staves, strokes, paper, resolution.</summary>
internal sealed class PictureOptions
{
    private const double UsualDpi = 150;

    private static readonly WordList<ScoreLayout> Layouts = new(
        "staves",
        ("staff-and-tab", ScoreLayout.StaffAndTab),
        ("staff", ScoreLayout.Staff),
        ("tab", ScoreLayout.Tab),
        ("tab-with-rhythm", ScoreLayout.TabWithRhythm)
    );

    private static readonly WordList<ShownStrokes> Strokes = new(
        "strokes",
        ("where-not-obvious", ShownStrokes.WhereNotObvious),
        ("all", ShownStrokes.All),
        ("none", ShownStrokes.None)
    );

    /// <summary>Sizes of paper by name.</summary>
    public static readonly WordList<Paper> Papers = new("paper", ("A4", Paper.A4), ("letter", Paper.Letter));

    private readonly Option<string?> _staves = Arguments.Text(
        "--staves",
        "Pictures: staff-and-tab (the default), staff, tab or tab-with-rhythm.",
        "STAVES"
    );

    private readonly Option<string?> _strokes = Arguments.Text(
        "--strokes",
        "Pictures: strokes where-not-obvious (the default), all or none.",
        "STROKES"
    );

    private readonly Option<string?> _paper = Arguments.Text(
        "--paper",
        "PDF: A4 (the default) or letter.",
        "PAPER"
    );

    private readonly Option<string?> _dpi = Arguments.Text(
        "--dpi",
        "PNG: dots to the inch, 150 by default.",
        "DPI"
    );

    private readonly Option<bool> _leftHanded = new("--left-handed")
    {
        Description = "Pictures: the neck as in a mirror.",
    };

    public PictureOptions(Command command)
    {
        foreach (var option in new Option[] { _staves, _strokes, _paper, _dpi, _leftHanded })
        {
            command.Options.Add(option);
        }
    }

    /// <summary>What was asked for; a fault names the option.</summary>
    public Outcome<PictureChoice> Of(ParseResult parsed) =>
        Arguments
            .Word(Layouts, _staves, parsed)
            .Then(layout =>
                Arguments
                    .Word(Strokes, _strokes, parsed)
                    .Then(strokes =>
                        Arguments
                            .Word(Papers, _paper, parsed)
                            .Then(paper =>
                                DpiOf(parsed)
                                    .Then<PictureChoice>(dpi => new PictureChoice(
                                        new PrintOptions
                                        {
                                            Music = new ScoreOptions { Layout = layout, Strokes = strokes },
                                            Paper = paper,
                                            Neck = new FretboardOptions
                                            {
                                                LeftHanded = parsed.GetValue(_leftHanded),
                                            },
                                        },
                                        dpi
                                    ))
                            )
                    )
            );

    private Outcome<double> DpiOf(ParseResult parsed)
    {
        if (parsed.GetValue(_dpi) is not { } text)
        {
            return UsualDpi;
        }

        return double.TryParse(
            text,
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var dpi
        )
            ? dpi
            : new Fault($"{Quote.Short(text)} is no resolution", _dpi.Name, "a number of dots to the inch");
    }
}
