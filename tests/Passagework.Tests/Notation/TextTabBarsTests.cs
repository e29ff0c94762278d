using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Tests.Notation;

public sealed class TextTabBarsTests
{
    private static readonly Realization Played = PlayedLines.Of(
        PlayedLines.Plain,
        PlayedLines
            .Entries("6:5 6:6 6:7 6:8 5:5 5:6 5:7 5:8 4:5 4:6 4:7 4:8", Fraction.Of(1, 4))
            .Select((entry, i) => entry with { Slur = i == 4 ? Slur.Slurred : Slur.None })
    );

    [Fact]
    public void Bars_are_written_alone() =>
        Assert.Equal(
            """

            Count   1 2 3 4
            Rhythm  q q q q
                 e|---------|
                 B|---------|
                 G|---------|
                 D|-5-6-7-8-|
                 A|---------|
                 E|---------|

            """,
            TextTab.WriteBars(Played, 3, 3, new TabWriting { Groups = false, Fingers = false })
        );

    [Fact]
    public void Several_bars_stand_side_by_side()
    {
        var text = TextTab.WriteBars(Played, 1, 2, new TabWriting { Groups = false });

        Assert.Contains("     E|-5-6-7-8-|---------|\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Meter", text, StringComparison.Ordinal);
    }

    // The note before it is not there to show what was slurred.
    [Fact]
    public void A_bar_may_begin_with_a_slurred_note() =>
        Assert.Contains("5-6-7-8-|", TextTab.WriteBars(Played, 2, 2), StringComparison.Ordinal);

    [Fact]
    public void A_pick_up_stands_in_the_first_bar()
    {
        var late = PlayedLines.Of(
            PlayedLines.Plain with
            {
                Rhythm = new RhythmPlan { StartOffset = Fraction.Of(3, 4) },
            },
            PlayedLines.Entries("6:5 6:6 6:7", Fraction.Of(1, 4))
        );

        Assert.Contains("E|-5-|", TextTab.WriteBars(late, 1, 1), StringComparison.Ordinal);
        Assert.Contains("E|-6-7-|", TextTab.WriteBars(late, 2, 2), StringComparison.Ordinal);
    }

    [Fact]
    public void Bars_that_are_not_there_are_empty() => Assert.Equal("", TextTab.WriteBars(Played, 4, 9));
}
