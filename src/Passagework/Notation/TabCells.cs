using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Everything that is written in the column of one event; an empty text leaves a row blank there.</summary>
internal sealed record TabCell(TabEvent Event)
{
    public string Count { get; init; } = "";
    public string Rhythm { get; init; } = "";
    public string Group { get; init; } = "";
    public string Accent { get; init; } = "";
    public string Stroke { get; init; } = "";
    public string Finger { get; init; } = "";

    /// <summary>String number; 0 for a rest.</summary>
    public int String { get; init; }

    /// <summary>The fret, in brackets behind and before when it is held on.</summary>
    public string Fret { get; init; } = "";

    /// <summary>What stands in the column before the fret.</summary>
    public char? Before { get; init; }

    /// <summary>Fewest columns to the next event: the widest text, and one apart.</summary>
    public int Need =>
        1
        + new[] { Count, Rhythm, Group, Accent, Stroke, Finger, Event.Tied ? Fret + ")" : Fret }.Max(text =>
            text.Length
        );
}

/// <summary>Puts into words what is written for each event.</summary>
internal sealed class TabCells
{
    private readonly TabWriting _options;
    private readonly Fraction _beat;
    private readonly Fraction _bar;
    private readonly Dictionary<long, int> _partsOfBeat;
    private int? _group;
    private int _nextGroup;
    private PlayedNote? _last;

    private TabCells(ImmutableArray<TabBar> bars, Recipe recipe, TabWriting options)
    {
        _options = options;
        _beat = Fraction.Of(1, recipe.Rhythm.Meter.WrittenUnit);
        _bar = recipe.Rhythm.Meter.Bar;
        _partsOfBeat = bars.SelectMany(bar => bar.Events)
            .GroupBy(part => (part.Onset / _beat).Floor())
            .ToDictionary(beat => beat.Key, beat => PartsOf(beat.Select(part => part.Onset)));
    }

    /// <summary>The cells of every bar.</summary>
    public static ImmutableArray<ImmutableArray<TabCell>> Of(
        ImmutableArray<TabBar> bars,
        Recipe recipe,
        TabWriting options
    )
    {
        var cells = new TabCells(bars, recipe, options);
        return [.. bars.Select(bar => bar.Events.Select(cells.CellOf).ToImmutableArray())];
    }

    private TabCell CellOf(TabEvent part)
    {
        var length = TabLength.Write(part.Length);
        var timed = new TabCell(part)
        {
            Count = _options.Counts ? CountAt(part.Onset) : "",
            Rhythm = part.Note is null ? "r" + length : length,
        };
        if (part.Note is not { } played)
        {
            return timed;
        }

        var placed = timed with { String = played.Place.String, Fret = Number(played.Place.Fret) };
        if (part.Tied)
        {
            return placed with { Before = '(' };
        }

        var cell = placed with
        {
            Group = _options.Groups ? GroupSign(played.Note.Group) : "",
            Accent = played.Note.Accent ? ">" : "",
            Stroke = _options.Strokes ? StrokeSign(played.Stroke) : "",
            Finger = _options.Fingers ? Number(played.Finger) : "",
            Before = SlurSign(played),
        };
        _last = played;
        return cell;
    }

    private string CountAt(Fraction onset)
    {
        var beat = (onset.Modulo(_bar) / _beat).Floor() + 1;
        var parts = _partsOfBeat[(onset / _beat).Floor()];
        var part = (onset.Modulo(_beat) / _beat * Fraction.Of(parts)).Floor();
        return parts == 0 && part == 0 && onset.Modulo(_beat) > Fraction.Zero
            ? ""
            : _options.Syllables.At((int)beat, (int)part, parts);
    }

    // Fewest equal parts of the beat on which all onsets lie; 0 when that takes too many to be counted aloud.
    private int PartsOf(IEnumerable<Fraction> onsets)
    {
        var inBeat = onsets.Select(onset => onset.Modulo(_beat) / _beat).ToList();
        return Enumerable
            .Range(1, CountSyllables.MostParts)
            .FirstOrDefault(parts => inBeat.TrueForAll(at => (at * Fraction.Of(parts)).IsWhole));
    }

    // "[" begins the next group, "[5" a group whose number doesn't follow, "]" ends the groups.
    private string GroupSign(int? group)
    {
        if (group == _group)
        {
            return "";
        }

        _group = group;
        if (group is not { } number)
        {
            return "]";
        }

        var sign = number == _nextGroup ? "[" : "[" + Number(number);
        _nextGroup = number + 1;
        return sign;
    }

    private char? SlurSign(PlayedNote played)
    {
        var from = _last is { } last && last.Place.String == played.Place.String ? last : null;
        var rises = from is null || played.Place.Fret > from.Place.Fret;
        return played.Note.Slur switch
        {
            Slur.Hammer => 'h',
            Slur.Pull => 'p',
            Slur.Slide => rises ? '/' : '\\',
            Slur.Slurred when from is null || from.Place.Fret == played.Place.Fret => null,
            Slur.Slurred when from.Finger == played.Finger && played.Finger > 0 => rises ? '/' : '\\',
            Slur.Slurred => rises ? 'h' : 'p',
            _ => null,
        };
    }

    private static string StrokeSign(Stroke stroke) =>
        stroke switch
        {
            Stroke.Down => "n",
            Stroke.Up => "v",
            Stroke.Thumb => "p",
            Stroke.Index => "i",
            Stroke.Middle => "m",
            Stroke.Ring => "a",
            _ => "",
        };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
