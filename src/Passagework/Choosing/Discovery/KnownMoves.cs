using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>The moves between the places of a path that the repertoire knows, by number, and how often it makes each.</summary>
internal sealed class KnownMoves
{
    /// <summary>Moves between two places: 5 × 5 fingers, 2 × 2 strokes.</summary>
    public const int PerPair = Fingers * Fingers * 4;

    /// <summary>Fingers, the open string with them.</summary>
    public const int Fingers = 5;

    /// <summary>A move that the repertoire never makes.</summary>
    public const int Unknown = -1;

    private static readonly MoveAction[] Actions = [MoveAction.Down, MoveAction.Up];

    public KnownMoves(PathPlaces path, Distribution<MoveClass>? music)
    {
        var repertoire = music ?? Distribution<MoveClass>.Of([]);
        Total = repertoire.Total;
        Masses = [.. repertoire.Classes.Select(repertoire.CountOf)];
        var numbers = repertoire.Classes.Select((move, number) => (move, number)).ToDictionary();
        Numbers = new int[path.Count * path.Count * PerPair];
        for (var at = 0; at < Numbers.Length; at++)
        {
            var (from, to) = (path.Places[at / PerPair / path.Count], path.Places[at / PerPair % path.Count]);
            var move = new MoveClass(
                to.String - from.String,
                to.Fret - from.Fret,
                at / 4 / Fingers % Fingers,
                at / 4 % Fingers,
                Actions[at / 2 % 2],
                Actions[at % 2]
            );
            Numbers[at] = numbers.GetValueOrDefault(move, Unknown);
        }
    }

    /// <summary>The number of each move: ((from × places + to) × 100) + finger from × 20 + finger to × 4 + stroke from × 2 + stroke to.</summary>
    public int[] Numbers { get; }

    /// <summary>How often the repertoire makes each.</summary>
    public int[] Masses { get; }

    /// <summary>All moves of the repertoire.</summary>
    public long Total { get; }
}
