using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>For whom and against which music cells are measured.</summary>
internal sealed class CellJudge
{
    /// <summary>The place of the student among the levels.</summary>
    public const int Own = 1;

    /// <summary>A judge.</summary>
    /// <param name="player">The student.</param>
    /// <param name="music">The repertoire in force, planned for the same student and technique; null when there is none.</param>
    public CellJudge(Player player, PieceCollection? music)
    {
        (Player, Music) = (player, music is { Count: > 0 } ? music : null);
        Levels = [player.MovedTo(0), player, player.MovedTo(Player.LevelNames.Length - 1)];
        var figures = Music?.Pieces.SelectMany(piece => Cells.In(piece.Line).Classes).Distinct();
        Figures = new FigureTree(figures ?? [], TermOf);
    }

    /// <summary>The student.</summary>
    public Player Player { get; }

    /// <summary>The repertoire in force; null when there is none.</summary>
    public PieceCollection? Music { get; }

    /// <summary>The student's hands as a beginner's, their own, and an expert's.</summary>
    public Player[] Levels { get; }

    /// <summary>What the repertoire's figures add to use in music.</summary>
    public FigureTree Figures { get; }

    /// <summary>What a figure adds to use in music: the lower bound of the share of pieces that hold it, if more than by chance.</summary>
    public double TermOf(CellShape shape) =>
        Music is { } music && music.Solos.BeatsChance(shape)
            ? Wilson.Of(music.Solos.Holding(shape), music.Count).Low
            : 0;
}
