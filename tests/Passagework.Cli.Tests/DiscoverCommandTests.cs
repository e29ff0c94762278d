using System.Text.Json.Nodes;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;

namespace Passagework.Cli.Tests;

public sealed class DiscoverCommandTests : IDisposable
{
    private readonly Session _session = new();

    public void Dispose() => _session.Dispose();

    [Fact]
    public void Finds_come_with_name_bar_and_merits()
    {
        var (code, text, error) = _session.Run("discover", "--length", "3", "--boxes", "1", "--count", "2");

        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.StartsWith(
            "New exercises of 3 notes, intermediate player, alternate strokes, beside 23 pieces\n196 of 196 looked at in ",
            text
        );
        Assert.Contains("none beats on everything", text);
        Assert.Contains("2 unlike ones", text);
        Assert.Contains("\n1  three notes, ", text);
        Assert.Contains("\n2  three notes, ", text);
        Assert.DoesNotContain("\n3  ", text);
        Assert.Contains("box 1, ", text);
        Assert.Contains("even load", text);
        Assert.Contains("In time, all alike: accents visit", text);
        foreach (var word in new[] { "recipe", "path", "Pareto", "percentile", "realization" })
        {
            Assert.DoesNotContain(word, text);
        }
    }

    [Fact]
    public void Json_holds_recipes_that_can_be_measured()
    {
        var (code, text, _) = _session.Run("discover", "--length", "3", "--boxes", "2", "--json");

        Assert.Equal(0, code);
        var page = JsonNode.Parse(text)!;
        Assert.Equal(196, (int)page["visited"]!);
        Assert.True((bool)page["complete"]!);
        Assert.True((int)page["front"]! > 0);
        Assert.Equal(0, (int)page["removed"]!["rolls"]!);
        var found = page["found"]![0]!;
        Assert.Equal("even-load", (string?)found["values"]![0]!["criterion"]);
        Assert.False((bool)found["values"]![3]!["missing"]!);
        Assert.Equal(0.05, (double)found["values"]![0]!["error"]!, 0.000001);
        Assert.Equal(0.05 / (0.876742 - 0.656913), (double)found["values"]![0]!["valueError"]!, 0.00001);
        var file = _session.Write("found.json", found["recipe"]!.ToJsonString());
        Assert.Equal(0, _session.Run("measure", file).Code);
        Assert.Equal((string?)found["name"], RecipeJson.Read(File.ReadAllText(file)).OrThrow().Title);
    }

    [Fact]
    public void Filters_that_leave_nothing_say_what_removed_how_many()
    {
        var (code, text, error) = _session.Run(
            "discover",
            "--length",
            "3",
            "--boxes",
            "1",
            "--min-ceiling",
            "40"
        );

        Assert.Equal(0, code);
        Assert.Empty(error);
        Assert.Contains("196 left out: the top tempo is too low", text);
        Assert.Contains("Nothing is left.", text);
    }

    [Fact]
    public void Rolls_and_stretches_can_be_left_out()
    {
        var (code, text, _) = _session.Run([
            "discover",
            "--length",
            "3",
            "--layout",
            "one-side",
            "--boxes",
            "1",
            "--no-rolls",
            "--max-stretch",
            "0",
        ]);

        Assert.Equal(0, code);
        Assert.Contains("left out: a finger rolls over neighbouring strings", text);
    }

    [Fact]
    public void Other_scales_layouts_and_techniques_can_be_searched()
    {
        var (code, text, _) = _session.Run([
            "discover",
            "--length",
            "3",
            "--scale",
            "minor triad",
            "--root",
            "C#",
            "--technique",
            "all-down",
            "--reach",
            "2",
            "--steps",
            "2",
            "--tuning",
            "drop D",
        ]);

        Assert.Equal(0, code);
        Assert.Contains("all-down strokes", text);
        Assert.Contains("150 of 150 looked at", text);
        Assert.Contains("each cell two notes on", text);
        Assert.DoesNotContain("first stroke", text);
    }

    [Fact]
    public void Weights_and_pieces_of_the_teacher_are_heeded()
    {
        var weights = _session.Write("w.json", """{ "passagework": 1, "weights": { "even-load": 1 } }""");
        var (code, text, _) = _session.Run([
            "discover",
            "--length",
            "3",
            "--boxes",
            "1",
            "--weights",
            weights,
            "--json",
        ]);

        Assert.Equal(0, code);
        Assert.Equal(1, (int)JsonNode.Parse(text)!["front"]!);
        Assert.Equal(2, _session.Run("discover", "--pieces", _session.Folder + "/none").Code);
    }

    [Theory]
    [InlineData("--length", "2", "a whole number from 3 to 8")]
    [InlineData("--length", "five", "a whole number from 3 to 8")]
    [InlineData("--steps", "4", "a whole number from 1 to 3")]
    [InlineData("--reach", "0", "a whole number from 1 to 7")]
    [InlineData("--boxes", "0-3", "numbers from 1 to 5, such as 1-5 or 1,3")]
    [InlineData("--boxes", "3-1", "numbers from 1 to 5, such as 1-5 or 1,3")]
    [InlineData("--boxes", "x", "numbers from 1 to 5, such as 1-5 or 1,3")]
    [InlineData("--count", "0", "a whole number from 1 to 50")]
    [InlineData("--max-stretch", "-1", "a whole number from 0 to 36")]
    [InlineData("--min-ceiling", "NaN", "notes a second, above 0, at most 100")]
    [InlineData("--threads", "0", "a whole number from 1 to 256")]
    [InlineData("--layout", "boks", "box")]
    [InlineData("--scale", "minor pentatonik", "minor pentatonic")]
    [InlineData("--root", "H", "a letter A to G, with # or b")]
    [InlineData("--player", "wizard", "beginner")]
    public void Bad_options_name_what_would_be_right(string option, string value, string right)
    {
        var (code, text, error) = _session.Run("discover", option, value);

        Assert.Equal(2, code);
        Assert.Empty(text);
        Assert.Contains(right, error);
        Assert.Contains(option == "--player" ? "wizard" : option, error);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Progress_tells_rate_and_time_left() =>
        Assert.Equal(
            "30,000 of 120,000 looked at, 10,000 a second, 9 s left; Ctrl-C shows what is found ",
            SearchWatch.Line(new DiscoveryProgress(30_000, 120_000), 3)
        );
}
