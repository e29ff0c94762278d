using System.Text.Json.Nodes;

namespace Passagework.Cli.Tests;

/// <summary>Files for and from elsewhere, through the command.</summary>
public sealed class ExchangeTests : IDisposable
{
    private readonly Session _session = new();

    [Theory]
    [InlineData("musicxml", "groups-of-five-up")]
    [InlineData("mxl", "slurred-threes-down")]
    [InlineData("musicxml", "thumb-and-fingers-out-and-back")]
    public void Score_comes_back_with_places_fingers_and_strokes(string form, string exercise)
    {
        var file = Path.Combine(_session.Folder, "line." + form);
        Assert.Equal(0, _session.Run("show", exercise, "--as", form, "-o", file).Code);

        var (code, idea, _) = _session.Run("import", file);

        Assert.Equal(0, code);
        Assert.Equal(
            Notes(_session.Run("show", exercise, "--json").Out),
            Notes(_session.RunWith(idea, "show", "-", "--json").Out)
        );
    }

    [Fact]
    public void Midi_goes_through_a_pipe_and_comes_back_with_its_pitches()
    {
        Assert.Equal(0, _session.Run("show", "groups-of-five-up", "--swing", "2/3", "--as", "midi").Code);
        var file = Path.Combine(_session.Folder, "line.mid");
        File.WriteAllBytes(file, _session.Bytes.ToArray());

        var (code, idea, _) = _session.Run("import", file);

        Assert.Equal(0, code);
        Assert.Equal("2/3", (string?)JsonNode.Parse(idea)!["rhythm"]!["swing"]);
        Assert.Equal(
            Pitches(_session.Run("show", "groups-of-five-up", "--json").Out),
            Pitches(_session.RunWith(idea, "show", "-", "--json").Out)
        );
    }

    [Theory]
    [InlineData("musicxml", "--track", "1", "MusicXML has parts and voices")]
    [InlineData("midi", "--part", "P1", "MIDI files have tracks")]
    [InlineData("tab", "--voice", "1", "text tab has one line only")]
    [InlineData("midi", "--track", "one", "a whole number from 1")]
    [InlineData("midi", "--track", "9", "track")]
    [InlineData("musicxml", "--part", "P9", "P1")]
    public void Choice_that_the_file_does_not_offer_is_refused(
        string form,
        string option,
        string value,
        string right
    )
    {
        var file = Path.Combine(_session.Folder, "line." + form);
        _session.Run("show", "straight-up", "--as", form, "-o", file);

        var (code, output, error) = _session.Run("import", file, option, value);

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(right, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("<html><body/></html>", "no MusicXML score")]
    [InlineData("<?xml version=\"1.0\"?><score-partwise>", "")]
    [InlineData("PK not a zip", "")]
    [InlineData("MThd", "")]
    public void File_that_only_begins_right_is_refused_in_one_line(string text, string what)
    {
        var (code, output, error) = _session.RunWith(text, "import", "-");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(what, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd('\n').Split('\n'));
    }

    public void Dispose() => _session.Dispose();

    private static string Notes(string json) =>
        Lines(
            json,
            note =>
                $"{note["string"]}:{note["fret"]} {note["onset"]} {note["duration"]} {note["finger"]} {note["stroke"]} {note["accent"]}"
        );

    private static string Pitches(string json) =>
        Lines(json, note => $"{note["midi"]} {note["onset"]} {note["duration"]}");

    private static string Lines(string json, Func<JsonNode, string> line) =>
        string.Join('\n', JsonNode.Parse(json)!["notes"]!.AsArray().Select(note => line(note!)));
}
