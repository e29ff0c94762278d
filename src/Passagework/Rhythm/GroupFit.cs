using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How the groups of a line sit against the beat.</summary>
/// <remarks>
/// Groups of one length count as that length however many there are; where lengths differ, one pass of all of them
/// repeats. A late start changes none of this.
/// </remarks>
public sealed record GroupFit
{
    /// <summary>The bars within which groups should come out: a phrase. Chosen by us.</summary>
    public const int PhraseBars = 4;

    private GroupFit() { }

    /// <summary>Felt beats until a group, or the pass, starts on a beat again.</summary>
    public required long BeatsToRealign { get; init; }

    /// <summary>Bars until a group, or the pass, starts on a downbeat again.</summary>
    public required long BarsToRealign { get; init; }

    /// <summary>The usual feels in their order, each with the grade of fit within a phrase.</summary>
    public required ImmutableArray<GradedFeel> Feels { get; init; }

    /// <summary>Share of the usual feels in which the groups come out even within a phrase.</summary>
    public Fraction ComesOutEven =>
        Fraction.Of(Feels.Count(feel => feel.Grade != FeelGrade.Open), Feels.Length);

    /// <summary>Grades reached of all that could be: 1 where every group starts on a beat in every feel.</summary>
    public Fraction Ease =>
        Fraction.Of(Feels.Sum(feel => (int)feel.Grade), Feels.Length * (int)FeelGrade.Locked);

    /// <summary>
    /// Share of the places of the beat that accents visit, over four ways of dividing it; null for groups of one note and
    /// where an accent is on no pulse.
    /// </summary>
    public required Fraction? Ambiguity { get; init; }

    /// <summary>Share of group starts that fall on a beat until all repeats.</summary>
    public required Fraction StartsOnBeat { get; init; }

    /// <summary>Where a closing note after the last group falls, when the first group starts on a downbeat.</summary>
    public required BarPlace Closing { get; init; }

    /// <summary>Ambiguity and coming out, in words; null with the ambiguity.</summary>
    public required string? Sentence { get; init; }

    /// <summary>How groups sit in a metre.</summary>
    /// <param name="groups">The groups in the order played; notes added by an ending left out.</param>
    /// <param name="meter">The metre.</param>
    /// <param name="notesPerBeat">Pulses per felt beat, at least 1.</param>
    /// <returns>Null where there are no groups, a length is no whole number of pulses, or all last over a million.</returns>
    public static GroupFit? Of(IReadOnlyList<GroupShape> groups, Meter meter, int notesPerBeat)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(notesPerBeat, 1);
        if (Pass.OfStarts(groups) is not { } starts)
        {
            return null;
        }

        var total = groups.Sum(group => group.Pulses.Numerator);
        var accents = groups.All(group => group.Notes <= 1) ? null : Pass.OfAccents(groups);
        return new GroupFit
        {
            BeatsToRealign = WholeNumbers.Lcm(starts.Length, notesPerBeat) / notesPerBeat,
            BarsToRealign = starts.Length / WholeNumbers.Gcd(starts.Length, notesPerBeat * meter.BeatsPerBar),
            Feels = Grades(starts, meter, PhraseBars),
            Ambiguity = accents is null ? null : Rhythm.Ambiguity.Of(accents),
            StartsOnBeat = OnBeat(starts, notesPerBeat),
            Closing = BarPlace.Of(total, notesPerBeat, meter.BeatsPerBar),
            Sentence = accents is null ? null : FitSentence.Of(accents, starts.Length, meter),
        };
    }

    /// <summary>The usual feels with their grades within that many bars.</summary>
    internal static ImmutableArray<GradedFeel> Grades(Pass starts, Meter meter, int bars) =>
        [.. Feel.Usual.Select(feel => GradedFeel.Of(starts, feel, meter.BeatsPerBar, bars))];

    private static Fraction OnBeat(Pass starts, int notesPerBeat)
    {
        var step = (int)WholeNumbers.Gcd(starts.Length, notesPerBeat);
        var meeting = starts.Marks.Count(mark => mark % step == 0);
        return Fraction.Of((long)meeting * step, (long)starts.Marks.Length * notesPerBeat);
    }
}
