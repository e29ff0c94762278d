using System.Text.Json.Nodes;

namespace Passagework.Cli.Tests;

public sealed class ChooseCommandTests : IDisposable
{
    private readonly Session _session = new();

    public void Dispose() => _session.Dispose();

    [Fact]
    public void Json_has_the_published_shape()
    {
        var (code, output, error) = _session.Run("choose", "groups-of-five", "groups-of-three", "--json");

        Assert.Equal((0, ""), (code, error));
        var root = JsonNode.Parse(output)!.AsObject();
        Assert.Equal(
            [
                "even-load",
                "general-use",
                "staying-power",
                "use-in-music",
                "rhythmic-ambiguity",
                "comes-out-even",
            ],
            root["criteria"]!.AsArray().Select(criterion => (string?)criterion!["id"])
        );
        Assert.Equal(0.2, (double?)root["criteria"]![0]!["weight"]);
        Assert.Equal(0, (double?)root["criteria"]![5]!["weight"]);
        var first = root["ranking"]![0]!.AsObject();
        Assert.Equal("groups-of-five", (string?)first["exercise"]);
        foreach (var field in new[] { "score", "acceptability", "values", "pros", "cons" })
        {
            Assert.True(first.ContainsKey(field), field);
        }

        var value = first["values"]![0]!.AsObject();
        Assert.Equal("even-load", (string?)value["criterion"]);
        Assert.Equal(0.8673, (double?)value["raw"] ?? 0, 0.00005);
        Assert.Equal(0.048, (double?)value["error"] ?? 0, 0.0005);
        Assert.False((bool?)value["missing"]);
        Assert.NotEqual("", (string?)value["sentence"]);
        Assert.Equal("clearly", (string?)root["closeness"]);
        Assert.NotEmpty(root["reasons"]!.AsArray());
        foreach (var field in new[] { "against", "doubt" })
        {
            Assert.NotEqual("", (string?)root[field]);
        }

        var flip = root["flips"]![0]!.AsObject();
        Assert.Equal(["criterion", "weight", "winner"], flip.Select(pair => pair.Key));
    }

    [Fact]
    public void The_score_is_the_weighted_sum_of_the_values()
    {
        var (_, output, _) = _session.Run("choose", "groups-of-five", "groups-of-six", "pedal", "--json");
        var root = JsonNode.Parse(output)!;
        var weights = root["criteria"]!.AsArray().Select(criterion => (double)criterion!["weight"]!).ToList();

        foreach (var candidate in root["ranking"]!.AsArray())
        {
            var values = candidate!["values"]!.AsArray().Select(value => (double)value!["value"]!);
            Assert.Equal(values.Zip(weights, (v, w) => v * w).Sum(), (double)candidate["score"]!, 0.00001);
        }
    }

    [Fact]
    public void A_missing_value_is_told_and_has_no_number()
    {
        var (_, output, _) = _session.Run("choose", "straight", "groups-of-six", "--json");
        var straight = JsonNode.Parse(output)!["ranking"]!
            .AsArray()
            .Single(candidate => (string?)candidate!["exercise"] == "straight");
        var ambiguity = straight!["values"]![4]!;

        Assert.True((bool?)ambiguity["missing"]);
        Assert.Null(ambiguity["raw"]);
        Assert.Null(ambiguity["value"]);
        Assert.StartsWith("Not measured: ", (string?)ambiguity["sentence"], StringComparison.Ordinal);
        Assert.Equal(0.2, (double?)straight["missingWeight"]);
    }

    [Fact]
    public void The_music_of_a_folder_takes_the_place_of_the_built_in_pieces()
    {
        var folder = Directory.CreateDirectory(Path.Combine(_session.Folder, "music")).FullName;
        _session.Run(
            "show",
            "groups-of-six-up",
            "--as",
            "musicxml",
            "-o",
            Path.Combine(folder, "one.musicxml")
        );
        _session.Run("show", "pedal-down", "--as", "midi", "-o", Path.Combine(folder, "two.mid"));
        File.WriteAllText(Path.Combine(folder, "three.musicxml"), "<score-partwise>");

        var (code, output, error) = _session.Run(
            "choose",
            "groups-of-three",
            "groups-of-four",
            "--pieces",
            folder,
            "--json"
        );

        Assert.Equal(0, code);
        Assert.Contains("three.musicxml left out", error, StringComparison.Ordinal);
        Assert.Equal(2, (int?)JsonNode.Parse(output)!["pieces"]);

        // What is worth 0 and 1 beside other music is got from that music; what needs none stays.
        var own = JsonNode.Parse(output)!["criteria"]!.AsArray();
        var builtIn = JsonNode.Parse(
            _session.Run("choose", "groups-of-three", "groups-of-four", "--json").Out
        )!["criteria"]!.AsArray();
        Assert.Equal(builtIn[0]!["anchors"]!.ToJsonString(), own[0]!["anchors"]!.ToJsonString());
        Assert.NotEqual(builtIn[1]!["anchors"]!.ToJsonString(), own[1]!["anchors"]!.ToJsonString());
        Assert.NotEqual(builtIn[3]!["anchors"]!.ToJsonString(), own[3]!["anchors"]!.ToJsonString());
    }

    [Theory]
    [InlineData("choose", "--pieces", "nowhere", "there is no such folder")]
    [InlineData("choose", "--weights", "nowhere.json", "there is no such file")]
    [InlineData("choose", "--method", "tarot", "unknown method 'tarot'")]
    [InlineData("choose", "--player", "wizard", "unknown level 'wizard'")]
    [InlineData("choose", "--technique", "sweeping", "did you mean 'sweep'?")]
    public void What_is_wrong_is_told_in_one_line(
        string command,
        string option,
        string value,
        string expected
    )
    {
        var (code, output, error) = _session.Run(command, "groups-of-three", "groups-of-five", option, value);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("groups-of-six", "groups-of-five", "did you mean 'groups-of-five'?")]
    [InlineData("groups-of-five", "groups-of-five", "two different exercises")]
    public void Why_asks_about_two_of_those_compared(string one, string other, string expected)
    {
        var (code, _, error) = _session.Run(
            "choose",
            "groups-of-three",
            "groups-of-five",
            "--why",
            one,
            other
        );

        Assert.Equal(2, code);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_people_should_not_meet_do_not_appear()
    {
        string[] words =
        [
            "recipe",
            "realization",
            "acceptability",
            "swing weight",
            "Pareto",
            "percentile",
            "dominat",
        ];
        var (_, output, _) = _session.Run("choose", "--why", "pedal", "trill");

        Assert.NotEqual("", output);
        Assert.All(words, word => Assert.DoesNotContain(word, output, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Every_family_has_something_said_for_or_against_it()
    {
        var (_, output, _) = _session.Run("choose", "--json");

        foreach (var candidate in JsonNode.Parse(output)!["ranking"]!.AsArray())
        {
            var said = candidate!["pros"]!.AsArray().Count + candidate["cons"]!.AsArray().Count;
            Assert.True(said > 0, (string?)candidate["exercise"]);
        }
    }
}
