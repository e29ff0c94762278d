using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>What is said when counting, in each way that a room may count.</summary>
public sealed class ScoreCountTests
{
    [Theory]
    [InlineData("groups-of-five-up", Counting.TripLet, "1 e & a 2 e & a")]
    [InlineData("groups-of-five-up", Counting.LaLi, "1 ti te ta 2 ti te ta")]
    [InlineData("groups-of-five-up", Counting.TaKa, "ta ka di mi ta ka di mi")]
    [InlineData("groups-of-five-up", Counting.BeatsOnly, "1 2 3 4")]
    [InlineData("groups-of-three-up", Counting.TripLet, "1 trip let 2 trip let")]
    [InlineData("groups-of-three-up", Counting.LaLi, "1 la li 2 la li")]
    [InlineData("groups-of-three-up", Counting.TaKa, "ta ki da ta ki da")]
    public void The_counting_of_the_room_stands_under_the_first_bar(
        string id,
        Counting counting,
        string expected
    )
    {
        var options = new ScoreOptions { Syllables = CountSyllables.Of(counting) };
        var score = ScoreEngraver.Engrave(Played.Of(id), options).OrThrow();
        var counts = score.Systems.SelectMany(system => system.Marks).Where(mark => mark.Kind == "count");

        Assert.StartsWith(
            expected,
            string.Join(' ', counts.OfType<TextMark>().Select(mark => mark.Text)),
            StringComparison.Ordinal
        );
    }
}
