using System.Collections.Concurrent;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Rhythm;
using Passagework.Studio.Features.Shelf;

namespace Passagework.Studio.Features.Pieces;

/// <summary>What the list says of a piece; looked at once, for a piece does not change.</summary>
internal sealed class PieceFacts
{
    private const int MostKept = 500;
    private readonly ConcurrentDictionary<PieceKey, PieceEntry> _known = [];

    /// <summary>Its entry.</summary>
    public PieceEntry Of(OpenedPiece piece)
    {
        if (_known.TryGetValue(piece.Key, out var known))
        {
            return known;
        }

        if (_known.Count >= MostKept)
            _known.Clear();

        return _known.GetOrAdd(piece.Key, _ => Look(piece));
    }

    /// <summary>Bars that the melody reaches into.</summary>
    public static long BarsOf(Line line) => BarBeat.Of(line.Notes[^1].Onset, line.Recipe.Rhythm.Meter).Bar;

    private static PieceEntry Look(OpenedPiece piece)
    {
        var line = MelodyOf(piece.Line);
        var levels = new ReachedLevels(line);
        return new PieceEntry
        {
            Key = piece.Key,
            Title = piece.Title,
            Size = string.Create(
                CultureInfo.InvariantCulture,
                $"{line.Recipe.Rhythm.Meter}, {BarsOf(line)} bars, {line.Notes.Length} notes"
            ),
            Tempo = piece.TempoBpm is { } bpm
                ? bpm.ToString("0.##", CultureInfo.InvariantCulture) + " beats a minute"
                : "",
            From = levels.FirstThatReaches(piece.TempoBpm),
            FirstBar = levels.At(ReachedLevels.Middle) is { } measured
                ? ShelfPictures.FirstBar(measured.Realization)
                : "",
            IsDemo = piece.IsDemo,
            FileName = piece.FileName,
        };
    }

    /// <summary>The melody: of each chord its highest tone.</summary>
    public static Line MelodyOf(Line line) =>
        line with
        {
            Notes = [.. line.Notes.Select(note => note with { With = [] })],
        };
}
