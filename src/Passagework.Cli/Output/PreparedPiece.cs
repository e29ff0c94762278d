using Passagework.Repertoire;
using Passagework.Rhythm;

namespace Passagework.Cli.Output;

/// <summary>All that is to be said about preparing a piece.</summary>
/// <param name="Source">The piece as it was read.</param>
/// <param name="Player">For whom.</param>
/// <param name="With">The exercises.</param>
/// <param name="Preparation">What came out.</param>
internal sealed record PreparedPiece(
    PieceSource Source,
    PlayerSource Player,
    PreparingSource With,
    Preparation Preparation
)
{
    /// <summary>What was guessed or left out in reading, planning or laying out.</summary>
    public IReadOnlyList<string> Remarks =>
        [
            .. Source.Remarks,
            .. Preparation.Piece.TonesLeftOut switch
            {
                0 => (string[])[],
                1 => ["1 tone below the melody left out"],
                var tones => [Words.Text($"{tones} tones below the melody left out")],
            },
        ];

    /// <summary>Bars that the melody reaches into.</summary>
    public long Bars
    {
        get
        {
            var line = Preparation.Piece.Line;
            return BarBeat.Of(line.Notes[^1].Onset, line.Recipe.Rhythm.Meter).Bar;
        }
    }

    /// <summary>The tempo that is written; null where none is.</summary>
    public double? TempoBpm => Preparation.Piece.Line.Recipe.Rhythm.TempoBpm;

    /// <summary>The time there is for a move at the written tempo, ms; null without one.</summary>
    public double? MillisecondsFor(PieceMove move) =>
        TempoBpm is { } bpm ? move.Pulses * 60_000 / (bpm * NotesPerBeat) : null;

    /// <summary>The tempo up to which there is time for a move; null where it asks nothing.</summary>
    public double? InTimeUpTo(PieceMove move) => move.Load > 0 ? 60 / (move.Load * NotesPerBeat) : null;

    private int NotesPerBeat => Preparation.Piece.Line.Recipe.Rhythm.NotesPerBeat;
}
