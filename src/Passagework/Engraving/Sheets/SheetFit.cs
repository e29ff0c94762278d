using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Finds the first arrangement of a sheet that fits into the box.</summary>
internal sealed class SheetFit
{
    private const double NotesMm = 4;
    private const double ShortNotesMm = 1;
    private const double MoreMm = 4;

    private readonly SheetContent _content;
    private readonly SheetOptions _options;
    private readonly IReadOnlyList<NoteBox> _notes;
    private readonly List<string> _remarks = [];
    private readonly Figure _header;
    private readonly Figure _top;
    private readonly Lazy<Figure> _topWithNotes;
    private readonly Lazy<Figure> _pair;
    private readonly Lazy<Figure> _short;
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
        _short = new(() => Stack.Down(ShortNotesMm, _notes.Select(note => note.DrawRunIn(SheetBox.WidthMm))));
    }

    private static readonly Room Usual = new(Top: 6, Music: 5, Log: 5, Row: LogGrid.RowMm);
    private static readonly Room Tight = new(Top: 4.5, Music: 3.5, Log: 4, Row: LogGrid.LowRowMm);

    /// <summary>Over which parts how much room is left, and how high a row of the log is, in millimetres.</summary>
    private readonly record struct Room(double Top, double Music, double Log, double Row)
    {
        public double Around(int rows) => Top + Music + (rows == 0 ? 0 : Log + LogGrid.HeightMm(rows, Row));
    }

    /// <summary>A sheet's parts from top to bottom under the head.</summary>
    private readonly record struct Arrangement(
        Figure Top,
        Figure Music,
        ImmutableArray<string> Days,
        Room Room
    );

    /// <summary>The sheet, with what was left out; a fault where not even one bar fits.</summary>
    public Outcome<Page> Find(MusicChoices choices)
    {
        foreach (var choice in choices.All(SheetBox.HeightMm - Height(_top, 0, 0, Tight)))
        {
            if (!choice.Music.TryGet(out var music, out var fault))
            {
                return fault;
            }

            // What is too high without any log or notes need not be set.
            if (Height(_top, music.HeightMm, 0, Tight) > SheetBox.HeightMm)
            {
                continue;
            }

            foreach (var parts in choice.Roomy ? Roomy(music) : Arrangements(music))
            {
                if (Height(parts) <= SheetBox.HeightMm)
                {
                    return Printed(parts, music.Remarks);
                }
            }
        }

        return new Fault(
            "the sheet does not fit on one page, not even with one bar of music",
            Right: "shorter texts, fewer rows in the log, or notes with fewer to a bar"
        );
    }

    private double Height(Arrangement parts) =>
        Height(parts.Top, parts.Music.HeightMm, parts.Days.Length, parts.Room);

    private double Height(Figure top, double music, int rows, Room room) =>
        _header.HeightMm + top.HeightMm + music + room.Around(rows);

    // A larger staff and a variation leave the log and the notes as they are.
    private IEnumerable<Arrangement> Roomy(SheetMusic music)
    {
        var all = Stack.Down(NotesMm, [Beside(music), music.Varied()]);
        yield return new(_top, all, _content.Days, Usual);
        yield return new(_top, all, _content.Days, Tight);
    }

    // From the fullest to the tightest: notes beside or under the music, under neck and plan, run together over the
    // whole width; then the same with less room, with a short log, and with both.
    private IEnumerable<Arrangement> Arrangements(SheetMusic music)
    {
        var (plain, beside) = (music.Plain(), Beside(music));
        foreach (var days in Logs)
        {
            foreach (var room in new[] { Usual, Tight })
            {
                yield return new(_top, beside, days, room);
                yield return new(_topWithNotes.Value, plain, days, room);
                yield return new(_top, Stack.Down(NotesMm, [plain, _short.Value]), days, room);
            }
        }
    }

    private ImmutableArray<ImmutableArray<string>> Logs =>
        _content.Days.Length > LogGrid.FewRows ? [_content.Days, FewDays] : [_content.Days];

    private Figure Beside(SheetMusic music) =>
        music.With(_notes) ?? Stack.Down(NotesMm, [music.Plain(), _pair.Value]);

    // The days of practice of a week; which they are the student knows.
    private static ImmutableArray<string> FewDays { get; } =
    [.. Enumerable.Range(1, LogGrid.FewRows).Select(day => day.ToString(CultureInfo.InvariantCulture))];

    private Page Printed(Arrangement parts, ImmutableArray<string> remarks)
    {
        // The last rule of the log reaches half its thickness over the edge.
        var spare = Math.Max(0, SheetBox.HeightMm - Height(parts) - Rules.ThinMm);
        var (rows, room) = (parts.Days.Length, parts.Room);
        var row = Math.Min(LogGrid.HighRowMm, room.Row + (spare / Math.Max(1, rows)));
        spare -= (row - room.Row) * rows;
        // What is left over parts the blocks.
        var more = Math.Min(MoreMm, spare / 3);
        var head = Stack.Down(room.Top + more, [_header, parts.Top]);
        var figure = Stack.Down(
            room.Log + more,
            [Stack.Down(room.Music + more, [head, parts.Music]), LogGrid.Draw(parts.Days, row)]
        );
        var (width, height) = SheetBox.Size(_options.Paper);
        var left = SheetBox.LeftMm(_options.Paper);
        return new Page(
            width,
            height,
            [.. figure.At(new Point(left, SheetBox.TopMm)), .. Foot(left, width, height)]
        )
        {
            Description = $"{_content.Title}. {_neckWords}",
            Remarks =
            [
                .. _remarks,
                .. remarks,
                .. parts.Days == _content.Days ? [] : new[] { "the log has five rows" },
            ],
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
