using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Cli.Tests;

/// <summary>Folders of music.</summary>
public sealed class PiecesSourceTests : IDisposable
{
    private readonly Session _session = new();
    private readonly StringWriter _error = new() { NewLine = "\n" };

    [Fact]
    public void Without_a_folder_there_are_the_built_in_pieces() =>
        Assert.Equal(23, Find(null).OrThrow().Count);

    [Fact]
    public void Every_kind_of_file_is_read_in_the_order_of_names()
    {
        foreach (var form in new[] { "midi", "mxl", "musicxml", "tab", "json" })
        {
            _session.Run(
                "show",
                "groups-of-five-up",
                "--as",
                form,
                "-o",
                Path.Combine(_session.Folder, "x." + form)
            );
        }

        File.Move(Path.Combine(_session.Folder, "x.midi"), Path.Combine(_session.Folder, "a.MID"));
        _session.Write("notes.md", "no music");
        _session.Write("b.txt", _session.Run("show", "straight-up").Out);
        _session.Write("c.xml", Scores.Of(Scores.Bar));

        var music = Find(_session.Folder).OrThrow();

        Assert.Equal(
            ["a.MID", "b.txt", "c.xml", "x.json", "x.musicxml", "x.mxl", "x.tab"],
            music.Select(piece => piece.Name)
        );
        Assert.Equal("", _error.ToString());
    }

    [Fact]
    public void One_broken_file_among_twenty_is_told_and_the_rest_used()
    {
        for (var number = 10; number < 30; number++)
        {
            _session.Write($"{number}.xml", number == 17 ? "<score" : Scores.Of(Scores.Bar));
        }

        var music = Find(_session.Folder).OrThrow();

        Assert.Equal(19, music.Count);
        Assert.Equal(["17.xml"], music.LeftOut.Select(gone => gone.Name));
        Assert.StartsWith("note: 17.xml left out: ", _error.ToString(), StringComparison.Ordinal);
        Assert.Single(_error.ToString().TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Drums_silence_and_dead_links_are_left_out_by_name()
    {
        _session.Write("drums.xml", Scores.Of(Scores.DrumsOnly));
        _session.Write("long.xml", Scores.Of(string.Concat(Enumerable.Repeat(Scores.Bar, 10_000))));
        _session.Write("rests.xml", Scores.Of(Scores.RestsOnly));
        _session.Write("tune.xml", Scores.Of(Scores.Bar));
        _session.Write("voices.xml", Scores.Of(Scores.FourVoices));
        File.CreateSymbolicLink(Path.Combine(_session.Folder, "gone.mid"), "nowhere.mid");

        var music = Find(_session.Folder).OrThrow();

        Assert.Equal(["tune.xml", "voices.xml"], music.Select(piece => piece.Name));
        Assert.Equal(
            ["drums.xml", "gone.mid", "long.xml", "rests.xml"],
            music.LeftOut.Select(gone => gone.Name)
        );
        Assert.StartsWith("Could not find file", music.LeftOut[1].Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_without_music_is_a_fault_that_says_what_counts()
    {
        _session.Write("readme.md", "nothing");

        var fault = Fault(_session.Folder);

        Assert.Contains("no music in this folder", fault, StringComparison.Ordinal);
        Assert.Contains(".musicxml", fault, StringComparison.Ordinal);
    }

    [Fact]
    public void Folder_with_nothing_that_can_be_read_names_the_first_reason()
    {
        _session.Write("a.mid", "no midi");
        _session.Write("b.xml", "<score");

        var fault = Fault(_session.Folder);

        Assert.Contains(
            "a.mid: none of the pieces can be used (2 left out)",
            fault,
            StringComparison.Ordinal
        );
        Assert.Equal("", _error.ToString());
    }

    [Fact]
    public void What_is_no_folder_is_said()
    {
        var file = _session.Write("tune.xml", Scores.Of(Scores.Bar));

        Assert.Contains("is no folder", Fault(file), StringComparison.Ordinal);
        Assert.Contains("there is no such folder", Fault(file + "x"), StringComparison.Ordinal);
    }

    [Fact]
    public void More_than_a_thousand_files_are_refused_before_any_is_read()
    {
        for (var number = 0; number <= 1000; number++)
        {
            _session.Write($"{number}.txt", "");
        }

        Assert.Contains("1001 files are too many", Fault(_session.Folder), StringComparison.Ordinal);
    }

    public void Dispose()
    {
        _session.Dispose();
        _error.Dispose();
    }

    private Outcome<PieceCollection> Find(string? folder) =>
        PiecesSource.Find(
            folder,
            new Terminal(() => Stream.Null, () => Stream.Null, TextWriter.Null, _error),
            Player.At(2),
            Technique.Alternate
        );

    private string Fault(string folder) => Find(folder).TryGet(out _, out var fault) ? "" : fault.ToString();
}
