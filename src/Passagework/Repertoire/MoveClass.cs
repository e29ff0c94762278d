using System.Globalization;
using Passagework.Exercises;

namespace Passagework.Repertoire;

/// <summary>A kind of move from one note to the next: what the hands do, wherever on the neck it is done.</summary>
/// <param name="Strings">String number of the second note less that of the first; −1 is one string thinner.</param>
/// <param name="Frets">Fret of the second note less that of the first.</param>
/// <param name="FromFinger">Fretting finger of the first note, 0 for an open string.</param>
/// <param name="ToFinger">Fretting finger of the second.</param>
/// <param name="From">How the first note is sounded.</param>
/// <param name="To">How the second is sounded.</param>
/// <remarks>The default is a repeated open string, however it is sounded.</remarks>
public readonly record struct MoveClass(
    int Strings,
    int Frets,
    int FromFinger,
    int ToFinger,
    MoveAction From,
    MoveAction To
) : IComparable<MoveClass>
{
    /// <summary>The same for the fretting hand, whatever the picking hand does.</summary>
    public MoveClass WithoutStrokes => this with { From = MoveAction.Any, To = MoveAction.Any };

    /// <summary>The moves of what is played, in order: one fewer than its notes. Of a chord the highest tone counts.</summary>
    public static IEnumerable<MoveClass> In(Realization realization)
    {
        var notes = realization.Notes;
        var from = MoveActions.Of(notes[0], null);
        for (var i = 1; i < notes.Length; i++)
        {
            var to = MoveActions.Of(notes[i], notes[i - 1]);
            yield return new MoveClass(
                notes[i].Place.String - notes[i - 1].Place.String,
                notes[i].Place.Fret - notes[i - 1].Place.Fret,
                notes[i - 1].Finger,
                notes[i].Finger,
                from,
                to
            );
            from = to;
        }
    }

    /// <summary>A fixed order without musical meaning.</summary>
    public int CompareTo(MoveClass other) =>
        (Strings, Frets, FromFinger, ToFinger, (int)From, (int)To).CompareTo(
            (other.Strings, other.Frets, other.FromFinger, other.ToFinger, (int)other.From, (int)other.To)
        );

    /// <summary>Such as <c>(-1,-2,3&gt;1,UD)</c>.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"({Strings},{Frets},{FromFinger}>{ToFinger},{MoveActions.Sign(From)}{MoveActions.Sign(To)})"
        );

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator <(MoveClass a, MoveClass b) => a.CompareTo(b) < 0;

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator >(MoveClass a, MoveClass b) => a.CompareTo(b) > 0;

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator <=(MoveClass a, MoveClass b) => a.CompareTo(b) <= 0;

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator >=(MoveClass a, MoveClass b) => a.CompareTo(b) >= 0;
}
