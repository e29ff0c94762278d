using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>The names of all twelve pitch classes around one note set.</summary>
/// <remarks>
/// The notes of the set have the names of their degrees. Other notes take their names from the key of the root:
/// natural minor with its leading note, or major. What neither names is sharp on the way up and flat on the way down.
/// A chromatic set is spelled so too, from the major key of its root.
/// </remarks>
internal sealed class SetNames
{
    private static readonly ImmutableArray<ScaleDegree> MajorKey = Key("1 2 3 4 5 6 7");
    private static readonly ImmutableArray<ScaleDegree> MinorKey = Key("1 2 b3 4 5 b6 b7 7");
    private static readonly ScaleDegree BlueNote = ScaleDegree.Reaching(6, 5);
    private static readonly ScaleDegree RisingBlueNote = ScaleDegree.Reaching(6, 4);

    private readonly NoteName?[] _fixed = new NoteName?[12];
    private readonly int? _bluePitchClass;
    private readonly NoteName _risingBlue;

    public SetNames(NoteSet notes)
    {
        var isChromatic = notes.Formula?.Name == "chromatic";
        foreach (var degree in notes.IsMinor ? MinorKey : MajorKey)
        {
            Fix(notes.Root, degree, DegreeNames.Name(notes.Root, degree));
        }

        if (!isChromatic)
        {
            var names = Ascending(notes);
            for (var i = 0; i < names.Length; i++)
            {
                Fix(notes.Root, notes.Degrees[i], names[i]);
            }
        }

        if (IsMinorBlues(notes))
        {
            _bluePitchClass = PitchClass(notes.Root, BlueNote);
            _risingBlue = DegreeNames.Name(notes.Root, RisingBlueNote);
        }
    }

    /// <summary>The set's own notes in ascending order, the blue note as a lowered fifth.</summary>
    public static ImmutableArray<NoteName> Ascending(NoteSet notes) =>
        [.. notes.Degrees.Select(degree => OwnName(notes, degree))];

    /// <summary>The name of a MIDI key, given whether the line goes up from it (1), down (−1) or stops (0).</summary>
    /// <param name="midi">The key.</param>
    /// <param name="onward">Where the line goes on to.</param>
    /// <param name="motion">The same, but the way it came when it stops.</param>
    public NoteName At(int midi, int onward, int motion)
    {
        var pitchClass = WholeNumbers.Modulo(midi, 12);
        return onward > 0 && pitchClass == _bluePitchClass
            ? _risingBlue
            : _fixed[pitchClass] ?? (motion < 0 ? PlainNames.Falling(midi) : PlainNames.Rising(midi));
    }

    private static NoteName OwnName(NoteSet notes, ScaleDegree degree)
    {
        var minorWithLeadingNote = notes.Formula?.Name is "harmonic minor" or "melodic minor";
        var name = DegreeNames.Name(notes.Root, degree, minorWithLeadingNote && degree.Number == 7);

        // A blue note is never Cb or Fb.
        var avoid = IsMinorBlues(notes) && degree == BlueNote && name is { Letter: 0 or 3, Alteration: < 0 };
        return avoid ? PlainNames.Falling(name.PitchClass) : name;
    }

    private static bool IsMinorBlues(NoteSet notes) => notes.Formula?.Name == "minor blues";

    private static int PitchClass(NoteName root, ScaleDegree degree) =>
        WholeNumbers.Modulo(root.PitchClass + degree.Semitones, 12);

    private static ImmutableArray<ScaleDegree> Key(string degrees) => [.. ScaleDegree.ParseAll(degrees)];

    private void Fix(NoteName root, ScaleDegree degree, NoteName name) =>
        _fixed[PitchClass(root, degree)] = name;
}
