using System.Text.Json.Nodes;

namespace Passagework.Cli.Tests;

public sealed class MeasureCommandTests : IDisposable
{
    private readonly Session _session = new();

    [Fact]
    public void Json_has_the_published_shape()
    {
        var (code, output, _) = _session.Run("measure", "groups-of-five-up", "--json");

        Assert.Equal(0, code);
        var root = JsonNode.Parse(output)!.AsObject();
        Assert.Equal(
            [
                "exercise",
                "player",
                "notes",
                "picking",
                "fretting",
                "ceiling",
                "balance",
                "evenLoad",
                "rhythm",
            ],
            root.Select(field => field.Key)
        );
        Assert.Equal("groups-of-five-up", (string?)root["exercise"]);
        Assert.Equal("intermediate", (string?)root["player"]);
        Assert.Equal(40, root["notes"]!.AsArray().Count);
        Assert.Equal(
            """{"index":0,"string":6,"fret":5,"midi":45,"pitch":"A2","onset":"0","duration":"1/16","group":0,"inGroup":0,"accent":true,"finger":1,"position":5,"stroke":"down","frettingMs":null,"pickingMs":null,"togetherMs":null}""",
            root["notes"]![0]!.ToJsonString()
        );
        Assert.Equal("DUDUDUDU", (string?)root["picking"]!["groupStarts"]);
        Assert.Equal(4, (int?)root["picking"]!["insideSkips"]);
        Assert.Equal(0.35, (double?)root["fretting"]!["fingerShare"]!["3"]);
        Assert.Equal("fretting", (string?)root["ceiling"]!["limitedBy"]);
        Assert.Equal(4.97, (double?)root["ceiling"]!["least"] ?? 0, 0.005);
        Assert.Equal(
            15 * ((double?)root["ceiling"]!["least"] ?? 0),
            (double?)root["ceiling"]!["bpm"] ?? 0,
            0.0001
        );
        Assert.Equal(5, (int?)root["rhythm"]!["beatsToRealign"]);
        Assert.Equal(7, root["rhythm"]!["feels"]!.AsArray().Count);
        Assert.Equal(0.142857, (double?)root["rhythm"]!["comesOutEven"]);
        Assert.Equal(1, (double?)root["rhythm"]!["ambiguity"]);
    }

    [Fact]
    public void People_read_counts_before_times_before_tempi()
    {
        var (code, output, error) = _session.Run("measure", "groups-of-five-up");

        Assert.Equal((0, ""), (code, error));
        Assert.Contains("over a skipped string 4", output, StringComparison.Ordinal);
        Assert.Contains(
            " 225 ms  4:5 first to 6:8 little, fretting hand, once",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains("plausibly 61–80 beats a minute", output, StringComparison.Ordinal);
        Assert.Contains("either hand sets the pace", output, StringComparison.Ordinal);
        Assert.Contains("needs five bars to come home", output, StringComparison.Ordinal);
        Assert.True(
            output.IndexOf("string changes", StringComparison.Ordinal)
                < output.IndexOf("Slowest moves", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("recipe")]
    [InlineData("realization")]
    [InlineData("percentile")]
    [InlineData("left hand")]
    [InlineData("right hand")]
    public void Words_that_people_should_not_meet_do_not_appear(string word)
    {
        var (_, measured, _) = _session.Run("measure", "trill-one-three");
        var (_, shelf, _) = _session.Run("shelf");

        Assert.DoesNotContain(word, measured + shelf, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Two_exercises_stand_side_by_side()
    {
        var (code, output, _) = _session.Run(
            "measure",
            "groups-of-six-up",
            "--against",
            "straight-up-and-down"
        );

        Assert.Equal(0, code);
        Assert.Matches("groups-of-six-up +straight-up-and-down\n", output);
        Assert.Contains("Top tempo: straight-up-and-down is the faster in", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Same_exercise_against_itself_differs_in_nothing()
    {
        var (_, output, _) = _session.Run("measure", "straight-up", "--against", "straight-up");

        Assert.Contains(
            "no clear difference (straight-up is ahead in 50 of 100 cases)",
            output,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Player_file_is_used()
    {
        var file = _session.Write(
            "yuna.json",
            """{ "passagework": 1, "level": 1.5, "handSize": 0.9, "avoid": [4], "clear": "after-up", "parameters": { "R": 260 } }"""
        );

        var (code, output, error) = _session.Run("measure", "groups-of-four-up", "--player", file, "--json");

        Assert.Equal((0, ""), (code, error));
        var root = JsonNode.Parse(output)!;
        Assert.Equal("yuna", (string?)root["player"]);
        Assert.Equal(0, (double?)root["fretting"]!["fingerShare"]!["4"]);
    }

    [Theory]
    [InlineData("--root", "C#", "midi", 49)]
    [InlineData("--tuning", "half step down", "fret", 6)]
    [InlineData("--capo", "2", "midi", 47)]
    [InlineData("--layout", "open", "string", 6)]
    [InlineData("--near", "17", "fret", 17)]
    [InlineData("--box", "2", "fret", 8)]
    public void Override_changes_the_first_note(string option, string value, string field, int expected)
    {
        var (code, output, error) = _session.Run("measure", "groups-of-five-up", option, value, "--json");

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(expected, (int?)JsonNode.Parse(output)!["notes"]![0]![field]);
    }

    [Fact]
    public void Override_that_changes_the_notes_frees_what_was_fixed_about_the_old_ones()
    {
        Assert.Equal(
            0,
            _session.Run("measure", "first-notes-up", "--root", "E", "--scale", "natural minor").Code
        );
        Assert.Equal(0, _session.Run("measure", "finger-orders-crossed", "--direction", "down").Code);
        Assert.Equal(
            0,
            _session.Run("measure", "thumb-and-fingers-rolling", "--technique", "alternate").Code
        );
    }

    [Fact]
    public void Every_other_override_is_taken()
    {
        var (code, output, error) = _session.Run(
            "measure",
            "groups-of-five-up",
            "--scale",
            "natural minor",
            "--step",
            "2",
            "--direction",
            "down",
            "--notes-per-beat",
            "3",
            "--meter",
            "3/4",
            "--swing",
            "2/3",
            "--technique",
            "economy",
            "--first",
            "up",
            "--scale-length",
            "628.5",
            "--avoid-finger",
            "4",
            "--tempo",
            "92.5",
            "--json"
        );

        Assert.Equal((0, ""), (code, error));
        var notes = JsonNode.Parse(output)!["notes"]!;
        Assert.Equal("up", (string?)notes[0]!["stroke"]);
        Assert.Equal("1/12", (string?)notes[0]!["duration"]);
    }

    public void Dispose() => _session.Dispose();
}
