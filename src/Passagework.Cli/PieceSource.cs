using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Repertoire;

namespace Passagework.Cli;

/// <summary>A piece of music as it is named on the command line.</summary>
/// <param name="Name">Its built-in id, or the name of its file.</param>
/// <param name="Line">Its melody, not yet planned for any hands.</param>
/// <param name="Remarks">What was guessed, changed or left out when it was read.</param>
internal sealed record PieceSource(string Name, Line Line, IReadOnlyList<string> Remarks)
{
    /// <summary>Endings of files that hold music.</summary>
    public static readonly IReadOnlyList<string> Endings =
    [
        ".musicxml",
        ".xml",
        ".mxl",
        ".mid",
        ".midi",
        ".tab",
        ".txt",
        ".json",
    ];

    private static readonly MusicReading Melody = new() { TopNotesOnly = true };

    /// <summary>What people call it.</summary>
    public string Title => Line.Recipe.Title ?? Name;

    /// <summary>A file, standard input for <c>-</c>, or a piece of the built-in repertoire.</summary>
    public static Outcome<PieceSource> Find(string name, Terminal terminal)
    {
        if (name == "-" || Path.Exists(name) || LooksLikeFile(name))
        {
            return Read(name, terminal);
        }

        var (id, line) = BuiltInPieces.Lines.FirstOrDefault(piece => piece.Id == name);
        return line is null
            ? new Fault(
                $"there is no file and no built-in piece {Quote.Short(name)}",
                Right: NearestWord.Hint(name, BuiltInPieces.Ids)
            )
            : new PieceSource(id, line, []);
    }

    /// <summary>Reads the melody of a file; a fault names the file.</summary>
    public static Outcome<PieceSource> Read(string file, Terminal terminal)
    {
        var read = file.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
            ? InputFile
                .Read(file, terminal)
                .Then(bytes => RecipeJson.Read(bytes))
                .Then<ImportSource>(recipe => new ImportSource(recipe, []))
            : ImportSource.Read(file, Melody, terminal);
        var name = file == "-" ? "piece" : Path.GetFileNameWithoutExtension(file);
        return read.Then(import =>
            LineBuilder
                .Build(import.Recipe)
                .Then<PieceSource>(line => new PieceSource(name, line, import.Remarks))
        );
    }

    private static bool LooksLikeFile(string name) =>
        Endings.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase)
        || name.Contains('/', StringComparison.Ordinal)
        || name.Contains('\\', StringComparison.Ordinal);
}
