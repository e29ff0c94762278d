using System.Globalization;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>What the lines outside the systems say: title, instrument, metre, tempo.</summary>
internal sealed class TabHeader
{
    private const int FinestGrid = 1 << 20;
    private const double FastestBpm = 1000;
    private readonly TabFindings _findings;

    public TabHeader(TabFindings findings) => _findings = findings;

    public string? Title { get; set; }

    public Tuning? Tuning { get; private set; }

    public int Capo { get; private set; }

    public int? Frets { get; private set; }

    public Meter? Meter { get; private set; }

    public int? NotesPerBeat { get; private set; }

    public double? TempoBpm { get; private set; }

    public Swing Swing { get; private set; }

    public Fraction? Start { get; private set; }

    public NoteSet? Notes { get; private set; }

    /// <summary>Whether a line is one of those that are read here.</summary>
    public static bool IsHeaderLine(string text) => KeyOf(text) is not null;

    /// <summary>Reads one such line; the fault when it says something impossible.</summary>
    public Fault? Read(TabLine line)
    {
        if (KeyOf(line.Text) is not { } found)
        {
            return null;
        }

        var value = line.Text[found.ValueAt..].Trim();
        var spot = line.At(
            found.ValueAt + (line.Text.Length - found.ValueAt - line.Text[found.ValueAt..].TrimStart().Length)
        );
        var fault = found.Key switch
        {
            "title" => ReadTitle(value),
            "tuning" => ReadTuning(value, spot),
            "capo" => ReadCapo(value, spot),
            "frets" => ReadFrets(value),
            "tempo" or "bpm" => ReadTempo(value, spot),
            "swing" => ReadSwing(value),
            "start" => ReadStart(value),
            "notes" => ReadNotes(value, spot),
            "signs" => null,
            _ => ReadMeter(value),
        };
        return fault is null ? null : fault with { Where = spot.ToString() };
    }

    private static (string Key, int ValueAt)? KeyOf(string text)
    {
        var trimmed = text.TrimStart();
        var lead = text.Length - trimmed.Length;
        var colon = trimmed.IndexOf(':', StringComparison.Ordinal);
        var end = colon is > 0 and < 20 ? colon : trimmed.IndexOf(' ', StringComparison.Ordinal);
        if (end <= 0 || end > 20)
        {
            return null;
        }

        var key = trimmed[..end].Trim().ToLowerInvariant();
        var known = key is "capo" or "tuning" || (colon > 0 && end == colon && IsKey(key));
        return known ? (key, lead + end + 1) : null;
    }

    private static bool IsKey(string key) =>
        key
            is "title"
                or "frets"
                or "tempo"
                or "bpm"
                or "swing"
                or "start"
                or "notes"
                or "signs"
                or "meter"
                or "metre"
                or "time"
                or "time signature";

    private Fault? ReadTitle(string value)
    {
        Title ??= value;
        return null;
    }

    private Fault? ReadTuning(string value, TabSpot spot)
    {
        var (tuning, strings) = TabTuning.Read(value);
        if (tuning is null && strings is < 4 or > 8)
        {
            return new Fault($"a tuning of {strings} strings", "", "4 to 8 notes, lowest string first");
        }

        if (tuning is null)
        {
            _findings.Warn($"unknown tuning '{value}', the usual one is taken", spot);
        }

        Tuning = tuning;
        return null;
    }

    private Fault? ReadCapo(string value, TabSpot spot)
    {
        if (FirstNumber(value) is not { } capo)
        {
            _findings.Warn("no fret of the capo found, none is taken", spot);
            return null;
        }

        Capo = capo <= 12 ? (int)capo : 0;
        return capo <= 12 ? null : new Fault($"a capo at fret {capo}", "", "0 to 12");
    }

    private Fault? ReadFrets(string value)
    {
        var frets = FirstNumber(value) ?? 0;
        Frets = frets is >= 12 and <= 36 ? (int)frets : null;
        return Frets is null ? new Fault($"a neck of {value} frets", "", "12 to 36") : null;
    }

    private Fault? ReadMeter(string value)
    {
        var end = value.IndexOfAny([' ', ',']);
        if (!Rhythm.Meter.TryParse(end < 0 ? value : value[..end], out var meter))
        {
            return new Fault($"unknown meter '{value}'", "", "such as 4/4, 6/8");
        }

        Meter = meter;
        if (end >= 0 && value.Contains("to the beat", StringComparison.Ordinal))
        {
            NotesPerBeat = FirstNumber(value[end..]) is { } count and >= 1 and <= 8 ? (int)count : null;
        }

        return null;
    }

    private Fault? ReadTempo(string value, TabSpot spot)
    {
        foreach (var word in value.Split([' ', '='], StringSplitOptions.RemoveEmptyEntries))
        {
            if (double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out var tempo))
            {
                TempoBpm = tempo is > 0 and <= FastestBpm ? tempo : null;
                return TempoBpm is null ? new Fault($"a tempo of {word}", "", "above 0, at most 1000") : null;
            }
        }

        _findings.Warn("no tempo in beats a minute found", spot);
        return null;
    }

    private Fault? ReadSwing(string value)
    {
        if (Fraction.TryParse(value, out var share) && Swing.TryOf(share, out var swing))
        {
            Swing = swing;
            return null;
        }

        return new Fault($"a swing of {value}", "", "a fraction from 1/2 (straight) to 3/4");
    }

    private Fault? ReadStart(string value)
    {
        if (
            Fraction.TryParse(value.Split(' ')[0], out var start)
            && start.Denominator <= FinestGrid
            && start > Fraction.Of(-64)
            && start < Fraction.Of(64)
        )
        {
            Start = start;
            return null;
        }

        return new Fault($"a start of '{value}'", "", "a fraction of a whole note, such as 1/16");
    }

    private Fault? ReadNotes(string value, TabSpot spot)
    {
        var space = value.IndexOf(' ', StringComparison.Ordinal);
        if (
            space > 0
            && NoteName.TryParse(value[..space], out var root)
            && NoteSet.TryNamed(root, value[(space + 1)..].Trim(), out var set)
        )
        {
            Notes = set;
        }
        else
        {
            _findings.Warn($"unknown notes '{value}'", spot);
        }

        return null;
    }

    // The first whole number in a text; nothing longer than nine digits.
    private static long? FirstNumber(string value)
    {
        var from = value.AsSpan().IndexOfAnyInRange('0', '9');
        if (from < 0)
        {
            return null;
        }

        var digits = value.AsSpan(from);
        var end = digits.IndexOfAnyExceptInRange('0', '9');
        var number = end < 0 ? digits : digits[..end];
        return number.Length <= 9
            ? long.Parse(number, NumberStyles.None, CultureInfo.InvariantCulture)
            : long.MaxValue;
    }
}
