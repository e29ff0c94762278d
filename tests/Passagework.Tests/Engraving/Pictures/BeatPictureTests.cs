using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Tests.Engraving.Pictures;

public sealed class BeatPictureTests
{
    [Fact]
    public void Ink_is_inside_the_picture_and_apart_for_the_whole_library()
    {
        var wrong = new List<string>();
        foreach (var (id, played) in Played.All)
        {
            var picture = BeatPicture
                .Draw(played.Line, new BeatOptions { Feels = BeatOptions.Plain })
                .OrThrow();
            var apart = picture.Marks.Where(mark =>
                mark.Kind is not ("own-feel" or "bar-rule" or "group-thread")
            );
            wrong.AddRange(
                InkBoxes
                    .Outside(picture.Marks, new Box(0, 0, picture.WidthMm, picture.HeightMm))
                    .Select(mark => $"{id}: {mark}")
            );
            wrong.AddRange(InkBoxes.Overlaps(apart).Select(pair => $"{id}: {pair}"));
            wrong.AddRange(InkBoxes.SharedNames(picture.Marks).Select(name => $"{id}: {name} twice"));
        }

        Assert.Empty(wrong);
    }

    // Groups of five in sixteenths: starts at pulses 0, 5, 10, 15, then 20, which is beat six (counted by hand).
    [Fact]
    public void Large_dots_stand_where_groups_start()
    {
        var picture = Draw("groups-of-five-up", new BeatOptions());

        Assert.Equal(
            "feel-4-start-0-0 feel-4-start-1-1 feel-4-start-2-2 feel-4-start-3-3",
            string.Join(' ', picture.Marks.Where(mark => mark.Kind == "group-start").Select(mark => mark.Id))
        );
        Assert.Equal(16, picture.Marks.Count(mark => mark.Kind == "group-note"));
        Assert.Single(picture.Marks, mark => mark.Kind == "group-home");
        Assert.Equal("1 2 3 4 1 2", Beats(picture));
    }

    [Fact]
    public void Rows_are_named_by_the_beats_of_the_metre()
    {
        var picture = Draw(
            "thumb-and-fingers-out-and-back",
            new BeatOptions { Feels = [new Feel(5, default)] }
        );

        Assert.Equal("1 2 1 2 1 2 1", Beats(picture));
        Assert.Equal(3, picture.Marks.Count(mark => mark.Kind == "bar-rule"));
    }

    [Fact]
    public void A_long_round_is_cut_and_says_so()
    {
        var options = new BeatOptions { Feels = [new Feel(5, default)], MostBeats = 4 };
        var picture = Draw("groups-of-seven-up", options);

        Assert.EndsWith(
            "Drawn are the first four beats of seven.",
            picture.Caption,
            StringComparison.Ordinal
        );
        Assert.Equal(3, picture.Marks.Count(mark => mark.Kind == "group-more"));
        Assert.DoesNotContain(picture.Marks, mark => mark.Kind == "group-home");
    }

    [Fact]
    public void Caption_says_when_the_groups_come_home()
    {
        Assert.Equal(
            "One line is one beat; a large dot starts a group, a ring is the first start on a beat again. "
                + "Notes to a beat below. With four notes to the beat, a group starts on a beat again after five beats, "
                + "on the first of a bar after five bars. Accents visit every part of the beat; "
                + "needs five bars to come home.",
            Draw("groups-of-five-up", new BeatOptions()).Caption
        );
    }

    [Fact]
    public void Description_covers_every_feel()
    {
        var options = new BeatOptions { Feels = [new Feel(2, default), new Feel(3, default)] };

        Assert.Equal(
            "Groups against the beat in 4/4; with two notes to the beat: back on a beat after five beats, on the first of "
                + "a bar after five bars; with three notes to the beat: back on a beat after five beats, on the first of a "
                + "bar after five bars.",
            Draw("groups-of-five-up", options).Description
        );
    }

    // Swung two thirds: the second of a pair stands at 4/3 of a pulse, 6.67 mm where pulses are 5 mm apart.
    [Fact]
    public void Swung_pulses_stand_late()
    {
        var picture = Draw("groups-of-five-up", new BeatOptions { Feels = [Feel.Usual[1]] });
        var row = picture
            .Marks.OfType<CircleMark>()
            .Where(mark => mark.Id.StartsWith("feel-2s-", StringComparison.Ordinal))
            .Take(2)
            .ToList();

        Assert.Equal(6.667, row[1].Centre.X - row[0].Centre.X, 3);
    }

    [Fact]
    public void Groups_of_unlike_lengths_make_one_round()
    {
        var line = WrittenLine("0 0 0 1 1");
        var picture = BeatPicture.Draw(line, new BeatOptions { Feels = [new Feel(4, default)] }).OrThrow();
        var starts = picture.Marks.Where(mark => mark.Kind == "group-start").Select(mark => mark.Id);

        Assert.Equal(
            "feel-4-start-0-0 feel-4-start-0-3 feel-4-start-1-1 feel-4-start-2-0 feel-4-start-2-2 feel-4-start-3-1 "
                + "feel-4-start-3-3 feel-4-start-4-2",
            string.Join(' ', starts)
        );
        Assert.Contains(
            "the round begins on a beat again after five beats",
            picture.Caption,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Groups_that_are_not_made_of_pulses_are_refused()
    {
        var line = WrittenLine("0 0 1", Fraction.Of(1, 12));

        Assert.False(BeatPicture.Draw(line, new BeatOptions()).TryGet(out _, out var fault));
        Assert.Equal("the groups last no whole number of pulses", fault!.What);
    }

    [Theory]
    [InlineData(0, 12)]
    [InlineData(9, 12)]
    [InlineData(4, 0)]
    public void Impossible_feels_are_refused(int notesPerBeat, int mostBeats)
    {
        var options = new BeatOptions { Feels = [new Feel(notesPerBeat, default)], MostBeats = mostBeats };

        Assert.False(BeatPicture.Draw(Played.Of("groups-of-five-up").Line, options).TryGet(out _, out _));
    }

    private static Line WrittenLine(string groups, Fraction? duration = null)
    {
        var entries = groups
            .Split(' ')
            .Select(group => new WrittenEntry
            {
                Place = Place.At(6, 5),
                Duration = duration ?? Fraction.Of(1, 16),
                Group = int.Parse(group, System.Globalization.CultureInfo.InvariantCulture),
            });
        return LineBuilder.Build(new Recipe { Written = new WrittenLine([.. entries]) }).OrThrow();
    }

    private static Figure Draw(string id, BeatOptions options) =>
        BeatPicture.Draw(Played.Of(id).Line, options).OrThrow();

    private static string Beats(Figure picture) =>
        string.Join(
            ' ',
            picture
                .Marks.OfType<TextMark>()
                .Where(mark => mark.Kind == "beat-number")
                .Select(mark => mark.Text)
        );
}
