using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>A note, dead stroke or rest while it is being read; what isn't known yet is null.</summary>
internal sealed class TabReadEvent
{
    /// <summary>First and last column, counted from the body of its system.</summary>
    public required int Column { get; init; }

    public required int End { get; init; }

    public required TabSpot Spot { get; init; }

    /// <summary>Null for a rest or a dead stroke.</summary>
    public Place? Place { get; init; }

    /// <summary>Where the further tones of a chord lie.</summary>
    public ImmutableArray<Place> With { get; set; } = [];

    /// <summary>The sign of a slur that leads here, and whether it stands directly before the fret.</summary>
    public char? SlurSign { get; init; }

    public bool SlurIsClose { get; init; }

    /// <summary>Whether the fret stands in round brackets: held on, or nearly silent.</summary>
    public bool InBrackets { get; init; }

    // Made when the first mark comes: most events have none.
    private List<TabMark>? _marks;

    public IReadOnlyList<TabMark> Marks => _marks ?? [];

    public Slur Slur { get; set; }

    public Fraction? Length { get; set; }

    /// <summary>Counted beats from the bar line, by the row of counts.</summary>
    public Fraction? CountedAt { get; set; }

    public int? Finger { get; set; }

    public Stroke? Stroke { get; set; }

    public bool Accent { get; set; }

    public int? Group { get; set; }

    public void Mark(TabMarkKind kind, string text, TabSpot spot) =>
        (_marks ??= []).Add(new TabMark(kind, text, spot.Line, spot.Column));
}

/// <summary>The events between two bar lines while they are being read.</summary>
internal sealed class TabReadBar
{
    public required TabSpot Spot { get; init; }

    public List<TabReadEvent> Events { get; } = [];

    /// <summary>Columns between the bar lines, as far as they were on one system.</summary>
    public int Columns { get; set; }

    /// <summary>Whether a bar line follows.</summary>
    public bool Closed { get; set; }

    public bool StartsRepeat { get; set; }

    /// <summary>Times that the section ending here is played.</summary>
    public int Times { get; set; } = 1;
}

/// <summary>A whole piece while it is being read.</summary>
/// <param name="Header">What stands outside the systems.</param>
/// <param name="Order">Strings and tuning.</param>
/// <param name="Bars">The bars, in order.</param>
internal sealed record TabPiece(TabHeader Header, TabOrder Order, List<TabReadBar> Bars)
{
    /// <summary>Most notes and rests, repeats written out.</summary>
    public const int MostEvents = 200_000;

    /// <summary>The metre written, else the one that the bars show, else 4/4.</summary>
    public Meter Meter { get; init; }

    /// <summary>When the first event begins, as a fraction of a whole note after the first bar line.</summary>
    public Fraction Start { get; init; }
}
