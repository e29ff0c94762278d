using System.Collections.Concurrent;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Looks a piece through for a player and a technique, and remembers the last answers.</summary>
internal sealed class PreparePiece(OpenPiece open, PreparingExercises exercises)
{
    private const int HardMoves = 10;
    private const int MostKept = 60;

    // Beyond this the smallest set is told as not proved.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);
    private readonly ConcurrentDictionary<string, PreparedPiece> _known = [];
    private readonly ConcurrentDictionary<(double Level, Technique), Outcome<PieceCollection>> _music = [];

    /// <summary>What is hard in it and what prepares it.</summary>
    /// <param name="key">Which piece.</param>
    /// <param name="player">For whom.</param>
    /// <param name="technique">Of piece and exercises; null for that of the piece.</param>
    /// <param name="stop">Gives up.</param>
    public async Task<Outcome<PreparedPiece>> Prepare(
        PieceKey key,
        Player player,
        Technique? technique,
        CancellationToken stop = default
    )
    {
        if (!(await open.Open(key, stop)).TryGet(out var opened, out var fault))
        {
            return fault;
        }

        var sources = await exercises.Read(stop);
        var picked = technique ?? opened.Line.Recipe.Picking.Technique;
        var asked = string.Create(
            CultureInfo.InvariantCulture,
            $"{key} {player.Level} {picked} {string.Join(' ', sources.Select(one => $"{one.Name}/{one.Version}"))}"
        );
        if (_known.TryGetValue(asked, out var known))
        {
            return known;
        }

        var answer = await Task.Run(() => Look(opened, player, picked, sources), stop);
        if (_known.Count >= MostKept)
            _known.Clear();

        return answer.Then<PreparedPiece>(prepared => _known[asked] = prepared);
    }

    private Outcome<PreparedPiece> Look(
        OpenedPiece opened,
        Player player,
        Technique technique,
        IReadOnlyList<PreparingExercises.Source> sources
    ) =>
        Piece
            .Of(opened.Title, Stroked(opened.Line, technique), player)
            .Then(piece =>
                Measurer
                    .Measure(piece.Line, player)
                    .Then(measured =>
                        MusicFor(player, technique)
                            .Then<PreparedPiece>(music =>
                                Answer(opened, measured, Played(piece, sources, player), music)
                            )
                    )
            );

    private static PreparedPiece Answer(
        OpenedPiece opened,
        Measurement measured,
        PlayedExercises played,
        PieceCollection music
    )
    {
        using var patience = new CancellationTokenSource(Patience);
        var piece = played.Piece;
        var preparation = Preparation.Of(piece, played.Exercises, music, patience.Token);
        var ones = preparation
            .Coverage.Where(each => each.Share > 0)
            .Select(each => (each.Exercise, One: played.One(each, preparation)))
            .ToList();
        return new PreparedPiece
        {
            Piece = opened,
            Measured = measured,
            Technique = piece.Line.Recipe.Picking.Technique,
            Hardest =
            [
                .. NotableMoves
                    .Hardest(piece, HardMoves)
                    .Select((notable, i) => PieceWords.Of(i + 1, notable, piece)),
            ],
            Helpers = [.. ones.Select(each => each.One)],
            Fewest =
            [
                .. ones.Where(each => preparation.Smallest.Exercises.Contains(each.Exercise))
                    .Select(each => each.One),
            ],
            Together = Together(preparation),
            LeftOut = [.. Chords(piece), .. played.LeftOut],
        };
    }

    private static string Together(Preparation preparation)
    {
        var set = preparation.Smallest;
        var proof = set.IsSmallest ? "no fewer will do" : "fewer may do: the search was cut short";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Together {100 * (preparation.Together ?? 0):0} of 100 moves, {set.Wanted - set.Missing.Length} of the {set.Wanted} usual kinds; {proof}."
        );
    }

    private static IEnumerable<string> Chords(Piece piece) =>
        piece.TonesLeftOut switch
        {
            0 => [],
            1 => ["one tone below the melody"],
            var tones => [string.Create(CultureInfo.InvariantCulture, $"{tones} tones below the melody")],
        };

    private static PlayedExercises Played(
        Piece piece,
        IReadOnlyList<PreparingExercises.Source> sources,
        Player player
    )
    {
        var played = new PlayedExercises(piece);
        foreach (var source in sources)
            played.Add(source, source.In(piece, player));

        return played;
    }

    private static Line Stroked(Line line, Technique technique) =>
        line.Recipe.Picking.Technique == technique
            ? line
            : line with
            {
                Recipe = RecipeChange.Picked(line.Recipe, line.Recipe.Picking with { Technique = technique }),
            };

    private Outcome<PieceCollection> MusicFor(Player player, Technique technique) =>
        _music.GetOrAdd((player.Level, technique), _ => PieceCollection.BuiltIn(player, technique));
}
