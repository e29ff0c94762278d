using System.Collections;
using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Repertoire;

/// <summary>A piece that takes no part.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Why">The reason, a phrase without a full stop.</param>
public sealed record LeftOutPiece(string Name, string Why);

/// <summary>The music against which exercises are judged: pieces played by one player with one technique.</summary>
/// <example>
/// <c>PieceCollection.BuiltIn(Player.At(2), Technique.Alternate)</c>
/// </example>
public sealed class PieceCollection : IReadOnlyCollection<Piece>
{
    private readonly ImmutableArray<KnownPiece> _all;
    private readonly ImmutableArray<bool> _kept;

    private PieceCollection(
        ImmutableArray<KnownPiece> all,
        ImmutableArray<bool> kept,
        ImmutableArray<LeftOutPiece> leftOut
    )
    {
        (_all, _kept) = (all, kept);
        Pieces = [.. all.Where((_, number) => kept[number]).Select(known => known.Piece)];
        LeftOut = leftOut;
        Moves = Distribution<MoveClass>.Together(Pieces.Select(piece => piece.Classes));
        Solos = new SoloSet(Pieces.Select(piece => piece.Line));
        Resamples = PieceResamples.Of(kept.AsSpan());
    }

    /// <summary>The pieces that take part, in the order given.</summary>
    public ImmutableArray<Piece> Pieces { get; }

    /// <summary>How many of them there are.</summary>
    public int Count => Pieces.Length;

    /// <summary>Those that do not, and why.</summary>
    public ImmutableArray<LeftOutPiece> LeftOut { get; }

    /// <summary>The moves of all pieces in one: a longer piece weighs more.</summary>
    public Distribution<MoveClass> Moves { get; }

    /// <summary>Their melodies, in the order of the pieces, for figures to be looked up in.</summary>
    public SoloSet Solos { get; }

    /// <summary>The same pieces drawn anew 200 times, for the error of what is counted in them.</summary>
    public PieceResamples Resamples { get; }

    /// <summary>
    /// Plans every piece for a player, stroked by one technique with a down-stroke first, whatever technique it is written for;
    /// written slurs, fingers and strings stay, written strokes do not. What has no melody or can't be played is left out.
    /// </summary>
    /// <param name="music">Names and melodies, or why a melody could not be read.</param>
    /// <param name="player">Whose hands play.</param>
    /// <param name="technique">How all of it is stroked.</param>
    /// <returns>A fault when nothing is left.</returns>
    public static Outcome<PieceCollection> Of(
        IEnumerable<(string Name, Outcome<Line> Line)> music,
        Player player,
        Technique technique
    )
    {
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        var leftOut = ImmutableArray.CreateBuilder<LeftOutPiece>();
        foreach (var (name, line) in music)
        {
            var planned = line.Then(read => Planned(name, read, player, technique));
            if (planned.TryGet(out var piece, out var fault))
            {
                pieces.Add(piece);
            }
            else
            {
                leftOut.Add(new LeftOutPiece(name, fault.ToString()));
            }
        }

        return pieces.Count == 0
            ? Nothing(leftOut)
            : new PieceCollection(
                [.. pieces.Select(piece => new KnownPiece(piece, SharedRuns.Of(piece.Line)))],
                [.. pieces.Select(_ => true)],
                leftOut.ToImmutable()
            );
    }

    /// <inheritdoc cref="Of(IEnumerable{ValueTuple{string, Outcome{Line}}}, Player, Technique)"/>
    public static Outcome<PieceCollection> Of(
        IEnumerable<(string Name, Line Line)> music,
        Player player,
        Technique technique
    ) => Of(music.Select(piece => (piece.Name, (Outcome<Line>)piece.Line)), player, technique);

    /// <summary>The built-in repertoire, see <c>docs/repertoire.md</c>.</summary>
    public static Outcome<PieceCollection> BuiltIn(Player player, Technique technique) =>
        Of(
            BuiltInPieces.Lines.Select(piece => (piece.Line.Recipe.Title ?? piece.Id, piece.Line)),
            player,
            technique
        );

    /// <summary>
    /// The same without the pieces that hold an exercise itself, which would speak for it whatever it is worth (see
    /// <see cref="SharedRuns"/>); this collection when there is none. All may be gone.
    /// </summary>
    public PieceCollection Without(Line exercise)
    {
        var runs = new SharedRuns(exercise);
        ImmutableArray<bool> kept =
        [
            .. _all.Select((known, number) => _kept[number] && !runs.MakeUp(known.Runs)),
        ];
        var gone = _all.Where((_, number) => _kept[number] && !kept[number]).ToList();
        return gone.Count == 0
            ? this
            : new PieceCollection(
                _all,
                kept,
                LeftOut.AddRange(gone.Select(known => new LeftOutPiece(known.Piece.Name, SharedRuns.Why)))
            );
    }

    /// <inheritdoc/>
    public IEnumerator<Piece> GetEnumerator() => ((IEnumerable<Piece>)Pieces).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private static Outcome<Piece> Planned(string name, Line line, Player player, Technique technique)
    {
        if (line.Notes.Length == 1)
        {
            return new Fault("one note is no melody");
        }

        var plan = line.Recipe.Picking with { Technique = technique, First = FirstStroke.Down };
        return Piece.Of(name, line with { Recipe = RecipeChange.Picked(line.Recipe, plan) }, player);
    }

    private static Fault Nothing(ImmutableArray<LeftOutPiece>.Builder leftOut) =>
        leftOut.Count == 0
            ? new Fault("there is no piece")
            : new Fault(
                $"none of the pieces can be used ({leftOut.Count} left out)",
                leftOut[0].Name,
                leftOut[0].Why
            );

    private sealed record KnownPiece(Piece Piece, CellShape[] Runs);
}
