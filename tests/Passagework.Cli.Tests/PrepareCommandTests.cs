using System.Text.Json.Nodes;

namespace Passagework.Cli.Tests;

public sealed class PrepareCommandTests : IDisposable
{
    // Two strings far apart in turn: nothing like it in any family.
    private const string Wild = """
        e|-------17----18----19---|
        B|------------------------|
        G|------------------------|
        D|------------------------|
        A|------------------------|
        E|-1--------1-----1-------|
        """;

    private readonly Session _session = new();

    [Fact]
    public void Piece_is_prepared_for_people()
    {
        var (code, output, error) = _session.Run("prepare", "corner-table");

        Assert.Equal((0, ""), (code, error));
        Assert.StartsWith(
            """
            Corner Table (corner-table), intermediate player
            113 notes in 16 bars of 4/4, 144 beats a minute; 112 moves of 67 kinds
            technique alternate, for the piece and for all exercises alike

            Hardest moves: time needed, time there is at 144
              bar 4, beat 2: 3:8 first to 2:8 first
                fretting hand 215 of 139 ms, in time up to 93; 3 times in the piece

            Count   1  &  2  &  3     4
            """.ReplaceLineEndings("\n"),
            output,
            StringComparison.Ordinal
        );
        Assert.Contains("     B|-------8--11-10----------|", output, StringComparison.Ordinal);
        Assert.Contains(" of 100 moves, 22 of 22 kinds; no fewer will do", output, StringComparison.Ordinal);
        Assert.Contains("Rarest moves, looked for in 22 other pieces", output, StringComparison.Ordinal);
        Assert.DoesNotContain("left out", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_is_as_agreed()
    {
        var page = Json("prepare", "corner-table", "--json", "--player", "advanced");

        Assert.Equal("Corner Table", (string?)page["piece"]);
        Assert.Equal(112, (int?)page["moves"]);
        Assert.Equal(5, page["hardest"]!.AsArray().Count);
        var hardest = page["hardest"]![0]!.AsObject();
        string[] fields =
        [
            "bar",
            "beat",
            "from",
            "to",
            "fromFinger",
            "toFinger",
            "times",
            "ms",
            "hand",
            "availableMs",
            "inTimeUpToBpm",
        ];
        Assert.Equal(fields, hardest.Select(field => field.Key));
        var shares = page["coverage"]!.AsArray().Select(held => (double)held!["share"]!).ToList();
        Assert.Equal(29, shares.Count);
        Assert.Equal(shares.OrderDescending(), shares);
        Assert.InRange((double)page["together"]!, shares[0], 1);
        Assert.True((bool)page["exact"]!);
        Assert.All(
            page["smallestSet"]!.AsArray(),
            name =>
                Assert.Contains(
                    page["coverage"]!.AsArray(),
                    held => (string)held!["exercise"]! == (string)name!
                )
        );
        Assert.Equal("5/2", (string?)page["occurrences"]![0]!["beat"]);
    }

    // The move into note i of the same line, measured as an exercise, asks what the piece says.
    [Fact]
    public void Times_are_those_of_the_measurement()
    {
        var tab = _session.Write("run.tab", _session.Run("show", "groups-of-five-up", "--tempo", "90").Out);
        var hardest = Json("prepare", tab, "--json")["hardest"]![0]!;
        var notes = JsonNode.Parse(_session.Run("measure", "groups-of-five-up", "--json").Out)!["notes"]!;
        var most = notes
            .AsArray()
            .Max(note => Math.Max((double?)note!["frettingMs"] ?? 0, (double?)note["pickingMs"] ?? 0));

        Assert.Equal(most, (double)hardest["ms"]!, 0.001);
        // A sixteenth at 90.
        Assert.Equal(60_000 / 90.0 / 4, (double)hardest["availableMs"]!, 0.001);
        Assert.Equal(60_000 / most / 4, (double)hardest["inTimeUpToBpm"]!, 0.001);
    }

    [Fact]
    public void Exercises_that_are_named_are_judged_alone()
    {
        var page = Json(
            "prepare",
            "first-lamp",
            "--json",
            "--with",
            "groups-of-five",
            "straight-up",
            "pedal-down"
        );

        Assert.Equal(
            ["groups-of-five", "pedal-down", "straight-up"],
            page["coverage"]!
                .AsArray()
                .Select(held => (string)held!["exercise"]!)
                .Order(StringComparer.Ordinal)
        );
    }

    // Both first strokes and both directions hold more than one form.
    [Fact]
    public void Family_holds_at_least_what_its_forms_hold()
    {
        var page = Json(
            "prepare",
            "slate-roof",
            "--json",
            "--with",
            "straight",
            "straight-up",
            "straight-down",
            "straight-up-and-down"
        );
        var shares = page["coverage"]!
            .AsArray()
            .ToDictionary(held => (string)held!["exercise"]!, held => (double)held!["share"]!);

        Assert.True(shares["straight"] > shares["straight-up-and-down"]);
        Assert.True(shares["straight-up-and-down"] >= shares["straight-up"]);
        Assert.Equal(["straight"], page["smallestSet"]!.AsArray().Select(name => (string)name!));
    }

    [Fact]
    public void Technique_is_one_for_all()
    {
        var page = Json("prepare", "slate-roof", "--json", "--technique", "fingers", "--with", "straight");

        Assert.Equal("fingers", (string?)page["technique"]);
        Assert.True((double)page["coverage"]![0]!["share"]! > 0);
    }

    [Fact]
    public void Exercise_in_the_piece_is_found_where_it_stands()
    {
        var tab = _session.Write(
            "fives.tab",
            _session.Run("show", "groups-of-five-up", "--near", "7", "--root", "B").Out
        );

        var page = Json("prepare", tab, "--json", "--with", "groups-of-five-up");

        Assert.Equal(1, (double)page["coverage"]![0]!["share"]!);
        Assert.Equal(
            [(1, "1", 2), (1, "9/4", 2), (1, "7/2", 2)],
            page["occurrences"]!
                .AsArray()
                .Take(3)
                .Select(found => ((int)found!["bar"]!, (string)found["beat"]!, (int)found["transposed"]!))
        );
    }

    [Fact]
    public void Piece_of_one_note_has_nothing_to_prepare()
    {
        var tab = _session.Write(
            "one.json",
            """{ "passagework": 1, "written": [{"place":"6:5","duration":"1/4"}] }"""
        );

        Assert.Contains(
            "One note: there is no move in it that could be prepared.",
            _session.Run("prepare", tab).Out,
            StringComparison.Ordinal
        );
        var page = Json("prepare", tab, "--json");
        Assert.Empty(page["hardest"]!.AsArray());
        Assert.Empty(page["smallestSet"]!.AsArray());
        Assert.Null(page["coverage"]![0]!["share"]);
    }

    [Fact]
    public void Piece_that_nothing_covers_says_so()
    {
        var (code, output, _) = _session.Run("prepare", _session.Write("wild.tab", Wild), "--with", "trill");

        Assert.Equal(0, code);
        Assert.Contains(
            "None of the exercises holds a single move of this piece.",
            output,
            StringComparison.Ordinal
        );
        Assert.Contains("that no exercise holds", output, StringComparison.Ordinal);
        Assert.Contains("no tempo is written", output, StringComparison.Ordinal);
        Assert.Contains("No figure of these exercises stands in it", output, StringComparison.Ordinal);
        Assert.DoesNotContain("Fewest", output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_reading_left_out_is_said()
    {
        var file = _session.Write("voices.musicxml", Scores.Of(Scores.FourVoices));

        var (code, output, _) = _session.Run("prepare", file);

        Assert.Equal(0, code);
        Assert.Contains("In reading the piece", output, StringComparison.Ordinal);
        Assert.Contains(
            "  3 other voices left out (3 notes); read was voice 1 of part P1",
            output,
            StringComparison.Ordinal
        );
        Assert.NotEmpty(Json("prepare", file, "--json")["leftOut"]!.AsArray());
    }

    [Fact]
    public void Chords_give_their_melody_and_say_so()
    {
        var file = _session.Write(
            "chords.json",
            """{ "passagework": 1, "written": [{"place":"1:5","duration":"1/4","with":["2:5","3:5"]},{"place":"1:7","duration":"1/4"}] }"""
        );

        var (_, output, _) = _session.Run("prepare", file);

        Assert.Contains("2 notes in 1 bar of 4/4", output, StringComparison.Ordinal);
        Assert.Contains("2 tones below the melody left out", output, StringComparison.Ordinal);
    }

    // The library's exercises need more strings than a bass has where places are written.
    [Fact]
    public void Families_that_the_instrument_has_no_room_for_are_named()
    {
        var bass = _session.Run("show", "straight-up", "--tuning", "bass").Out;

        var (code, output, _) = _session.Run("prepare", _session.Write("bass.tab", bass));

        Assert.Equal(0, code);
        Assert.Contains("Exercises left out", output, StringComparison.Ordinal);
        Assert.Equal(
            2,
            _session.Run("prepare", _session.Write("bass.tab", bass), "--with", "finger-orders").Code
        );
    }

    [Theory]
    [InlineData("did you mean 'corner-table'?", "prepare", "corner-tabel")]
    [InlineData("there is no such file", "prepare", "nowhere.mid")]
    [InlineData("is a folder", "prepare", "/")]
    [InlineData("did you mean 'groups-of-five-up'?", "prepare", "corner-table", "--with", "groups-of-fiv")]
    [InlineData("--technique", "prepare", "corner-table", "--technique", "fingrs")]
    [InlineData("--player", "prepare", "corner-table", "--player", "5")]
    public void Bad_words_are_answered_in_one_line(string right, params string[] args)
    {
        var (code, output, error) = _session.Run(args);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(right, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData(Scores.DrumsOnly)]
    [InlineData(Scores.RestsOnly)]
    public void Score_without_a_melody_is_refused_in_one_line(string measures)
    {
        var (code, output, error) = _session.Run("prepare", _session.Write("score.xml", Scores.Of(measures)));

        Assert.Equal((2, ""), (code, output));
        Assert.Contains("note", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Ten_thousand_bars_are_answered_or_refused_soon()
    {
        var many = _session.Write(
            "many.xml",
            Scores.Of(string.Concat(Enumerable.Repeat(Scores.Bar, 10_000)))
        );

        var watch = System.Diagnostics.Stopwatch.StartNew();
        var (code, _, error) = _session.Run("prepare", many);

        Assert.Equal(2, code);
        Assert.Contains("40000 notes; at most 20,000", error, StringComparison.Ordinal);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 10);
    }

    public void Dispose() => _session.Dispose();

    private JsonNode Json(params string[] args)
    {
        var (code, output, error) = _session.Run(args);
        Assert.Equal((0, ""), (code, error));
        return JsonNode.Parse(output)!;
    }
}
