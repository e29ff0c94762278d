using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>Draws the lines of a tab, broken where a number stands on them, the numbers, slides and slurs between them.</summary>
internal sealed class TabWriter
{
    private const double LineClear = 0.15;
    private const double ArcClear = 0.2;
    private const double FlattestArc = 0.6;
    private const double SteepestArc = 0.75;
    private const double LetterClear = 0.25;
    private const double InSpace = 0.08;
    private const double SlideClear = 0.2;
    private const double SlideRise = 0.4;
    private readonly Scene _scene;
    private readonly Block _tab;
    private readonly Sizes _sizes;
    private readonly List<(double From, double To)>[] _gaps;
    private readonly List<Box> _ink = [];

    public TabWriter(Scene scene, Block tab)
    {
        _scene = scene;
        _tab = tab;
        _sizes = scene.Piece.Sizes;
        _gaps = [.. Enumerable.Range(0, _sizes.Strings).Select(_ => new List<(double From, double To)>())];
    }

    public void Write()
    {
        StaffWriter.WritePrefix(_scene, _tab, _scene.Plan.Prefix.Tab, "tab");
        foreach (var column in _scene.Plan.Columns)
        {
            WriteNumbers(column);
        }

        for (var number = 1; number <= _sizes.Strings; number++)
        {
            WriteLine(number);
        }

        new BendWriter(_scene).WriteTab(_tab);
        WriteArcs();
    }

    private void WriteNumbers(Column column)
    {
        var restated = column == _scene.Plan.Columns[0] && column.Written.TiedBack;
        for (var i = 0; i < column.Heads.Length; i++)
        {
            var head = column.Heads[i];
            if (column.Begins || restated)
            {
                var text = Lettering(ColumnInk.TabText(head));
                WriteOn(Scene.Tag(column, "tab-number", i + 1), text, column.X, head.Tone.Place.String);
                if (restated)
                {
                    WriteBrackets(column, i);
                }
            }
        }

        // The string nearest the note is the last that the plectrum meets.
        for (var i = 0; i < column.Raked.Length; i++)
        {
            var x = column.X + _scene.Piece.Ink.RakedX(column.Heads[0], column.Raked.Length - i);
            WriteOn(Scene.Tag(column, "dead-note", i + 1), Lettering("X"), x, column.Raked[i]);
        }
    }

    private Lettering Lettering(string text) => new(text, Face.SansBold, _sizes.DigitEm);

    private void WriteOn(Tag tag, Lettering text, double x, int stringNumber)
    {
        var y = _sizes.TabLine(stringNumber);
        _tab.Text(tag, text, x, y + (_sizes.DigitHeight / 2), Anchor.Middle);
        var ink = text.Ink(Anchor.Middle);
        _gaps[stringNumber - 1].Add((x + ink.Left - LineClear, x + ink.Right + LineClear));
        _ink.Add(ink.Moved(x, y + (_sizes.DigitHeight / 2)));
    }

    private void WriteBrackets(Column column, int index)
    {
        var place = column.Heads[index].Tone.Place;
        var half = Lettering(ColumnInk.TabText(column.Heads[index])).Width / 2;
        foreach (var (sign, side) in new[] { ("(", -1), (")", 1) })
        {
            var bracket = _scene.Piece.Ink.Bracket(sign);
            var x = column.X + (side * (half + (bracket.Width / 2)));
            var tag = Scene.Tag(column, "tab-bracket", (2 * index) + (side > 0 ? 2 : 1));
            // Its middle on the line.
            var ink = bracket.Ink();
            var y = _sizes.TabLine(place.String) - ((ink.Top + ink.Bottom) / 2);
            _tab.Text(tag, bracket, x, y, Anchor.Middle);
        }

        var reach = half + _scene.Piece.Ink.Bracket("(").Width;
        _gaps[place.String - 1].Add((column.X - reach, column.X + reach));
    }

    private void WriteLine(int number)
    {
        var (y, from, part) = (_sizes.TabLine(number), 0.0, 0);
        foreach (var gap in _gaps[number - 1].OrderBy(gap => gap.From).Append((_scene.Plan.EndX, 0)))
        {
            if (gap.From > from)
            {
                var name = string.Create(CultureInfo.InvariantCulture, $"{number}-{++part}");
                _tab.Line(
                    _scene.Tag("tab-line", name, Ink.Staff),
                    new Point(from, y),
                    new Point(gap.From, y),
                    Pens.StaffLine
                );
            }

            from = Math.Max(from, gap.To);
        }
    }

