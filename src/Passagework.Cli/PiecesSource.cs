using System.CommandLine;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Cli;

/// <summary>The music against which exercises are judged, as it is named on the command line.</summary>
internal static class PiecesSource
{
    private const string OptionName = "--pieces";
    private const int MostFiles = 1000;

    /// <summary>The option that names it.</summary>
    public static Option<string?> Option() =>
        Arguments.Text(
            OptionName,
            "A folder of music to judge by (MusicXML, MXL, MIDI, text tab, exercise files); the built-in pieces by default.",
            "DIR"
        );

    /// <summary>
    /// The pieces of a folder in the order of their names, or the built-in ones. What can't be used is told on standard error, and
    /// is a fault only when nothing else is there.
    /// </summary>
    public static Outcome<PieceCollection> Find(
        string? folder,
        Terminal terminal,
        Player player,
        Technique technique
    ) =>
        folder is null
            ? PieceCollection.BuiltIn(player, technique)
            : Files(folder)
                .Then(files =>
                    PieceCollection.Of(
                        files.Select(file => (Path.GetFileName(file), Read(file, terminal))),
                        player,
                        technique
                    )
                )
                .Then<PieceCollection>(music => Told(music, terminal));

    private static Outcome<string[]> Files(string folder)
    {
        if (!Directory.Exists(folder))
        {
            var what = File.Exists(folder) ? "is no folder" : "there is no such folder";
            return new Fault(what, $"{OptionName} {folder}", "a folder that holds music");
        }

        var files = Directory
            .EnumerateFiles(folder)
            .Where(file =>
                PieceSource.Endings.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase)
            )
            .Order(StringComparer.Ordinal)
            .ToArray();
        return files.Length switch
        {
            0 => new Fault(
                "no music in this folder",
                $"{OptionName} {folder}",
                $"files that end in {string.Join(", ", PieceSource.Endings)}"
            ),
            > MostFiles => new Fault(
                $"{files.Length} files are too many",
                $"{OptionName} {folder}",
                $"at most {MostFiles} in one folder"
            ),
            _ => files,
        };
    }

    private static Outcome<Line> Read(string file, Terminal terminal)
    {
        try
        {
            return PieceSource.Read(file, terminal).TryGet(out var piece, out var fault)
                ? piece.Line
                : Inside(fault, file);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            return new Fault(broken.Message);
        }
    }

    // The name of the file is said anyway.
    private static Fault Inside(Fault fault, string file) =>
        fault.Where == file ? fault with { Where = "" } : fault;

    private static PieceCollection Told(PieceCollection music, Terminal terminal)
    {
        foreach (var (name, why) in music.LeftOut)
        {
            terminal.Error.WriteLine($"note: {name} left out: {why.ReplaceLineEndings(" ")}");
        }

        return music;
    }
}
