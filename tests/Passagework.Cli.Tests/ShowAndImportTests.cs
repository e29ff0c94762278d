using System.Text.Json.Nodes;
using Passagework.Exercises;

namespace Passagework.Cli.Tests;

public sealed class ShowAndImportTests : IDisposable
{
    private readonly Session _session = new();

    [Fact]
    public void Idea_written_as_a_file_is_the_same_exercise()
    {
        var file = Path.Combine(_session.Folder, "fives.json");
        _session.Run("show", "groups-of-five-up", "--root", "E", "--as", "json", "-o", file);

        var again = _session.Run("measure", file, "--json").Out;

        Assert.Equal(_session.Run("measure", "groups-of-five-up", "--root", "E", "--json").Out, again);
    }

    [Fact]
    public void Tab_of_every_exercise_comes_back_as_it_was()
    {
        foreach (var exercise in Library.All)
        {
            var tab = _session.Run("show", exercise.Id).Out;
            var (code, recipe, error) = _session.RunWith(tab, "import", "-");

            Assert.Equal((exercise.Id, 0, ""), (exercise.Id, code, error));
            Assert.Equal((exercise.Id, Played(exercise.Id)), (exercise.Id, Played(recipe, "-")));
        }
    }

    [Fact]
    public void Guesses_of_an_import_are_said()
    {
        const string tab =
            "e|-----------------|\nB|---------5-8-----|\nG|---5-7---------7-|\nD|-----------------|\nA|-----------------|\nE|-----------------|\n";

        var (code, output, error) = _session.RunWith(tab, "import", "-");

        Assert.Equal(0, code);
        Assert.Contains("note: ", error, StringComparison.Ordinal);
        Assert.Equal(
            5,
            JsonNode.Parse(output)!["written"]!.AsArray().Count(entry => entry!["place"] is not null)
        );
    }

    [Fact]
    public void Chords_are_kept_with_fingers_and_strokes_or_the_melody_alone()
    {
        const string tab = "e|-5---|\nB|-5---|\nG|---7-|\nD|-----|\nA|-----|\nE|-----|\n";

        var chord = JsonNode.Parse(_session.RunWith(tab, "import", "-").Out)!["written"]![0]!;
        var melody = JsonNode.Parse(_session.RunWith(tab, "import", "-", "--melody").Out)!["written"]![0]!;
        var file = _session.Write("chord.json", _session.RunWith(tab, "import", "-").Out);
        var measured = JsonNode.Parse(_session.Run("measure", file, "--json").Out)!["notes"]![0]!["with"]![
            0
        ]!;

        Assert.Equal("2:5", (string?)chord["with"]![0]);
        Assert.Null(melody["with"]);
        Assert.Equal(
            """{"string":2,"fret":5,"midi":64,"pitch":"E4","finger":1,"stroke":"down"}""",
            measured.ToJsonString()
        );
    }

    [Fact]
    public void Shelf_can_be_narrowed_to_a_family()
    {
        var (code, output, _) = _session.Run("shelf", "--family", "groups-of-five", "--level", "3", "--json");

        Assert.Equal(0, code);
        var ids = JsonNode.Parse(output)!["shelf"]!.AsArray().Select(entry => (string?)entry!["id"]);
        Assert.Equal(["groups-of-five-up", "groups-of-five-down", "groups-of-five-up-and-down"], ids);
    }

    public void Dispose() => _session.Dispose();

    private string Played(string exercise, string? name = null)
    {
        var json = name is null
            ? _session.Run("show", exercise, "--json").Out
            : _session.RunWith(exercise, "show", name, "--json").Out;
        return string.Join(
            '\n',
            JsonNode.Parse(json)!["notes"]!
                .AsArray()
                .Select(note =>
                    $"{note!["string"]}:{note["fret"]} {note["onset"]} {note["duration"]} {note["finger"]} {note["stroke"]} {note["accent"]} {note["group"]}"
                )
        );
    }
}
