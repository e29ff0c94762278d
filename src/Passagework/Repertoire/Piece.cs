using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Repertoire;

/// <summary>Music that a student wants to play: its melody, fingered and stroked for one player.</summary>
/// <example>
/// <c>Piece.Of("Corner Table", line, Player.At(2))</c>
/// </example>
public sealed class Piece
{
    private Piece(string name, PlannedLine planned, Player player, int tonesLeftOut)
    {
        Name = name;
        TonesLeftOut = tonesLeftOut;
        Realization = planned.Realization;
        Moves = PieceMove.AllOf(planned, Realization, player);
        Classes = Distribution<MoveClass>.Of(Moves.Select(move => move.Class));
    }

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>The melody as it is played.</summary>
    public Realization Realization { get; }

    /// <summary>Its notes with their times.</summary>
    public Line Line => Realization.Line;

    /// <summary>The moves from note to note, in order; none in a piece of one note.</summary>
    public ImmutableArray<PieceMove> Moves { get; }

    /// <summary>How often each kind of move occurs.</summary>
    public Distribution<MoveClass> Classes { get; }

    /// <summary>Tones of chords below the melody, which were left out.</summary>
    public int TonesLeftOut { get; }

    /// <summary>Takes the melody of a line (the highest tone of each chord) and plans both hands; refused when no hand can play it.</summary>
    public static Outcome<Piece> Of(string name, Line line, Player player)
    {
        var leftOut = line.Notes.Sum(note => note.With.Length);
        var melody =
            leftOut == 0
                ? line
                : line with
                {
                    Notes = [.. line.Notes.Select(note => note with { With = [] })],
                };
        return Realizer
            .Plan(melody, player)
            .Then<Piece>(planned => new Piece(name, planned, player, leftOut));
    }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
