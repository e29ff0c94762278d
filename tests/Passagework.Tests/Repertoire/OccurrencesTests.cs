using CsCheck;
using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class OccurrencesTests
{
    [Fact]
    public void A_group_is_found_in_another_key_with_bar_and_beat()
    {
        var found = Occurrences.Of(
            Tunes.Of("60 62 64 | 62 64 65"),
            Tunes.Of("70 70 70 70 70 70 70 70 70 67 69 71 70")
        );

        Assert.Equal([new Occurrence(9, 3, found[0].At, 7)], found);
        Assert.Equal("bar 2, beat 3/2", found[0].At.ToString());
    }

    [Fact]
    public void The_key_is_counted_from_where_the_figure_first_occurs() =>
        Assert.Equal(
            [5, 7],
            Occurrences
                .Of(Tunes.Of("60 62 64 | 65 67 69"), Tunes.Of("65 67 69 67 69 71"))
                .Select(one => one.Transposed)
        );

    [Fact]
    public void Another_rhythm_is_another_figure() =>
        Assert.Empty(Occurrences.Of(Tunes.Of("60 62 64"), Tunes.Of("60 62*2 64")));

    [Fact]
    public void Nothing_is_found_over_a_rest() =>
        Assert.Empty(Occurrences.Of(Tunes.Of("60 62 64"), Tunes.Of("60 62 r*2 64")));

    [Fact]
    public void The_longest_figure_at_a_note_counts() =>
        Assert.Equal(
            [4],
            Occurrences
                .Of(Tunes.Of("60 62 64 | 60 62 64 60"), Tunes.Of("50 52 54 50"))
                .Select(one => one.Notes)
        );

    [Fact]
    public void A_line_without_groups_of_three_is_searched_by_runs_of_six()
    {
        var scale = Tunes.Of("60 | 62 | 64 | 65 | 67 | 69 | 71");

        Assert.Equal([0], Occurrences.Of(scale, Tunes.Of("72 74 76 77 79 81 80")).Select(one => one.Note));
        Assert.Empty(Occurrences.Of(scale, Tunes.Of("72 74 76 77 79")));
    }

    [Fact]
    public void Long_groups_are_found_by_their_first_twelve_notes()
    {
        var run = string.Join(' ', Enumerable.Range(40, 14));

        Assert.Equal(
            [(0, 12), (1, 12), (2, 12)],
            Occurrences.Of(Tunes.Of(run), Tunes.Of(run)).Select(one => (one.Note, one.Notes))
        );
    }

    [Fact]
    public void Finds_equal_a_plain_search() =>
        Gen.Select(Tunes.Any, Tunes.Any, Gen.Int[3, 5])
            .Sample(
                (exercise, piece, length) =>
                {
                    var grouped = exercise with
                    {
                        Notes = [.. exercise.Notes.Select(note => note with { Group = note.Index / length })],
                    };
                    var melody = new Melody(grouped);
                    var starts = Enumerable
                        .Range(0, grouped.Notes.Length / length)
                        .Select(group => group * length)
                        .Where(start => melody.Holds(start, length))
                        .ToList();
                    if (starts.Count == 0 || grouped.Notes.Length % length != 0)
                    {
                        return;
                    }

                    var there = new Melody(piece);
                    var expected = Enumerable
                        .Range(0, there.Count)
                        .Where(note =>
                            there.Holds(note, length)
                            && starts.Exists(start =>
                                melody.Shape(start, length) == there.Shape(note, length)
                            )
                        );
                    Assert.Equal(expected, Occurrences.Of(grouped, piece).Select(one => one.Note));
                }
            );
}