    private void WriteArcs()
    {
        Column? before = null;
        foreach (var column in _scene.Plan.Columns.Where(column => column.Begins))
        {
            if (column.Into == Slur.Slide)
            {
                WriteSlide(before, column);
            }
            else if (CurveWriter.IsSlurred(column))
            {
                var from = before is null ? _scene.Plan.Prefix.Width : LeadX(before);
                WriteArc(column, "tab-slur", (from, column.X), column.Heads[^1].Tone.Place.String);
                WriteLetter(column, (from, column.X));
            }

            before = column;
        }

        if (before is not null && _scene.Plan.Next is { } next && CurveWriter.IsSlurred(next))
        {
            var onString = next.Heads[^1].Tone.Place.String;
            WriteArc(before, "tab-slur-on", (LeadX(before), _scene.Plan.EndX), onString);
        }
    }

    // Where a slur from a number begins: over it, or beside its bend.
    private double LeadX(Column column) =>
        column.Bend is null
            ? column.X
            : column.X + _scene.Piece.Ink.BendStart(column, Lane.Tab) + BendRoom.OnTab(column.Bend, _sizes);

    private void WriteArc(Column column, string kind, (double From, double To) ends, int stringNumber)
    {
        var y = _sizes.TabLine(stringNumber) - (_sizes.DigitHeight / 2) - ArcClear;
        var bulge = Bulge(ends);
        _tab.Curve(
            Scene.Tag(column, kind) with
            {
                Kind = "tab-slur",
            },
            new Arc(new Point(ends.From + 0.2, y), new Point(ends.To - 0.2, y), -bulge)
        );
    }

    // Flat enough to stay under the line above, so that the letter stands in the next space.
    private static double Bulge((double From, double To) ends) =>
        Math.Clamp(0.2 * (ends.To - ends.From), FlattestArc, SteepestArc);

    // In the space above the slur where it touches nothing there, else over the whole tab.
    private void WriteLetter(Column column, (double From, double To) ends)
    {
        var text = new Lettering(column.Into == Slur.Hammer ? "H" : "P", Face.Sans, _sizes.TabLetter);
        var (middle, ink) = ((ends.From + ends.To) / 2, text.Ink(Anchor.Middle));
        var line = _sizes.TabLine(column.Heads[^1].Tone.Place.String);
        var slur = line - (_sizes.DigitHeight / 2) - ArcClear - (0.75 * Bulge(ends)) - (Pens.SlurMiddle / 2);
        var space = line - (1.5 * _sizes.TabGap);
        var y = space + (ink.Height / 2);
        var isFree =
            space > 0
            && y <= slur - InSpace
            && ink.Height <= _sizes.TabGap - Pens.StaffLine - (2 * InSpace)
            && !_ink.Exists(ink.Moved(middle, y).Grown(LetterClear).Overlaps);
        y = isFree ? y : _tab.FreeAbove(middle + ink.Left, middle + ink.Right, LetterClear);
        _tab.Text(Scene.Tag(column, "slur-letter"), text, middle, y, Anchor.Middle);
    }

    // Slants by pitch; string 1 is above, higher frets are higher. From a chord the tone on the same string leads on.
    private void WriteSlide(Column? before, Column column)
    {
        var head = column.Heads[^1];
        var lead = before?.Heads.FirstOrDefault(other => other.Tone.Place.String == head.Tone.Place.String);
        lead ??= before?.Heads[^1];
        var y = _sizes.TabLine(head.Tone.Place.String);
        var to = column.X + NumberInk(head).Left - SlideClear;
        var from =
            before is null || lead is null
                ? to - ColumnInk.SlideRoom
                : Math.Max(before.X + NumberInk(lead).Right, LeadX(before)) + SlideClear;
        var rise = lead is null || lead.Tone.Place.Fret < head.Tone.Place.Fret ? SlideRise : -SlideRise;
        _tab.Line(
            Scene.Tag(column, "tab-slide"),
            new Point(from, y + rise),
            new Point(to, y - rise),
            Pens.Stem
        );
    }

    private Box NumberInk(Head head) => Lettering(ColumnInk.TabText(head)).Ink(Anchor.Middle);
}
