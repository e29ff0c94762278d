using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Strips;

/// <summary>
/// The name of a hand and its first limit before the music. The name stands level with the signs of moves; where one is
/// in its way it stands beyond them in the first system and is left off in later ones.
/// </summary>
internal sealed class StripNames
{
    private const double Apart = 0.5;
    private const double Beside = 1;
    private readonly ScoreSystem _system;
    private readonly Side _side;
    private readonly StripLook _look;
    private readonly double _space;
    private readonly double _em;
    private readonly Box _ink;
    private readonly bool _isFree;

    /// <summary>Measures the name.</summary>
    /// <param name="system">The system.</param>
    /// <param name="side">The hand.</param>
    /// <param name="scale">One staff space in millimetres, and how the strip is drawn.</param>
    /// <param name="signs">Where signs of the hand stand.</param>
    public StripNames(
        ScoreSystem system,
        Side side,
        (double Space, StripLook Look) scale,
        IEnumerable<double> signs
    )
    {
        (_system, _side, (_space, _look)) = (system, side, scale);
        _em = Math.Max(_look.LeastTextMm, _look.Text * _space);
        _ink = TextFont.InkBox(Name, Face.SmallCaps, _em);
        _isFree = signs.All(x => x - (SignDrawing.MostHalfWidth * _space) > _ink.Right + (Beside * _space));
    }

    /// <summary>Height beyond the signs that the name takes.</summary>
    public double RoomBeyond => IsBeyond ? _ink.Height + (Apart * _space) : 0;

    private string Name => $"{_side.Name} hand";

    private bool IsNamed => _look.Labels == StripLabels.NamesAndLimit;

    private bool IsBeyond => IsNamed && !_isFree && _system.Number == 1;

    /// <summary>Draws them.</summary>
    /// <param name="frame">Where the strip stands.</param>
    /// <param name="signs">Upper and lower edge of the row of signs.</param>
    public IEnumerable<Mark> Draw(StripFrame frame, (double Top, double Bottom) signs)
    {
        if (IsNamed && (_isFree || IsBeyond))
        {
            yield return NameAt(NameY(signs));
        }

        if (_look.Labels == StripLabels.Scale && _side.Direction < 0)
        {
            yield return Before("0", frame.Middle, "zero");
        }

        if (FirstLimit() is { } limit && frame.Holds(limit) && LimitAt(limit, frame) is { } label)
        {
            yield return label;
        }
    }

    private double NameY((double Top, double Bottom) signs)
    {
        var middle = ((signs.Top + signs.Bottom) / 2) - ((_ink.Top + _ink.Bottom) / 2);
        var beyond =
            _side.Direction < 0
                ? signs.Top - (Apart * _space) - _ink.Bottom
                : signs.Bottom + (Apart * _space) - _ink.Top;
        return IsBeyond ? beyond : middle;
    }

    private TextMark NameAt(double y) =>
        new(Name, new Point(0, y), Face.SmallCaps, _em)
        {
            Id = $"system-{_system.Number}-{_side.Name}-name",
            Kind = "strip-name",
            Ink = _side.Ink,
        };

    // Beside names a little inside the line, away from the name; where both limits all but meet, away from the other hand's.
    private TextMark? LimitAt(double ms, StripFrame frame)
    {
        var height = ms * frame.MmPerMs;
        var away = IsNamed ? Math.Max(height - (0.3 * _em), 0.5 * _em) : height;
        var words = System.FormattableString.Invariant($"{Math.Round(ms)} ms");
        var label = Before(words, frame.Middle + (_side.Direction * away), $"{_side.Name}-limit-ms");
        return _look.Labels switch
        {
            StripLabels.None => null,
            StripLabels.Scale => height > _em ? label : null,
            _ => MarkBox.Of(label).Left >= 0 ? label : null,
        };
    }

    // A figure that ends before the music, its middle at a height.
    private TextMark Before(string words, double y, string name) =>
        new(words, new Point(_system.MusicStartMm - (0.4 * _space), y + (0.33 * _em)), Face.Sans, _em)
        {
            Id = $"system-{_system.Number}-{name}",
            Kind = "strip-name",
            Ink = Ink.Soft,
            Anchor = Anchor.End,
        };

    private double? FirstLimit() =>
        _system
            .Columns.SelectMany(column => column.Heads)
            .Select(head => _side.Limits[head.Note])
            .FirstOrDefault(limit => limit is not null);
}
