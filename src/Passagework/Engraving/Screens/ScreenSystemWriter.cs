using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Engraving.Strips;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Screens;

/// <summary>Writes the systems of a score as pictures for a screen.</summary>
internal sealed class ScreenSystemWriter(Realization realization, ScreenLayout layout)
{
    private readonly PxFrame _frame = layout.Frame;
    private readonly ScreenOptions _options = layout.Options;
    private readonly ScreenMargin _margin = new(layout.Frame);
    private readonly ScreenLocks _locks = new(realization.Line.Recipe, ScreenLayout.SpaceMm);
    private readonly ImmutableArray<StripMove> _moves = StripMoves.Of(realization);
    private readonly string _title = SheetDefaults.TitleOf(realization.Line.Recipe);

    /// <summary>One system; refused where a mark cannot be drawn.</summary>
    public Outcome<ScreenSystem> Write(ScoreSystem system) =>
        Proof
            .Of(new Page(system.WidthMm, system.HeightMm, [.. MarksOf(system)]))
            .Then<ScreenSystem>(marks => Write(system, marks));

    /// <summary>What is drawn: the system with its frames and names, what is said beside the music in the second ink.</summary>
    public IEnumerable<Mark> MarksOf(ScoreSystem system)
    {
        var names = layout.IsNamed ? _margin.Draw(system) : [];
        return system.Marks.Select(Inked).Concat(_locks.Draw(system)).Concat(names);
    }

    private static Mark Inked(Mark mark) =>
        mark
            is { Kind: "group" or "group-line" or "group-hook" }
                or TextMark { Kind: "count", Face: Face.Sans }
            ? mark with
            {
                Ink = Ink.Soft,
            }
            : mark;

    private ScreenSystem Write(ScoreSystem system, ImmutableArray<ReadyMark> marks)
    {
        var notes = ScreenColumns.Of(system, _frame, _options.SpacePx);
        var height = Math.Ceiling(_frame.Length(system.HeightMm));
        return new ScreenSystem
        {
            Number = system.Number,
            FirstBar = system.FirstBar,
            LastBar = system.LastBar,
            Svg = Svg(system, marks, notes, height),
            WidthPx = _options.WidthPx,
            HeightPx = height,
            MusicStartPx = ScreenColumns.Tenth(_frame.X(system.MusicStartMm)),
            MusicEndPx = ScreenColumns.Tenth(_frame.X(system.MusicEndMm)),
            Notes = notes,
            Staff = Band(system.Staff?.TopMm, system.Staff?.BottomMm),
            Tab = Band(system.Tab?.TopMm, system.Tab?.BottomMm),
            Strip = Band(system.Strip?.TopMm, system.Strip?.BottomMm),
        };
    }

    private string Svg(
        ScoreSystem system,
        ImmutableArray<ReadyMark> marks,
        ImmutableArray<ScreenNote> notes,
        double heightPx
    )
    {
        var elements = new CompactSvg(_frame);
        foreach (var mark in marks)
        {
            elements.Add(mark);
        }

        AddMoves(elements, system, notes);
        var svg = new StringBuilder(16_384);
        var id = string.Create(CultureInfo.InvariantCulture, $"{_options.IdPrefix}system-{system.Number}");
        var bars = NumberWords.Sentence(NumberWords.Bars(system.FirstBar, system.LastBar));
        ScreenSvg.Open(svg, id, (_options.WidthPx, heightPx), $"{bars} of {_title}");
        ScreenColumns.Write(svg, notes, heightPx, _options.Chosen);
        ScreenSvg.WriteMarks(svg, elements);
        return svg.Append("</svg>").ToString();
    }

    private void AddMoves(CompactSvg elements, ScoreSystem system, ImmutableArray<ScreenNote> notes)
    {
        if (system.Strip is not { } strip)
        {
            return;
        }

        var xs = system
            .Columns.Where(column => column.Heads is [{ TiedBack: false }, ..])
            .ToDictionary(column => column.Heads[0].Note, column => column.XMm);
        foreach (var note in notes.Select(note => note.Note))
        {
            Add(_moves[note].Fretting, Ink.Fretting, new Point(xs[note], strip.FrettingSignsMm));
            Add(_moves[note].Picking, Ink.Picking, new Point(xs[note], strip.PickingSignsMm));
        }

        void Add(MoveSign? sign, Ink ink, Point at)
        {
            if (sign is { } shown)
                elements.Add(MoveMarkers.Id(shown, ink), ink, ScreenLayout.SpaceMm, at);
        }
    }

    private ScreenBand? Band(double? topMm, double? bottomMm) =>
        topMm is { } top && bottomMm is { } bottom
            ? new ScreenBand(
                ScreenColumns.Tenth(_frame.Length(top)),
                ScreenColumns.Tenth(_frame.Length(bottom))
            )
            : null;
}
