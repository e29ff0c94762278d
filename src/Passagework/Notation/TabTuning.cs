using System.Collections.Immutable;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>Tunings as tab writes them: note names from the lowest string to the highest, usually without octaves.</summary>
internal static class TabTuning
{
    private static readonly ImmutableArray<string> UsualByStringCount =
    [
        "bass",
        "five-string bass",
        "standard",
        "seven-string",
        "eight-string",
    ];

    private static readonly ImmutableArray<(Tuning Tuning, ImmutableArray<string> Names)> Known =
    [
        .. Tuning.Names.Select(Named).Select(tuning => (tuning, NamesOf(tuning).ToImmutableArray())),
    ];

    /// <summary>The usual tuning of that many strings, 4 to 8.</summary>
    public static Tuning Usual(int strings) => Named(UsualByStringCount[strings - 4]);

    /// <summary>Names from the highest-numbered string to string 1, with octaves where the names alone would mislead.</summary>
    public static string Write(Tuning tuning)
    {
        var open = Enumerable.Range(1, tuning.StringCount).Reverse().Select(tuning.Open).ToList();
        var names = open.ConvertAll(pitch => pitch.Name.ToString());
        var plain = FromNames(names) is { } guess && SameOpen(guess, tuning);
        return string.Join(' ', plain ? names : open.ConvertAll(pitch => pitch.ToString()));
    }

    /// <summary>
    /// The tuning meant by names alone, lowest string first: a known one, else each string at the octave nearest to
    /// the usual tuning of that many strings (tie: the lower); null when the names are none or too many.
    /// </summary>
    public static Tuning? FromNames(IReadOnlyList<string> names)
    {
        if (names.Count is < 4 or > 8)
        {
            return null;
        }

        var known = Known.FirstOrDefault(entry => entry.Names.SequenceEqual(names)).Tuning;
        if (known is not null)
        {
            return known;
        }

        var usual = Usual(names.Count);
        var open = new List<SpelledPitch>();
        foreach (var (text, at) in names.Select((text, at) => (text, at)))
        {
            if (!NoteName.TryParse(text, out var name))
            {
                return null;
            }

            open.Add(Nearest(name, usual.Open(names.Count - at).Midi));
        }

        return Tuning.TryParse(string.Join(' ', open), out var tuning) ? tuning : null;
    }

    /// <summary>
    /// Reads a known name, note names with or without octaves, apart or run together, lowest string first unless the
    /// text says otherwise or only the other way round is a known tuning.
    /// </summary>
    /// <returns>The tuning, null when it can't be told, and how many strings were named (0 when none).</returns>
    public static (Tuning? Tuning, int Strings) Read(string value)
    {
        var bracket = value.IndexOf('(', StringComparison.Ordinal);
        var words = (bracket < 0 ? value : value[..bracket]).Trim();
        var name = Tuning.Names.FirstOrDefault(known =>
            known.Equals(words, StringComparison.OrdinalIgnoreCase)
        );
        if (name is not null)
        {
            return (Named(name), 0);
        }

        var notes = NotesIn(words);
        if (notes is null)
        {
            return (null, 4);
        }

        if (value.Contains("high to low", StringComparison.OrdinalIgnoreCase) || OnlyReverseIsKnown(notes))
        {
            notes.Reverse();
        }

        if (notes.Count is < 4 or > 8)
        {
            return (null, notes.Count);
        }

        var pitches = Tuning.TryParse(string.Join(' ', notes), out var tuning) ? tuning : FromNames(notes);
        return (pitches, notes.Count);
    }

    /// <summary>Whether these names are a known tuning only from the highest string down.</summary>
    public static bool OnlyReverseIsKnown(IReadOnlyList<string> names) =>
        !IsKnown(names) && IsKnown([.. names.Reverse()]);

    /// <summary>Names from the highest-numbered string to string 1.</summary>
    public static IEnumerable<string> NamesOf(Tuning tuning) =>
        Enumerable
            .Range(1, tuning.StringCount)
            .Reverse()
            .Select(number => tuning.Open(number).Name.ToString());

    /// <summary>Labels from string 1 on; string 1 in lower case where another string has its name.</summary>
    public static ImmutableArray<string> Labels(Tuning tuning)
    {
        var names = NamesOf(tuning).Reverse().ToList();
        var doubled = names.LastIndexOf(names[0]) > 0;
        return [doubled ? names[0].ToLowerInvariant() : names[0], .. names.Skip(1)];
    }

    private static bool IsKnown(IReadOnlyList<string> names) =>
        Known.Any(entry => entry.Names.SequenceEqual(names));

    // Notes such as "E", "Bb", "F#2", also without anything between; null when there is something else.
    private static List<string>? NotesIn(string words)
    {
        const int MostNotes = 16;
        var notes = new List<string>();
        var at = 0;
        while (at < words.Length && notes.Count < MostNotes)
        {
            if (words[at] is ' ' or ',' or '-' or '/')
            {
                at++;
                continue;
            }

            if (char.ToUpperInvariant(words[at]) is < 'A' or > 'G')
            {
                return null;
            }

            var end = at + 1;
            while (end < words.Length && (words[end] is '#' or 'b' || char.IsAsciiDigit(words[end])))
            {
                end++;
            }

            notes.Add(char.ToUpperInvariant(words[at]) + words[(at + 1)..end]);
            at = end;
        }

        return notes;
    }

    private static bool SameOpen(Tuning a, Tuning b) =>
        a.StringCount == b.StringCount
        && Enumerable.Range(1, a.StringCount).All(number => a.Open(number) == b.Open(number));

    private static SpelledPitch Nearest(NoteName name, int midi) =>
        Enumerable
            .Range(0, 8)
            .Select(octave => new SpelledPitch(name, octave))
            .MinBy(pitch => Math.Abs(pitch.Midi - midi));

    private static Tuning Named(string name) =>
        Tuning.TryParse(name, out var tuning) ? tuning : throw new System.Diagnostics.UnreachableException();
}
