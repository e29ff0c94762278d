using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>All that is worked out once for a layout: hands at three levels, strokes, known moves, intervals.</summary>
internal sealed class PathTables
{
    private PathTables(PathPlaces path, HandTable[] hands) => (Path, Hands) = (path, hands);

    /// <summary>The places.</summary>
    public PathPlaces Path { get; }

    /// <summary>The fretting hand: beginner, the student, expert.</summary>
    public HandTable[] Hands { get; }

    /// <summary>The strokes for each first stroke.</summary>
    public required StrokeTable[] Strokes { get; init; }

    /// <summary>Moves that the repertoire knows.</summary>
    public required KnownMoves Moves { get; init; }

    /// <summary>Figures that the repertoire holds.</summary>
    public required FigureTree Figures { get; init; }

    /// <summary>Shape (places, places): the number of the interval in the tree of figures.</summary>
    public required int[] Intervals { get; init; }

    /// <summary>Effective fingers of the plain scale in the same layout.</summary>
    public required double ScaleFingers { get; init; }

    /// <summary>Whether use in music can be measured.</summary>
    public required bool HasMusic { get; init; }

    /// <summary>
    /// The tables of a layout; null where tables can't do it: the technique leaves a choice or strikes not every note, the
    /// path is very long, or a note has no way to be fretted.
    /// </summary>
    public static PathTables? Of(CellSpace space, PathPlaces path, Layout layout, CellJudge who)
    {
        var known = StrokeTable.Knows(space.Picking.Technique) && path.Count <= HandTable.MostPlaces;
        if (!known || path.Length < 2)
        {
            return null;
        }

        var plain = LineBuilder.Build(space.PlainOf(layout)).OrThrow();
        var hands = new List<HandTable>();
        foreach (var player in who.Levels)
        {
            if (!HandTable.Of(path, plain, player).TryGet(out var hand, out _))
            {
                return null;
            }

            hands.Add(hand);
        }

        return new PathTables(path, [.. hands])
        {
            Strokes = [.. space.StrokesTold.Select(first => StrokeTable.Of(space, first, who.Levels))],
            Moves = new KnownMoves(path, who.Music?.Moves),
            Figures = who.Figures,
            Intervals = IntervalsOf(path, who.Figures),
            ScaleFingers = ScaleReference.For(plain.Recipe, who.Player).EffectiveFingers,
            HasMusic = who.Music is not null,
        };
    }

    private static int[] IntervalsOf(PathPlaces path, FigureTree figures) =>
        [.. path.Keys.SelectMany(from => path.Keys.Select(to => figures.IntervalNumber(to - from)))];
}
