using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Tests.Hands;

namespace Passagework.Tests.Choosing.Measures;

/// <summary>Small repertoires for the tests of measures.</summary>
internal static class Music
{
    public static readonly Player Player = Player.At(2);

    private static readonly Lazy<PieceCollection> Loaded = new(() =>
        PieceCollection.BuiltIn(Player, Technique.Alternate).OrThrow()
    );

    public static PieceCollection BuiltIn => Loaded.Value;

    /// <summary>A repertoire whose only piece is the exercise that it is asked about.</summary>
    public static PieceCollection Nothing { get; } =
        Of(Lines.BoxUpAndDown).Without(Lines.Of(Lines.BoxUpAndDown));

    /// <summary>Pieces of places.</summary>
    public static PieceCollection Of(params string[] pieces) =>
        Try(pieces.Select(places => Lines.Of(places))).OrThrow();

    public static Outcome<PieceCollection> Try(IEnumerable<Line> pieces) =>
        PieceCollection.Of(
            pieces.Select((line, number) => ($"piece {number}", line)),
            Player,
            Technique.Alternate
        );

    /// <summary>The repertoire that a resample stands for, written out with its pieces repeated.</summary>
    public static PieceCollection Repeated(PieceCollection music, int resample) =>
        Try(LinesOf(music, resample)).OrThrow();

    /// <summary>Its lines.</summary>
    public static IEnumerable<Line> LinesOf(PieceCollection music, int resample) =>
        music.Pieces.SelectMany(
            (piece, number) => Enumerable.Repeat(piece.Line, music.Resamples.Times(resample, number))
        );
}
