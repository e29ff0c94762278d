using Passagework.Exercises.Ideas;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>What a room has settled once: how things are called and counted, where plans start and aim.</summary>
/// <remarks>It changes what is shown and printed, never a recipe or a file. The default value is ours in everything.</remarks>
public readonly record struct RoomStyle
{
    /// <summary>How boxes are numbered.</summary>
    public BoxNumbering Boxes { get; init; }

    /// <summary>How notes are named.</summary>
    public NoteNaming Notes { get; init; }

    /// <summary>What is said when counting.</summary>
    public Counting Counting { get; init; }

    /// <summary>Where practice plans start and aim.</summary>
    public PlanShares Plan { get; init; }

    /// <summary>A note's name as the room says it, such as <c>B♭</c>.</summary>
    public string Of(NoteName name) => PrintedNames.Of(name, Notes);

    /// <summary>The same with its octave.</summary>
    public string Of(SpelledPitch pitch) => PrintedNames.Of(pitch, Notes);

    /// <summary>A tuning: its name, or its notes from the lowest string.</summary>
    public string Of(Tuning tuning) =>
        tuning.Name
        ?? Enumerable.Range(1, tuning.StringCount).Reverse().Select(tuning.Open).Select(Of).Join(" ");

    /// <summary>The room's number of a box of a note set, as text.</summary>
    internal string Box(int number, NoteSet? notes) =>
        AxisText.Of(Boxes.Shown(number, notes?.Semitones.Length ?? 1));
}
