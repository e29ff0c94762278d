using System.Globalization;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>One bar of a part as it stands in a file.</summary>
internal sealed class ReadBar
{
    public required string Number { get; init; }

    public required bool Implicit { get; init; }

    public Fraction Length { get; set; }

    /// <summary>Whether a repeat begins.</summary>
    public bool RepeatStarts { get; set; }

    /// <summary>How often the repeat that ends here is played; 0 when none ends.</summary>
    public int RepeatTimes { get; set; }

    /// <summary>The turns in which the ending that begins here is played; empty when none begins.</summary>
    public IReadOnlyList<int> Ending { get; set; } = [];

    public bool EndingStops { get; set; }
}

/// <summary>One staff of a part.</summary>
internal sealed class ReadStaff
{
    public bool IsTab { get; set; }

    public int? Lines { get; set; }

    public int? Capo { get; set; }

    /// <summary>Open strings by line, 1 the lowest.</summary>
    public SortedDictionary<int, Theory.SpelledPitch> OpenStrings { get; } = [];

    /// <summary>What is added to written pitch.</summary>
    public Theory.Interval Transposition { get; set; }
}

/// <summary>One part of a score while and after it is read.</summary>
internal sealed class ReadPart
{
    /// <summary>A score has no more staves in a part.</summary>
    public const int MostStaves = 32;

    public required string Id { get; init; }

    public required string Name { get; init; }

    /// <summary>Counts the notes of all parts.</summary>
    public required NoteCount InScore { get; init; }

    public List<ReadBar> Bars { get; } = [];

    public List<ReadNote> Notes { get; } = [];

    public Remarks Remarks { get; } = new();

    public Dictionary<int, ReadStaff> Staves { get; } = [];

    /// <summary>Notes without pitch.</summary>
    public int Unpitched { get; set; }

    public Meter? Meter { get; set; }

    public ScoreKey? Key { get; set; }

    /// <summary>Quarter notes a minute.</summary>
    public double? QuarterTempo { get; set; }

    /// <summary>The beats a minute and the beat of the first mark.</summary>
    public (double Bpm, Fraction Beat)? Mark { get; set; }

    public ReadSwing? Swing { get; set; }

    /// <summary>The number of the group that notes belong to while reading.</summary>
    public int? Group { get; set; }

    /// <summary>Divisions of a quarter.</summary>
    public Fraction Divisions { get; set; } = Fraction.One;

    /// <summary>All lengths so far are multiples of this part of a whole note.</summary>
    public long Unit { get; set; } = 1;

    /// <summary>Where the next note stands in the bar.</summary>
    public Fraction Cursor { get; set; }

    /// <summary>Where the last note that was no further head of a chord began.</summary>
    public Fraction ChordOnset { get; set; }

    public ReadBar Bar => Bars[^1];

    /// <summary>The metre that lengths of bars are compared with while reading.</summary>
    public Fraction NominalBar { get; set; } = Fraction.One;

    public ReadStaff Staff(int number)
    {
        if (!Staves.TryGetValue(number, out var staff))
        {
            staff = new ReadStaff();
            Staves[number] = staff;
        }

        return staff;
    }

    /// <summary>Such as <c>bar 3, beat 2</c>; beats are those of the metre, with fractions.</summary>
    public string SpotAt(int bar, Fraction inBar)
    {
        var beat = (inBar / (Meter ?? default).Beat) + Fraction.One;
        return string.Create(CultureInfo.InvariantCulture, $"bar {Bars[bar].Number}, beat {beat}");
    }

    public string Spot => SpotAt(Bars.Count - 1, Cursor);

    public void Remark(string text)
    {
        if (!Remarks.Repeats(text))
        {
            Remarks.Add(text, Spot);
        }
    }
}

/// <summary>How many notes of a score have been read.</summary>
internal sealed class NoteCount
{
    public int Notes { get; set; }
}

/// <summary>A swing mark: the parts of each pair, and the note that swings.</summary>
internal sealed record ReadSwing(Fraction Share, Fraction Pulse);
