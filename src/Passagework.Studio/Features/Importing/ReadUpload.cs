using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Studio.Features.Importing;

/// <summary>Reads a file as music that two hands can play.</summary>
internal static class ReadUpload
{
    /// <summary>The line with what was guessed, titled by the file's name where it has no title.</summary>
    public static Outcome<MusicImport> Read(Upload upload, MusicReading reading) =>
        MusicFile.Read(upload.Bytes, reading).Then<MusicImport>(import => Titled(import, upload));

    /// <summary>Why no two hands can play it, with the place in the line; null when they can.</summary>
    public static Fault? Unplayable(MusicImport import) =>
        LineBuilder
            .Build(import.Recipe)
            .Then(line => Realizer.Realize(line, Player.At(2)))
            .TryGet(out _, out var fault)
            ? null
            : fault;

    private static MusicImport Titled(MusicImport import, Upload upload) =>
        string.IsNullOrWhiteSpace(import.Recipe.Title) && upload.Title.Length > 0
            ? import with
            {
                Recipe = import.Recipe with { Title = upload.Title },
            }
            : import;
}
