using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>Anchors of general use and use in music for a repertoire that a teacher brings, from a sample of the cells.</summary>
/// <example>
/// <c>Anchors.BuiltIn.With(AnchorSample.Of(music, Player.At(2), Technique.Alternate))</c>
/// </example>
public static class AnchorSample
{
    /// <summary>Cells drawn of each length.</summary>
    public const int CellsALength = 200;

    private const string How =
        "10th and 90th percentile against the repertoire brought, every length with equal weight";

    private const string CellWords =
        "a seeded sample of 200 cells of each length from 3 to 8 notes: box 1, A minor pentatonic, step 1, reach 3, up and down, mean of both first strokes";

    /// <summary>
    /// The two anchors. Empty where nothing can be measured; where both ends coincide the upper one is moved up by a thousandth,
    /// so that the criterion still tells a cell above from the rest.
    /// </summary>
    /// <param name="music">Planned for the same player and technique.</param>
    /// <param name="player">For whom; the shipped anchors are those of an intermediate player.</param>
    /// <param name="technique">How it is picked; the shipped anchors are those of alternate picking.</param>
    public static ImmutableArray<Anchor> Of(PieceCollection music, Player player, Technique technique) =>
        [
            .. Sampled(music, player, technique)
                .Where(anchor => anchor.Criterion is "general-use" or "use-in-music"),
        ];

    internal static IEnumerable<Anchor> Sampled(PieceCollection music, Player player, Technique technique)
    {
        var cells = new AnchorCells(new CellJudge(player, music), technique);
        var lengths = Enumerable
            .Range(CellSpace.Shortest, CellSpace.Longest - CellSpace.Shortest + 1)
            .Select(length =>
            {
                var space = cells.Space(length);
                var path = LayoutPlanner.Lay(space.Layouts[0], space.Notes, space.Instrument).OrThrow();
                return cells.Measure(length, AnchorCells.Drawn(space, CellsALength, path.Length));
            })
            .ToList();
        for (var criterion = 0; criterion < CellTake.Measures; criterion++)
        {
            var (low, high) = AnchorCells.Percentiles(lengths.ConvertAll(values => values[criterion]));
            if (!double.IsNaN(low) && !double.IsNaN(high))
            {
                var id = RawMeasures.Criteria[criterion];
                yield return new Anchor(id, low, Math.Max(high, low + 0.001), How, CellWords, IsExact: false);
            }
        }
    }
}
