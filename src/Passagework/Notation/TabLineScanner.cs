using System.Globalization;
using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>Reads the signs of one string from left to right.</summary>
internal sealed class TabLineScanner
{
    private const int LargestPlainFret = 24;
    private readonly TabStringLine _line;
    private readonly string _body;
    private readonly int _string;
    private readonly int _largestFret;
    private readonly TabFindings _findings;
    private readonly List<TabReadEvent> _events = [];
    private readonly List<(TabMarkKind Kind, TabSpot Spot)> _ahead = [];
    private int _at;
    private (char Sign, int Column)? _slur;
    private TabReadEvent? _last;

    // Where the text of the last note ends, its bends included.
    private int _lastEnd = -1;

    private TabLineScanner(TabStringLine line, string body, int number, int? frets, TabFindings findings)
    {
        _line = line;
        _body = body;
        _string = number;
        _largestFret = Math.Max(frets ?? 0, LargestPlainFret);
        _findings = findings;
    }

    /// <summary>The notes and dead strokes of a string, in order of columns.</summary>
    public static List<TabReadEvent> Scan(
        TabStringLine line,
        string body,
        int number,
        int? frets,
        TabFindings findings
    )
    {
        var scanner = new TabLineScanner(line, body, number, frets, findings);
        while (scanner._at < body.Length)
        {
            scanner.Step();
        }

        scanner.DropSlur();
        return scanner._events;
    }

    private void Step()
    {
        var c = _body[_at];
        if (char.IsAsciiDigit(c))
        {
            ReadFrets();
        }
        else if (TabStringLine.IsFiller(c) || c is '|' or ':' or '*')
        {
            _at++;
        }
        else if (!TryReadSlur(c) && !TryReadOnNote(c) && !TryReadBracketed(c) && !TryReadAhead(c))
        {
            _at += KeepUnknown(_at);
        }
    }

    private bool TryReadSlur(char c)
    {
        if (!"hHpPsS^/\\".Contains(c, StringComparison.Ordinal))
        {
            return false;
        }

        var escaped = c == '\\' && _slur is ('\\', var before) && before == _at - 1;
        if (!escaped)
        {
            DropSlur();
        }

        _slur = (char.ToLowerInvariant(c), _at);
        _at++;
        return true;
    }

    // A slur sign that leads to no note: a slide away, or nothing known.
    private void DropSlur()
    {
        if (_slur is not var (sign, column))
        {
            return;
        }

        _slur = null;
        if (_last is not null && sign is '/' or '\\' or 's')
        {
            _last?.Mark(TabMarkKind.SlideOut, sign.ToString(), SpotAt(column));
        }
        else
        {
            KeepUnknown(column);
        }
    }

    // A run of digits: one fret where that is at most 24 (or the neck's last), else the first digit is one.
    private void ReadFrets()
    {
        var from = _at;
        var length = 0;
        while (from + length < _body.Length && char.IsAsciiDigit(_body[from + length]))
        {
            length++;
        }

        const int Shown = 6;
        var read = new List<string>();
        while (_at < from + length)
        {
            var digits = FretDigits(_at, from + length);
            AddNote(_at, digits, inBrackets: false);
            if (length > digits && read.Count < Shown)
            {
                read.Add(_body.Substring(_at, digits));
            }

            _at += digits;
        }

        if (read.Count > 0)
        {
            var written = _body.Substring(from, Math.Min(length, Shown * 2));
            _findings.Warn($"ambiguous: {written} is read as {string.Join(", ", read)}", SpotAt(from));
        }
    }

    private int FretDigits(int at, int end)
    {
        var two = at + 1 < end && _body[at] != '0' ? Value(at, 2) : int.MaxValue;
        return two <= _largestFret ? 2 : 1;
    }

    private int Value(int at, int digits) =>
        int.Parse(_body.AsSpan(at, digits), NumberStyles.None, CultureInfo.InvariantCulture);

    private void AddNote(int at, int digits, bool inBrackets)
    {
        var note = new TabReadEvent
        {
            Column = at,
            End = at + digits - 1,
            Spot = SpotAt(at),
            Place = Place.At(_string, Value(at, digits)),
            SlurSign = _slur?.Sign,
            SlurIsClose = _slur is { } slur && slur.Column >= at - (inBrackets ? 2 : 1),
            InBrackets = inBrackets,
        };
        _slur = null;
        Add(note, at + digits);
    }

