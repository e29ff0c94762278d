using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>What is said at each note and rest of a piece when counting the written beats aloud.</summary>
internal sealed class CountRow
{
    private readonly Fraction _beat;
    private readonly Fraction _bar;
    private readonly CountSyllables _syllables;
    private readonly Dictionary<long, int> _partsOfBeat;

    /// <summary>A row for what begins at these times, as fractions of a whole note after the first bar line.</summary>
    public CountRow(IEnumerable<Fraction> onsets, Meter meter, CountSyllables syllables)
    {
        _beat = Fraction.Of(1, meter.WrittenUnit);
        _bar = meter.Bar;
        _syllables = syllables;
        _partsOfBeat = onsets
            .GroupBy(onset => (onset / _beat).Floor())
            .ToDictionary(beat => beat.Key, beat => PartsOf(beat));
    }

    /// <summary>The syllable at one of the times; empty where the beat has too many parts to be counted.</summary>
    public string At(Fraction onset)
    {
        var beat = (onset.Modulo(_bar) / _beat).Floor() + 1;
        var parts = _partsOfBeat[(onset / _beat).Floor()];
        var part = (onset.Modulo(_beat) / _beat * Fraction.Of(parts)).Floor();
        return parts == 0 && part == 0 && onset.Modulo(_beat) > Fraction.Zero
            ? ""
            : _syllables.At((int)beat, (int)part, parts);
    }

    // Fewest equal parts of the beat on which all onsets lie; 0 when that takes too many to be counted aloud.
    private int PartsOf(IEnumerable<Fraction> onsets)
    {
        var inBeat = onsets.Select(onset => onset.Modulo(_beat) / _beat).ToList();
        return Enumerable
            .Range(1, CountSyllables.MostParts)
            .FirstOrDefault(parts => inBeat.TrueForAll(at => (at * Fraction.Of(parts)).IsWhole));
    }
}
