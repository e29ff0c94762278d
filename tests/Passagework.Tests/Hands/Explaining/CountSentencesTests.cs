using Passagework.Exercises;
using Passagework.Hands.Explaining;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Hands.Explaining;

public class CountSentencesTests
{
    private static readonly GoldenFile Golden = new(
        "tests",
        "Passagework.Tests",
        "Hands",
        "Explaining",
        "Golden"
    );

    // The counts of the forty notes are those of the trade, counted by hand: 16 + 20 + 3 moves, 4 skips, no roll.
    [Fact]
    public void Counts_of_fives_are_told()
    {
        var sentences = CountSentences
            .Of(MoveExplanationTests.Measured("groups-of-five-up"))
            .Select(count => $"{count}")
            .ToList();

        Assert.Equal("16 moves on one string", sentences[0]);
        Assert.Equal("20 inside changes, 4 of them over a string", sentences[1]);
        Assert.Equal("3 outside changes", sentences[2]);
        Assert.Equal("0 rolls, shifts, slurs", sentences[3]);
    }

    [Fact]
    public void Counts_of_the_library_are_told_as_they_were_read_by_an_eye() =>
        Golden.Holds(
            "library-counts.txt",
            string.Concat(
                Library
                    .Families.Select(family => Library.OfFamily(family)[0].Id)
                    .Select(id =>
                    {
                        var measured = MoveExplanationTests.Measured(id);
                        var counts = CountSentences.Of(measured).Select(count => $"  {count}\n");
                        return $"{id}\n{string.Concat(counts)}  {LimitingMove.Of(measured)?.Sentence}\n";
                    })
            )
        );
}
