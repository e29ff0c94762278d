using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>H and P of the tab: close over their slur, between two lines.</summary>
public sealed class TabLetterTests
{
    [Theory]
    [InlineData(7)]
    [InlineData(6)]
    [InlineData(9)]
    public void Letters_stand_in_the_space_over_their_slur(double staffMm)
    {
        var (wrong, seen) = (new List<string>(), 0);
        foreach (var (id, played) in Played.All)
        {
            var score = ScoreEngraver.Engrave(played, new ScoreOptions { StaffMm = staffMm }).OrThrow();
            foreach (var system in score.Systems)
            {
                var slurs = system.Marks.Where(mark =>
                    mark.Id.EndsWith("-tab-slur", StringComparison.Ordinal)
                );
                var bySlur = slurs.ToDictionary(mark => mark.Note!.Value, mark => MarkBox.Of(mark));
                foreach (var letter in system.Marks.Where(mark => mark.Kind == "slur-letter"))
                {
                    seen++;
                    var (box, slur) = (MarkBox.Of(letter), bySlur[letter.Note!.Value]);
                    // Not in the slur, and less than two thirds of a space of the tab over it.
                    if (slur.Top - box.Bottom is not (> 0 and < 1.75))
                    {
                        wrong.Add($"{id}: {letter.Id} stands {slur.Top - box.Bottom} mm over its slur");
                    }

                    wrong.AddRange(
                        system
                            .Marks.Where(mark => mark.Kind is "tab-line" or "tab-number")
                            .Where(mark => MarkBox.Of(mark).Overlaps(box))
                            .Select(mark => $"{id}: {letter.Id} on {mark.Id}")
                    );
                }
            }
        }

        Assert.Equal(96, seen);
        Assert.Empty(wrong);
    }

    // A bend's arrow crosses the lines over its note; the slur, and so its letter, begins beside it.
    [Theory]
    [InlineData(40)]
    [InlineData(70)]
    [InlineData(180)]
    public void Letters_stand_clear_of_bends(double widthMm)
    {
        var played = Played.Of("slurred-threes-up-and-down");
        var bends = Enumerable
            .Range(0, played.Notes.Length)
            .Select(note => new ScoreBend(note, Fraction.Of(2)));
        var score = ScoreEngraver
            .Engrave(played, new ScoreOptions { WidthMm = widthMm, Bends = [.. bends] })
            .OrThrow();

        Assert.Equal(20, score.Systems.Sum(system => system.Marks.Count(mark => mark.Kind == "slur-letter")));
        Assert.Empty(score.Systems.SelectMany(ScoreGeometry.Collisions));
    }
}
