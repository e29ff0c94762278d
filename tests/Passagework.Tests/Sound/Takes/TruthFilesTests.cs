using System.Globalization;
using Passagework.Foundation;
using Passagework.Sound.Takes;

namespace Passagework.Tests.Sound.Takes;

public sealed class TruthFilesTests
{
    private static readonly TakeIdea Idea = Taken.Demo("bram") with
    {
        Plan = Taken.Demo("bram").Plan with
        {
            WrongNotes = [3],
            ExtraNotes = [5],
            RingingShare = 0.5,
            Times = 2,
            DriftPercent = 3.25,
        },
    };

    private static readonly Take Made = Taken.Make(Idea);
    private static readonly TruthFiles Files = TruthFiles.Of(Idea, Made);

    [Fact]
    public void Everything_written_is_read_back()
    {
        Assert.Equal(Made.Truth, TruthFiles.ReadTruth(Files.Truth).OrThrow());
        Assert.Equal(Made.Score, TruthFiles.ReadScore(Files.Score).OrThrow());
        Assert.Equal(Idea, TakeIdeaJson.Read(Files.Plan).OrThrow());
        Assert.Equal(4, Made.Truth.Select(note => note.Kind).Distinct().Count());
    }

    [Fact]
    public void Every_number_and_list_of_a_plan_is_kept()
    {
        var plan = new TakePlan { AskedBpm = 61 };
        plan = TakeNumbers.All.Aggregate(plan, (p, n) => n.With(p, n.Name == "times" ? 7 : n.Most * 0.75));
        plan = TakeNumbers.Lists.Aggregate(plan, (p, list) => list.With(p, [1, 4]));
        plan = plan with { RingLeastMs = 20 };
        var read = TakeIdeaJson
            .Read(JsonPage.Print(TakeIdeaJson.Of(Idea with { Plan = plan, Root = "Bb", NotesPerBeat = 4 })))
            .OrThrow();

        Assert.Equal(plan, read.Plan);
        Assert.Equal(("Bb", 4), (read.Root, read.NotesPerBeat));
        Assert.NotEqual(plan, plan with { ByPlaceMs = [1, 5] });
    }

    [Fact]
    public void Files_do_not_depend_on_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            (commas.NumberFormat.NumberDecimalSeparator, commas.NumberFormat.NegativeSign) = (",", "~");
            CultureInfo.CurrentCulture = commas;
            Assert.Equal(Files, TruthFiles.Of(Idea, Made));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void The_head_and_a_row_stand_as_documented()
    {
        var lines = Files.Truth.Split('\n');

        Assert.Equal(
            "kind,scoreIndex,pass,plannedS,attack01S,attack10S,attack50S,midi,expectedMidi,string,fret,velocity,endS,"
                + "ringS,deviationMs,technique,stroke,group,place,crossing,shifted",
            lines[0]
        );
        Assert.Equal("index,beat,midi,string,fret,stroke,group,place,crossing", Files.Score.Split('\n')[0]);
        Assert.StartsWith(
            "0,0,45,6,5,down,0,0,0\n1,0.333333,48,6,8,up,0,1,0\n",
            Files.Score[(Files.Score.IndexOf('\n') + 1)..]
        );
        Assert.Contains(lines, line => line.StartsWith("extra,-1,0,", StringComparison.Ordinal));
        Assert.Contains(
            lines,
            line => line.StartsWith("missed,8,0,", StringComparison.Ordinal) && line.Contains(",,,,,")
        );
    }

    [Theory]
    [InlineData("kind", "kinds", "line 1")]
    [InlineData("played,0,", "plaid,0,", "line 2, kind")]
    [InlineData("played,0,", "played,x,", "line 2, scoreIndex")]
    [InlineData("played,0,", "played,,", "line 2, scoreIndex")]
    [InlineData("played,0,", "played,0.5,", "line 2, scoreIndex")]
    [InlineData("played,0,0,", "played,0,0,NaN,", "line 2")]
    public void A_broken_truth_file_is_refused_with_its_line(string from, string to, string where)
    {
        var at = Files.Truth.IndexOf(from, StringComparison.Ordinal);
        var broken = Files.Truth[..at] + to + Files.Truth[(at + from.Length)..];

        Assert.False(TruthFiles.ReadTruth(broken).TryGet(out _, out var fault));
        Assert.Equal(where, fault.Where);
    }

    [Theory]
    [InlineData("\"askedBpm\": 60", "\"askedBpm\": 6", "$.plan.askedBpm")]
    [InlineData("\"askedBpm\": 60,", "", "$.plan")]
    [InlineData("\"spreadMs\"", "\"spreadms\"", "$.plan.spreadms")]
    [InlineData("\"times\": 2", "\"times\": 1.5", "$.plan.times")]
    [InlineData("\"seed\": 31", "\"seed\": -1", "$.seed")]
    [InlineData("\"guitar\": \"steel\"", "\"guitar\": \"lute\"", "$.guitar")]
    [InlineData("\"id\": \"bram\"", "\"id\": \"../bram\"", "$.id")]
    [InlineData("\"wrongNotes\": [3]", "\"wrongNotes\": [3.5]", "$.plan.wrongNotes[0]")]
    public void A_broken_plan_is_refused_with_its_path(string from, string to, string where)
    {
        Assert.Contains(from, Files.Plan);
        Assert.False(
            TakeIdeaJson
                .Read(Files.Plan.Replace(from, to, StringComparison.Ordinal))
                .TryGet(out _, out var fault)
        );
        Assert.Equal(where, fault.Where);
    }
}
