using CsCheck;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class FeelTests
{
    // Grades in eighths, swung eighths, triplets, sixteenths, swung sixteenths, quintuplets, sextuplets.
    [Theory]
    [InlineData("4/4", 1, 3, "0030002", 2, 5)]
    [InlineData("4/4", 1, 4, "3313311", 7, 15)]
    [InlineData("4/4", 1, 5, "0000030", 1, 3)]
    [InlineData("4/4", 1, 6, "0030003", 2, 6)]
    [InlineData("4/4", 1, 7, "0000000", 0, 0)]
    [InlineData("4/4", 2, 3, "0030002", 2, 5)]
    [InlineData("4/4", 2, 4, "3313311", 7, 15)]
    [InlineData("4/4", 2, 5, "0000030", 1, 3)]
    [InlineData("4/4", 2, 6, "0030003", 2, 6)]
    [InlineData("4/4", 2, 7, "0000000", 0, 0)]
    [InlineData("4/4", 4, 3, "1131112", 7, 10)]
    [InlineData("4/4", 4, 4, "3313311", 7, 15)]
    [InlineData("4/4", 4, 5, "0000030", 1, 3)]
    [InlineData("4/4", 4, 6, "3331113", 7, 15)]
    [InlineData("4/4", 4, 7, "0000000", 0, 0)]
    [InlineData("4/4", 8, 3, "1131112", 7, 10)]
    [InlineData("4/4", 8, 4, "3313311", 7, 15)]
    [InlineData("4/4", 8, 5, "1111131", 7, 9)]
    [InlineData("4/4", 8, 6, "3331113", 7, 15)]
    [InlineData("4/4", 8, 7, "1111111", 7, 7)]
    [InlineData("3/4", 1, 3, "1131112", 7, 10)]
    [InlineData("3/4", 1, 4, "0003300", 2, 6)]
    [InlineData("3/4", 1, 5, "0000030", 1, 3)]
    [InlineData("3/4", 1, 6, "3301103", 5, 11)]
    [InlineData("3/4", 1, 7, "0000000", 0, 0)]
    [InlineData("3/4", 2, 3, "1131112", 7, 10)]
    [InlineData("3/4", 2, 4, "3303301", 5, 13)]
    [InlineData("3/4", 2, 5, "0000030", 1, 3)]
    [InlineData("3/4", 2, 6, "3331113", 7, 15)]
    [InlineData("3/4", 2, 7, "0000000", 0, 0)]
    [InlineData("3/4", 4, 3, "1131112", 7, 10)]
    [InlineData("3/4", 4, 4, "3313311", 7, 15)]
    [InlineData("3/4", 4, 5, "0000030", 1, 3)]
    [InlineData("3/4", 4, 6, "3331113", 7, 15)]
    [InlineData("3/4", 4, 7, "0000000", 0, 0)]
    [InlineData("2/4", 1, 3, "0030002", 2, 5)]
    [InlineData("2/4", 1, 4, "3303301", 5, 13)]
    [InlineData("2/4", 1, 5, "0000030", 1, 3)]
    [InlineData("2/4", 1, 6, "0030003", 2, 6)]
    [InlineData("2/4", 1, 7, "0000000", 0, 0)]
    [InlineData("2/4", 2, 3, "0030002", 2, 5)]
    [InlineData("2/4", 2, 4, "3313311", 7, 15)]
    [InlineData("2/4", 2, 5, "0000030", 1, 3)]
    [InlineData("2/4", 2, 6, "0030003", 2, 6)]
    [InlineData("2/4", 2, 7, "0000000", 0, 0)]
    public void Grades_of_equal_groups_are_those_of_the_table(
        string meter,
        int bars,
        int group,
        string grades,
        int outOfSeven,
        int outOfTwentyOne
    )
    {
        var feels = GroupFit.Grades(new Pass(group, [0]), Beats.Meter(meter), bars);

        Assert.Equal(grades, Written(feels));
        Assert.Equal(outOfSeven, feels.Count(feel => feel.Grade != FeelGrade.Open));
        Assert.Equal(outOfTwentyOne, feels.Sum(feel => (int)feel.Grade));
    }

    [Fact]
    public void Grades_of_fives_resolve_in_one_bar_of_five() =>
        Assert.DoesNotContain(
            GroupFit.Grades(new Pass(5, [0]), Beats.Meter("5/4"), 1),
            feel => feel.Grade == FeelGrade.Open
        );

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Sevens_come_home_in_one_bar_of_seven_eighths(int notesPerBeat) =>
        Assert.Equal(1, GroupFit.Of(Beats.Groups(7, 7), Beats.Meter("7/8"), notesPerBeat)?.BarsToRealign);

    // Worked by hand: 1+3 has starts at the first two pulses of every beat of four; 4+4+2+2 starts on beats of two.
    [Theory]
    [InlineData("4 4 2 2", "3311111")]
    [InlineData("3 3 2", "1111111")]
    [InlineData("8 4", "3313311")]
    [InlineData("1 3", "1112111")]
    [InlineData("1 2 1 2", "1121112")]
    [InlineData("6 2", "3311111")]
    [InlineData("5 5 4", "0000000")]
    public void Grades_of_unequal_groups_go_by_the_whole_pass(string groups, string grades) =>
        Assert.Equal(grades, Written(Fit(groups).Feels));

    // Slow twin: lay the pass out over its whole cycle and look at every beat.
    [Fact]
    public void Grades_equal_looking_at_every_beat() =>
        Gen.Int[1, 7]
            .Array[1, 6]
            .Select(Gen.Int[2, 5], Gen.Int[1, 9])
            .Sample(
                (lengths, beats, bars) =>
                {
                    var starts = Pass.OfStarts(Beats.Groups(lengths));
                    Assert.NotNull(starts);
                    var meter = Beats.Meter(FormattableString.Invariant($"{beats}/4"));

                    var feels = GroupFit.Grades(starts, meter, bars);

                    Assert.Equal(
                        feels.Select(feel => SlowGrade(lengths, feel.Feel, beats, bars)),
                        feels.Select(feel => feel.Grade)
                    );
                },
                iter: 2000
            );

    [Fact]
    public void Usual_feels_stand_in_the_order_of_the_trade() =>
        Assert.Equal(
            ["2 1/2", "2 2/3", "3 1/2", "4 1/2", "4 2/3", "5 1/2", "6 1/2"],
            Feel.Usual.Select(feel => FormattableString.Invariant($"{feel.NotesPerBeat} {feel.Swing.Share}"))
        );

    private static GroupFit Fit(string groups) =>
        GroupFit.Of(Beats.Groups([.. groups.Split(' ').Select(int.Parse)]), default, 4)
        ?? throw new ArgumentException(groups, nameof(groups));

    private static string Written(IEnumerable<GradedFeel> feels) =>
        string.Concat(feels.Select(feel => (int)feel.Grade));

    private static FeelGrade SlowGrade(int[] groups, Feel feel, int beatsPerBar, int bars)
    {
        int[] pass = groups.Distinct().Count() == 1 ? [groups[0]] : groups;
        var perBeat = feel.NotesPerBeat;
        var starts = new HashSet<int>();
        var at = 0;
        do
        {
            foreach (var length in pass)
            {
                starts.Add(at);
                at += length;
            }
        } while (at % (perBeat * beatsPerBar) != 0);

        if (at > bars * perBeat * beatsPerBar)
        {
            return FeelGrade.Open;
        }

        var oneKind = starts.All(start => start % 2 == 0) && pass.Sum() % 2 == 0;
        var places = Enumerable
            .Range(0, at / perBeat)
            .Select(beat =>
                string.Join(
                    ',',
                    Enumerable.Range(0, perBeat).Where(pulse => starts.Contains((beat * perBeat) + pulse))
                )
            )
            .Distinct()
            .Count();
        var crossing = places == 1 ? FeelGrade.Nested : FeelGrade.Resolving;
        var grade = starts.All(start => start % perBeat == 0) ? FeelGrade.Locked : crossing;
        return feel.Swing.IsStraight || oneKind ? grade : FeelGrade.Resolving;
    }
}
