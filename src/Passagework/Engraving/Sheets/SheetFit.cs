using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Finds the first arrangement of a sheet that fits into the box.</summary>
internal sealed class SheetFit
{
    private const double TopMm = 6;
    private const double MusicMm = 5;
    private const double NotesMm = 4;
    private const double LogMm = 5;

    private readonly SheetContent _content;
    private readonly SheetOptions _options;
    private readonly IReadOnlyList<NoteBox> _notes;
    private readonly List<string> _remarks = [];
    private readonly Figure _header;
    private readonly Figure _top;
    private readonly Lazy<Figure> _topWithNotes;
    private readonly Lazy<Figure> _pair;
    private readonly Lazy<Figure> _log;
    private readonly Lazy<Figure> _fewLog;
    private readonly Lazy<Figure> _logWithNotes;
    private readonly string _neckWords;

    public SheetFit(SheetContent content, Figure neck, SheetOptions options)
    {
        (_content, _options, _neckWords) = (content, options, neck.Description);
        _notes = NoteBox.Of(content);
        _header = SheetHeader.Draw(content, _remarks);
        var top = new SheetTop(neck, content, _remarks);
        _top = top.Plain();
        _topWithNotes = new(() => top.With(_notes));
        _pair = new(() => SheetTop.Pair(_notes));
        _log = new(() => LogGrid.Draw(_content.Days, SheetBox.WidthMm));
        _fewLog = new(() => LogGrid.Draw(Few, SheetBox.WidthMm));
        _logWithNotes = new(LogWithNotes);
    }

    /// <summary>A sheet's parts from top to bottom under the head.</summary>
    private readonly record struct Arrangement(
        Figure Top,
        Figure Music,
        Figure Log,
        params ImmutableArray<string> Remarks
    );

    /// <summary>The sheet, with what was left out; a fault where not even one bar fits.</summary>
    public Outcome<Page> Find(MusicChoices choices)
    {
        foreach (var (choice, tight) in choices.All())
        {
            if (!choice.TryGet(out var music, out var fault))
            {
                return fault;
            }

            // What is too high without any log or notes need not be set.
            if (Height(_top.HeightMm, music.HeightMm, 0) > SheetBox.HeightMm)
            {
                continue;
            }

            foreach (var arrangement in tight ? Tight(music) : Loose(music))
            {
                if (Height(arrangement) <= SheetBox.HeightMm)
                {
                    return Printed(arrangement, [.. _remarks, .. music.Remarks, .. arrangement.Remarks]);
                }
            }
        }

        return new Fault(
            "the sheet does not fit on one page, not even with one bar of music",
            Right: "shorter texts, fewer rows in the log, or notes with fewer to a bar"
        );
    }

    private double Height(Arrangement parts) =>
        Height(parts.Top.HeightMm, parts.Music.HeightMm, parts.Log.HeightMm);

    private double Height(double top, double music, double log) =>
        _header.HeightMm + TopMm + top + MusicMm + music + (log > 0 ? LogMm + log : 0);

    // From the fullest to the tightest.
    private IEnumerable<Arrangement> Loose(SheetMusic music)
    {
        var beside = music.With(_notes) ?? Stack.Down(NotesMm, [music.Plain(), _pair.Value]);
        var few = _content.Days.Length > LogGrid.FewRows;
        yield return new(_top, beside, _log.Value);
        if (few)
        {
            yield return new(_top, beside, _fewLog.Value, FewRemark);
        }

        yield return new(_topWithNotes.Value, music.Plain(), _log.Value);
        if (few)
        {
            yield return new(_topWithNotes.Value, music.Plain(), _fewLog.Value, FewRemark);
        }
    }

    private IEnumerable<Arrangement> Tight(SheetMusic music) =>
        [new(_top, music.Plain(), _logWithNotes.Value, "the log shares its place with the notes")];

    // The notes take half of what the student would write in.
    private Figure LogWithNotes()
    {
        var notes = Stack.Down(
            NotesMm,
            _notes.Select(note => note.Draw(SheetBox.WidthMm - LogGrid.NarrowMm - SheetTop.BetweenMm))
        );
        var days = LogGrid.HeightMm(_content.Days.Length) <= notes.HeightMm ? _content.Days : Few;
        return Stack.Across(SheetTop.BetweenMm, LogGrid.Draw(days, LogGrid.NarrowMm), notes);
    }

    // Rows without names: the student writes the day.
    private ImmutableArray<string> Few =>
        _content.Days.Length <= LogGrid.FewRows ? _content.Days : [.. Enumerable.Repeat("", LogGrid.FewRows)];

    private static string FewRemark => "the log has five rows";

    private Page Printed(Arrangement parts, IEnumerable<string> remarks)
    {
        var head = Stack.Down(TopMm, [_header, parts.Top]);
        var figure = Stack.Down(LogMm, [Stack.Down(MusicMm, [head, parts.Music]), parts.Log]);
        var (width, height) = SheetBox.Size(_options.Paper);
        var left = SheetBox.LeftMm(_options.Paper);
        return new Page(
            width,
            height,
            [.. figure.At(new Point(left, SheetBox.TopMm)), .. Foot(left, width, height)]
        )
        {
            Description = $"{_content.Title}. {_neckWords}",
            Remarks = [.. remarks],
        };
    }

    private IEnumerable<Mark> Foot(double left, double width, double height)
    {
        var top = height - SheetBox.FootMm - SheetStyles.Foot.BaselineMm;
        const double half = (SheetBox.WidthMm / 2) - 4;
        var room = TextBlock.Set(_content.Room, SheetStyles.Foot, half, mostLines: 1);
        var teacher = TextBlock.Set(_content.Teacher, SheetStyles.Foot, half, mostLines: 1);
        return
        [
            .. room.MarksAt(new Point(left, top), "foot-room", "foot"),
            .. teacher.MarksEndingAt(new Point(width - left, top), "foot-teacher", "foot"),
        ];
    }
}
