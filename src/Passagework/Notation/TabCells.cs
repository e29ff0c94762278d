using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;

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

    /// <summary>The further tones of a chord.</summary>
    public ImmutableArray<(int String, string Fret)> With { get; init; } = [];

    /// <summary>What is written on a string, if anything.</summary>
    public string? FretOn(int number) =>
        number == String ? Fret : With.FirstOrDefault(tone => tone.String == number).Fret;

    /// <summary>What stands in the column before the fret.</summary>
    public char? Before { get; init; }

    /// <summary>Fewest columns to the next event: the widest text, and one apart.</summary>
    public int Need =>
        1
        + new[] { Count, Rhythm, Group, Accent, Stroke, Finger, Tied(Fret) }
            .Concat(With.Select(tone => Tied(tone.Fret)))
            .Max(text => text.Length);

    private string Tied(string fret) => Event.Tied ? fret + ")" : fret;
}

/// <summary>Puts into words what is written for each event.</summary>
internal sealed class TabCells
{
    private readonly TabWriting _options;
    private readonly CountRow _counts;
    private int? _group;
    private int _nextGroup;
    private PlayedNote? _last;

    private TabCells(ImmutableArray<TabBar> bars, Recipe recipe, TabWriting options)
    {
        _options = options;
        _counts = new CountRow(
            bars.SelectMany(bar => bar.Events).Select(part => part.Onset),
            recipe.Rhythm.Meter,
            options.Syllables
        );
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
            Count = _options.Counts ? _counts.At(part.Onset) : "",
            Rhythm = part.Note is null ? "r" + length : length,
        };
        if (part.Note is not { } played)
        {
            return timed;
        }

        var placed = timed with
        {
            String = played.Place.String,
            Fret = Number(played.Place.Fret),
            With = [.. played.With.Select(tone => (tone.Place.String, Number(tone.Place.Fret)))],
        };
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
        var from = _last
            ?.Tones.Where(tone => tone.Place.String == played.Place.String)
            .Select(tone => (PlayedTone?)tone)
            .FirstOrDefault();
        var rises = from is null || played.Place.Fret > from.Value.Place.Fret;
        return played.Note.Slur switch
        {
            Slur.Hammer => 'h',
            Slur.Pull => 'p',
            Slur.Slide => rises ? '/' : '\\',
            Slur.Slurred when from is null || from.Value.Place.Fret == played.Place.Fret => null,
            Slur.Slurred when from.Value.Finger == played.Finger && played.Finger > 0 => rises ? '/' : '\\',
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
