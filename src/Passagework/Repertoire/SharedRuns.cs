using Passagework.Exercises;

namespace Passagework.Repertoire;

/// <summary>Tells music that holds an exercise itself from music that has some of its figures.</summary>
/// <remarks>
/// The rule, assumed: a piece holds the exercise when a third or more of its notes stand in runs of eight or more notes that are in the
/// exercise too, in any key, with the same intervals and the same coarse rhythm. Eight notes are longer than any figure
/// that is counted; a third of a piece is no passing run. The exercise exported, played twice, inside a frame of other notes or with
/// rests between its groups is found; a scale run in a solo is not.
/// </remarks>
internal sealed class SharedRuns
{
    /// <summary>Why such a piece is left out.</summary>
    public const string Why = "it holds the exercise itself";

    private const int FewestNotes = 8;
    private const int PieceParts = 3;
    private readonly HashSet<CellShape> _runs;

    public SharedRuns(Line exercise) => _runs = [.. Of(exercise)];

    /// <summary>The runs of eight notes that begin at each note of a line.</summary>
    public static CellShape[] Of(Line line)
    {
        var melody = new Melody(line);
        return
        [
            .. Enumerable
                .Range(0, Math.Max(0, melody.Count - FewestNotes + 1))
                .Select(start => melody.Shape(start, FewestNotes)),
        ];
    }

    /// <summary>Whether a piece of these runs holds the exercise.</summary>
    public bool MakeUp(ReadOnlySpan<CellShape> piece)
    {
        var (shared, counted) = (0, 0);
        for (var start = 0; start < piece.Length; start++)
        {
            if (_runs.Contains(piece[start]))
            {
                // Runs overlap: only what lies beyond the last one is new.
                shared += start + FewestNotes - Math.Max(start, counted);
                counted = start + FewestNotes;
            }
        }

        return shared > 0 && shared * PieceParts >= piece.Length + FewestNotes - 1;
    }
}
