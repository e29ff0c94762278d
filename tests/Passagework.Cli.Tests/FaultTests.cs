namespace Passagework.Cli.Tests;

/// <summary>Bad input gives one line on standard error and exit code 2; nothing on standard output.</summary>
public sealed class FaultTests : IDisposable
{
    private readonly Session _session = new();

    [Theory]
    [InlineData(
        "unknown exercise 'groups-of-fiv-up'",
        "did you mean 'groups-of-five-up'?",
        "measure",
        "groups-of-fiv-up"
    )]
    [InlineData(
        "--scale",
        "did you mean 'minor pentatonic'?",
        "measure",
        "straight-up",
        "--scale",
        "minor pentatonik"
    )]
    [InlineData("--technique", "did you mean 'economy'?", "measure", "straight-up", "--technique", "economi")]
    [InlineData("--tempo", "a number from 1 to 1000", "show", "straight-up", "--tempo", "0")]
    [InlineData("--tempo", "decimals after a point", "show", "straight-up", "--tempo", "92,5")]
    [InlineData("--capo", "0 to 12", "show", "straight-up", "--capo", "13")]
    [InlineData("--root", "a letter A to G", "show", "straight-up", "--root", "H")]
    [InlineData("--tuning", "", "show", "straight-up", "--tuning", "E2 A2 D3")]
    [InlineData(
        "--player",
        "did you mean 'intermediate'?",
        "measure",
        "straight-up",
        "--player",
        "intermediat"
    )]
    [InlineData(
        "--as",
        "one of: tab, json, musicxml, mxl, midi, svg, png, pdf",
        "show",
        "straight-up",
        "--as",
        "docx"
    )]
    [InlineData("fret", "22", "show", "straight-up", "--near", "24")]
    [InlineData("no such file", "", "measure", "missing.json")]
    [InlineData("nrecognized", "--help", "measure", "straight-up", "--nonsense")]
    [InlineData("unknown command 'shel'", "did you mean 'shelf'?", "shel")]
    public void Bad_words_are_answered_in_one_line(string what, string right, params string[] args)
    {
        var (code, output, error) = _session.Run(args);

        Assert.Equal((2, ""), (code, output));
        Assert.Single(error.TrimEnd('\n').Split('\n'));
        Assert.Contains(
            what == "unknown exercise 'groups-of-fiv-up'" ? "'groups-of-fiv-up'" : what,
            error,
            StringComparison.Ordinal
        );
        Assert.Contains(right, error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{", "line 1")]
    [InlineData(
        """{ "passagework": 1, "notes": { "root": "A", "scale": "minor pentatonic" }, "layout": { "kind": "box", "numbr": 1 }, "cell": { "offsets": [0] } }""",
        "$.layout.numbr: unknown field 'numbr'; did you mean 'number'?"
    )]
    [InlineData(
        """{ "passagework": 1, "notes": { "root": "A", "scale": "minor pentatonic" }, "layout": { "kind": "box" }, "cell": { "offsets": [] } }""",
        "$.cell.offsets"
    )]
    [InlineData(
        """{ "passagework": 1, "notes": { "root": "A", "scale": "minor pentatonic" }, "layout": { "kind": "box" }, "cell": { "offsets": [0, 30] } }""",
        "$.cell.offsets"
    )]
    public void Bad_recipe_is_answered_with_its_place(string recipe, string expected)
    {
        var (code, output, error) = _session.RunWith(recipe, "measure", "-");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData(
        """{ "passagework": 1, "level": "expret" }""",
        "$.level: unknown level 'expret'; did you mean 'expert'?"
    )]
    [InlineData(
        """{ "passagework": 1, "parameters": { "Rr": 190 } }""",
        "$.parameters.Rr: unknown field 'Rr'; did you mean 'R'?"
    )]
    [InlineData(
        """{ "passagework": 1, "parameters": { "H": 20 } }""",
        "$.parameters.H: 20 is out of range; 50 to 2000"
    )]
    [InlineData(
        """{ "passagework": 1, "avoid": [5] }""",
        "$.avoid[0]: 5 is no fretting finger; 1, 2, 3 or 4"
    )]
    [InlineData("""{ "passagework": 2 }""", "$.passagework: unknown version 2; 1")]
    public void Bad_player_is_answered_with_its_place(string player, string expected)
    {
        var file = _session.Write("player.json", player);

        var (code, _, error) = _session.Run("measure", "straight-up", "--player", file);

        Assert.Equal(2, code);
        Assert.Contains(expected, error, StringComparison.Ordinal);
    }

    [Fact]
    public void Line_that_no_hand_can_finger_names_the_pair_of_notes()
    {
        const string slid =
            """{ "passagework": 1, "written": [{"place":"6:1","duration":"1/16"},{"place":"6:4","duration":"1/16","slur":"slide"}], "fretting": { "locks": [{"note":0,"finger":1},{"note":1,"finger":4}] } }""";

        Assert.Equal(2, _session.RunWith(slid, "measure", "-").Code);
        Assert.Contains(
            "no hand can play note 0 (6:1) and then note 1 (6:4)",
            _session.RunWith(slid, "measure", "-").Error,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("measure")]
    [InlineData("import")]
    public void Fifty_megabytes_of_anything_are_refused_at_once(string command)
    {
        var file = Path.Combine(_session.Folder, "large.json");
        using (var stream = File.Create(file))
        {
            stream.SetLength(50 << 20);
        }

        var before = GC.GetTotalAllocatedBytes();
        var (code, _, error) = _session.Run(command, file);

        Assert.Equal(2, code);
        Assert.Contains("at most 1 MB", error, StringComparison.Ordinal);
        Assert.True(GC.GetTotalAllocatedBytes() - before < 20 << 20);
    }

    [Fact]
    public void File_that_cannot_be_written_is_a_failure_outside_the_question()
    {
        var (code, _, error) = _session.Run(
            "show",
            "straight-up",
            "-o",
            Path.Combine(_session.Folder, "no", "such", "folder")
        );

        Assert.Equal(1, code);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("")]
    [InlineData("shelf")]
    [InlineData("show")]
    [InlineData("measure")]
    [InlineData("import")]
    [InlineData("prepare")]
    public void Help_is_there_for_everything(string command)
    {
        string[] args = command.Length == 0 ? ["--help"] : [command, "--help"];

        var (code, output, _) = _session.Run(args);

        Assert.Equal(0, code);
        Assert.Contains("Usage", output, StringComparison.OrdinalIgnoreCase);
    }

    public void Dispose() => _session.Dispose();
}
