using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Studio.Features.Importing;

/// <summary>Reads a file as music that two hands can play.</summary>
internal static class ReadUpload
{
    /// <summary>The line with what was guessed; refused with the place in the file when it can't be read or played.</summary>
    public static Outcome<MusicImport> Read(Upload upload, MusicReading reading) =>
        MusicFile
            .Read(upload.Bytes, reading)
            .Then(import =>
                LineBuilder
                    .Build(import.Recipe)
                    .Then(line => Realizer.Realize(line, Player.At(2)))
                    .Then<MusicImport>(_ => Titled(import, upload))
            );

    private static MusicImport Titled(MusicImport import, Upload upload) =>
        string.IsNullOrWhiteSpace(import.Recipe.Title) && upload.Title.Length > 0
            ? import with
            {
                Recipe = import.Recipe with { Title = upload.Title },
            }
            : import;
}