    private void Add(TabReadEvent added, int end)
    {
        _ahead.ForEach(mark => added.Mark(mark.Kind, "", mark.Spot));
        _ahead.Clear();
        _events.Add(added);
        _last = added;
        _lastEnd = end;
    }

    // Bends, releases and vibrato belong to the fret directly before them.
    private bool TryReadOnNote(char c)
    {
        if (_last is not { } note || _lastEnd != _at)
        {
            return false;
        }

        switch (c)
        {
            case 'b' or 'B':
                ReadBend(note);
                return true;
            case 'r' or 'R':
                note.Mark(TabMarkKind.Release, "release", SpotAt(_at));
                _at++;
                SkipDigits();
                break;
            case '~' or 'v' or 'V':
                note.Mark(TabMarkKind.Vibrato, "vibrato", SpotAt(_at));
                while (_at < _body.Length && _body[_at] == c)
                {
                    _at++;
                }

                break;
            default:
                return false;
        }

        _lastEnd = _at;
        return true;
    }

    private void ReadBend(TabReadEvent note)
    {
        var from = _at;
        _at++;
        var digits = Math.Min(SkipDigits(), 2);
        var fret = note.Place?.Fret ?? 0;
        var isStep =
            digits == 1 && _at + 1 < _body.Length && _body[_at] == '/' && _body[_at + 1] is '2' or '4';
        if (isStep)
        {
            _at += 2;
            note.Mark(TabMarkKind.Bend, $"{_body[(from + 1).._at]} of a whole step", SpotAt(from));
        }
        else if (digits > 0 && Value(from + 1, digits) > fret)
        {
            var up = (Value(from + 1, digits) - fret).ToString(CultureInfo.InvariantCulture);
            note.Mark(TabMarkKind.Bend, $"{up} half-steps", SpotAt(from));
        }
        else
        {
            _findings.Warn("a bend of unknown size, 2 half-steps are taken", SpotAt(from));
            note.Mark(TabMarkKind.Bend, "2 half-steps", SpotAt(from));
        }

        _lastEnd = _at;
    }

    private int SkipDigits()
    {
        var from = _at;
        while (_at < _body.Length && char.IsAsciiDigit(_body[_at]))
        {
            _at++;
        }

        return _at - from;
    }

    // (7) held on or nearly silent, <12> and [12] harmonics.
    private bool TryReadBracketed(char open)
    {
        var close = open switch
        {
            '(' => ')',
            '<' => '>',
            '[' => ']',
            _ => '\0',
        };
        var end = _at + 1;
        while (end < _body.Length && end < _at + 3 && char.IsAsciiDigit(_body[end]))
        {
            end++;
        }

        var digits = end - _at - 1;
        if (
            close == '\0'
            || digits == 0
            || end >= _body.Length
            || _body[end] != close
            || FretDigits(_at + 1, end) != digits
        )
        {
            return false;
        }

        AddNote(_at + 1, digits, inBrackets: open == '(');
        if (open != '(')
        {
            var kind = open == '<' ? TabMarkKind.NaturalHarmonic : TabMarkKind.ArtificialHarmonic;
            _last?.Mark(kind, _body[_at..(end + 1)], SpotAt(_at));
        }

        _at = end + 1;
        _lastEnd = _at;
        return true;
    }

    // Dead strokes, and taps and trills that belong to the next note.
    private bool TryReadAhead(char c)
    {
        switch (c)
        {
            case 'x' or 'X':
                DropSlur();
                var dead = new TabReadEvent
                {
                    Column = _at,
                    End = _at,
                    Spot = SpotAt(_at),
                };
                dead.Mark(TabMarkKind.Dead, "x", dead.Spot);
                Add(dead, _at + 1);
                _at++;
                return true;
            case 't' or 'T':
                var isTrill = _at + 1 < _body.Length && _body[_at + 1] is 'r' or 'R';
                _ahead.Add((isTrill ? TabMarkKind.Trill : TabMarkKind.Tap, SpotAt(_at)));
                _at += isTrill ? 2 : 1;
                return true;
            default:
                return false;
        }
    }

    // Returns the length of the sign: a character may take two places.
    private int KeepUnknown(int column)
    {
        var spot = SpotAt(column);
        var sign = _body.Substring(column, char.IsHighSurrogate(_body[column]) ? 2 : 1);
        _findings.Keep(new TabMark(TabMarkKind.Unknown, sign, spot.Line, spot.Column));
        _findings.Warn($"unknown sign '{sign}', kept aside", spot);
        return sign.Length;
    }

    private TabSpot SpotAt(int column) => _line.Line.At(_line.Start + column);
}
