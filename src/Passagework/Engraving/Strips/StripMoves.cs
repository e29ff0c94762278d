using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Engraving.Strips;

/// <summary>The signs of the move that leads to a note.</summary>
internal readonly record struct StripMove(MoveSign? Fretting, MoveSign? Picking)
{
    public IEnumerable<MoveKind> Kinds() =>
        new[] { Fretting, Picking }.OfType<MoveSign>().Select(sign => sign.Kind);
}

/// <summary>Finds the signs of all moves.</summary>
internal static class StripMoves
{
    /// <summary>One for each note; the first has none.</summary>
    public static ImmutableArray<StripMove> Of(Realization played)
    {
        var moves = ImmutableArray.CreateBuilder<StripMove>(played.Notes.Length);
        PlayedNote? struck = null;
        for (var i = 0; i < played.Notes.Length; i++)
        {
            var note = played.Notes[i];
            var isStruck = note.Stroke != Stroke.None;
            moves.Add(
                new StripMove(
                    i == 0 ? null : MoveSign.Fretting(played.Notes[i - 1], note),
                    isStruck && struck is not null ? MoveSign.Picking(struck, note) : null
                )
            );
            struck = isStruck ? note : struck;
        }

        return moves.MoveToImmutable();
    }
}
