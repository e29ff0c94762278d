using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;
using Passagework.Studio.Features.Pieces;
using Passagework.Tests.Architecture;

namespace Passagework.Studio.Tests.Features.Pieces;

public sealed class PreparePieceTests : IAsyncLifetime
{
    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Room.Open();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task The_page_tells_what_the_engine_finds()
    {
        var player = Player.At(2);
        var piece = Piece.Of("Corner Table", LineOf("corner-table"), player).OrThrow();
        var exercises = Library
            .Families.Select(family =>
                PreparingExercise
                    .Of(family, CandidateSource.OfFamily(family).OrThrow().Forms, piece, player)
                    .TryGet(out var one, out _)
                    ? one
                    : null
            )
            .OfType<PreparingExercise>()
            .ToList();
        var preparation = Preparation.Of(
            piece,
            exercises,
            PieceCollection.BuiltIn(player, Technique.Alternate).OrThrow(),
            Stop
        );

        var page = await Prepared("corner-table", 2);

        Assert.Equal(
            NotableMoves.Hardest(piece, 10).Select(move => (move.Move.Note, move.Move.Hand)),
            page.Hardest.Select(move => (move.Note, move.Hand))
        );
        Assert.Equal(
            preparation
                .Coverage.Where(each => each.Share > 0)
                .Select(each => (int)Math.Round(100 * each.Share!.Value)),
            page.Helpers.Select(one => one.Hundredths)
        );
        Assert.Equal(preparation.Smallest.Exercises.Length, page.Fewest.Count);
        Assert.StartsWith(
            $"Together {100 * preparation.Together:0} of 100 moves",
            page.Together,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task Whole_bars_are_those_of_which_every_move_is_held()
    {
        var page = await Prepared("corner-table", 2);
        var piece = Piece.Of("Corner Table", LineOf("corner-table"), Player.At(2)).OrThrow();
        var thirds = PreparingExercise
            .Of("thirds", CandidateSource.OfFamily("scale-thirds").OrThrow().Forms, piece, Player.At(2))
            .OrThrow();
        var held = Enumerable
            .Range(1, 16)
            .Where(bar =>
                piece.Moves.Any(move => move.At.Bar == bar)
                && piece
                    .Moves.Where(move => move.At.Bar == bar)
                    .All(move => thirds.Moves.CountOf(move.Class) > 0)
            );

        Assert.Equal(
            PieceWords.Bars(held.Select(bar => (long)bar)),
            page.Helpers.Single(one => one.Title == "Thirds through the scale").Whole
        );
    }

    [Theory]
    [InlineData(new long[] { }, "")]
    [InlineData(new long[] { 3 }, "bar 3")]
    [InlineData(new long[] { 3, 2, 3 }, "bars 2, 3")]
    [InlineData(new long[] { 1, 2, 3, 7, 9, 10 }, "bars 1 to 3, 7, 9, 10")]
    public void Bars_are_said_in_stretches(long[] bars, string words) =>
        Assert.Equal(words, PieceWords.Bars(bars));

    // Against the table that docs/repertoire.md prints and the engine's own tests hold.
    [Fact]
    public async Task The_list_tells_the_level_that_the_documentation_tells()
    {
        var page = await File.ReadAllLinesAsync(Path.Combine(Repository.Root, "docs", "repertoire.md"), Stop);
        var list = await _room.Feature<ListPieces>().List(Stop);

        Assert.Equal(23, list.BuiltIn.Count);
        foreach (var entry in list.BuiltIn)
        {
            var row = page.Single(line => line.StartsWith($"| {entry.Title} |", StringComparison.Ordinal));
            Assert.Equal(row.Split('|', StringSplitOptions.TrimEntries)[8], entry.From);
        }
    }

    [Fact]
    public async Task Every_built_in_piece_is_drawn_with_a_mark_for_each_hard_move()
    {
        foreach (var id in BuiltInPieces.Ids)
        {
            var page = await Prepared(id, 2);
            var drawn = PieceDrawing.Of(page).OrThrow();
            var marks = drawn
                .Systems.SelectMany(system =>
                    MarkedSystem.Of(system, drawn, page.Hardest).Split("<text class=\"number ").Skip(1)
                )
                .Select(text => text.Split("</text>")[0])
                .ToList();

            foreach (var move in page.Hardest)
                Assert.Single(marks, mark => mark.EndsWith($">{move.Number}", StringComparison.Ordinal));
        }
    }

    private async Task<PreparedPiece> Prepared(string id, double level) =>
        (
            await _room.Feature<PreparePiece>().Prepare(new PieceKey(id), Player.At(level), null, Stop)
        ).OrThrow();

    private static Line LineOf(string id) => BuiltInPieces.Lines.Single(piece => piece.Id == id).Line;
}
