namespace Passagework.Cli.Tests;

/// <summary>What is said of the parts of a file that were not read.</summary>
public sealed class ImportRemarkTests : IDisposable
{
    private readonly Session _session = new();

    [Fact]
    public void Other_voices_are_counted_and_the_one_that_was_read_is_named()
    {
        var (code, _, error) = _session.RunWith(Scores.Of(Scores.FourVoices), "import", "-");

        Assert.Equal(0, code);
        Assert.Equal("note: 3 other voices left out (3 notes); read was voice 1 of part P1\n", error);
    }

    [Fact]
    public void Other_parts_count_too()
    {
        var other =
            "<part id=\"P2\">"
            + Scores.Bar.Replace("<measure number=\"1\">", Scores.FirstMeasure, StringComparison.Ordinal)
            + "</part></score-partwise>";
        var score = Scores
            .Of(Scores.Bar)
            .Replace(
                "</part-list>",
                "<score-part id=\"P2\"><part-name>Bass</part-name></score-part></part-list>",
                StringComparison.Ordinal
            )
            .Replace("</score-partwise>", other, StringComparison.Ordinal);

        var (_, _, error) = _session.RunWith(score, "import", "-");

        Assert.Equal("note: 1 other voice left out (4 notes); read was voice 1 of part P1\n", error);
    }

    [Fact]
    public void Staff_of_tab_beside_notation_is_no_other_voice()
    {
        var file = Path.Combine(_session.Folder, "line.musicxml");
        _session.Run("show", "straight-up", "--as", "musicxml", "-o", file);

        Assert.Equal("", _session.Run("import", file).Error);
    }

    [Fact]
    public void Other_tracks_are_counted()
    {
        var file = Path.Combine(_session.Folder, "two.mid");
        byte[] head = [.. "MThd"u8, 0, 0, 0, 6, 0, 1, 0, 2, 0, 96];
        File.WriteAllBytes(file, [.. head, .. Track(64, 65, 67), .. Track(40)]);

        var (code, _, error) = _session.Run("import", file);

        Assert.Equal(0, code);
        Assert.Contains(
            "note: 1 other track left out (1 note); read was track 1\n",
            error,
            StringComparison.Ordinal
        );
    }

    public void Dispose() => _session.Dispose();

    // A quarter each.
    private static byte[] Track(params byte[] keys)
    {
        byte[] events =
        [
            .. keys.SelectMany(key => new byte[] { 0, 0x90, key, 80, 96, 0x80, key, 0 }),
            0,
            0xFF,
            0x2F,
            0,
        ];
        return [.. "MTrk"u8, 0, 0, 0, (byte)events.Length, .. events];
    }
}
