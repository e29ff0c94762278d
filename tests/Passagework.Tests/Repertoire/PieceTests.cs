using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Repertoire;
using Passagework.Tests.Hands;
using Passagework.Theory;

namespace Passagework.Tests.Repertoire;

public class PieceTests
{
    private static readonly Player Player = Player.At(2);

    [Fact]
    public void A_piece_of_one_note_has_no_moves()
    {
        var piece = Played("6:5");

        Assert.Empty(piece.Moves);
        Assert.True(piece.Classes.IsEmpty);
        Assert.Empty(NotableMoves.Hardest(piece, 3));
    }

    [Fact]
    public void Moves_lead_from_note_to_note()
    {
        var piece = Played("6:5 6:8 5:5 5:7 4:5");

        Assert.Equal([1, 2, 3, 4], piece.Moves.Select(move => move.Note));
        Assert.Equal(["6:8", "5:5", "5:7", "4:5"], piece.Moves.Select(move => move.To.ToString()));
        Assert.Equal("bar 1, beat 2", piece.Moves[3].At.ToString());
    }

    [Fact]
    public void The_hardest_move_is_the_one_with_least_time_to_spare()
    {
        var piece = Played("6:5 6:6 6:5 6:6 6:5 1:17 1:18 1:17 1:18");

        var hardest = NotableMoves.Hardest(piece, 2)[0];

        Assert.Equal("6:5 to 1:17", $"{hardest.Move.From} to {hardest.Move.To}");
        Assert.Equal("bar 1, beat 9/4", hardest.Move.At.ToString());
        Assert.Equal(Limit.Fretting, hardest.Move.Hand);
        Assert.Equal(1, hardest.Times);
    }

    [Fact]
    public void After_a_long_note_the_same_move_is_easy()
    {
        var line = Lines.Of("6:5 6:6 6:5 6:6 6:5 1:17 1:18 1:17 1:18");
        var later = Fraction.Of(2);
        var late = line with
        {
            Notes =
            [
                .. line.Notes.Select(note =>
                    note.Index < 5 ? note : note with { Onset = note.Onset + later }
                ),
            ],
            End = line.End + later,
        };

        var hardest = NotableMoves.Hardest(Of(late), 20);

        Assert.Equal("1:17", hardest[^1].Move.To.ToString());
    }

    [Fact]
    public void The_hardest_moves_of_any_line_equal_a_plain_search() =>
        LineGen
            .Of(Technique.Alternate, 30)
            .Sample(
                line =>
                {
                    if (!Piece.Of("x", line, Player).TryGet(out var piece, out _))
                    {
                        return;
                    }

                    Assert.Equal(
                        Searched(piece),
                        NotableMoves.Hardest(piece, 4).Select(one => one.Move.Note)
                    );
                },
                iter: 200
            );

    [Fact]
    public void The_demand_is_the_one_that_the_measurement_prints()
    {
        var line = Lines.Of("6:5 h6:7 5:5 4:7 4:5 1:12");
        var demands = Measurer.Measure(line, Player).OrThrow().Demands;

        foreach (var move in Of(line).Moves)
        {
            var of = demands[move.Note];
            double?[] all = [of.FrettingMs, of.PickingMs, of.TogetherMs];
            Assert.Equal(all[(int)move.Hand], move.Milliseconds);
        }
    }

    [Fact]
    public void The_rarest_moves_are_those_that_the_other_music_lacks()
    {
        var piece = Played("6:5 6:8 5:5 5:7 1:12");

        var rarest = NotableMoves.Rarest(piece, Played("6:5 6:8 5:5 5:7 4:5 4:7").Classes, 4);

        Assert.Equal("1:12", rarest[0].Move.To.ToString());
        Assert.Equal(4, rarest.Length);
    }

    [Fact]
    public void Chords_give_their_highest_tone()
    {
        var line = Lines.Of("1:5 1:8");
        var chord = line with
        {
            Notes = [line.Notes[0] with { With = [Tone(2, 5), Tone(3, 5)] }, line.Notes[1]],
        };

        var piece = Of(chord);

        Assert.Equal(2, piece.TonesLeftOut);
        Assert.Equal(Of(line).Moves, piece.Moves);
        Assert.Equal(0, Of(line).TonesLeftOut);
    }

    [Fact]
    public void Music_that_no_hand_can_play_is_refused_with_the_notes()
    {
        var recipe = new Recipe { Fretting = new FrettingPlan { Locks = [new(0, Finger: 4, Position: 12)] } };

        Assert.False(Piece.Of("x", Lines.Of("6:5 6:8", recipe), Player).TryGet(out _, out var fault));
        Assert.NotEmpty(fault.ToString());
    }

    private static LineTone Tone(int stringNumber, int fret)
    {
        var place = Place.At(stringNumber, fret);
        var key = Fretboard.Standard.MidiAt(place);
        return new LineTone(place, key, SpelledPitch.At(RootNames.Usual(key, minor: true), key));
    }

    private static IEnumerable<int> Searched(Piece piece)
    {
        List<PieceMove> left = [.. piece.Moves];
        var found = new List<int>();
        while (left.Count > 0 && found.Count < 4)
        {
            var best = left[0];
            foreach (var move in left)
            {
                best = move.Load > best.Load ? move : best;
            }

            found.Add(best.Note);
            left.RemoveAll(move => move.Class == best.Class);
        }

        return found;
    }

    private static Piece Played(string places) => Of(Lines.Of(places));

    private static Piece Of(Line line) => Piece.Of("x", line, Player).OrThrow();
}
