using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Studio.Features.Importing;

/// <summary>What came of a file that was handed in.</summary>
public abstract record ImportStep
{
    /// <summary>It was read.</summary>
    /// <param name="Upload">The file.</param>
    /// <param name="Import">The line.</param>
    public sealed record Read(Upload Upload, MusicImport Import) : ImportStep;

    /// <summary>It has several lines, of which one has to be chosen.</summary>
    /// <param name="Ticket">To be handed in with the choice.</param>
    /// <param name="FileName">Name of the file.</param>
    /// <param name="Lines">The lines.</param>
    public sealed record Choose(string Ticket, string FileName, IReadOnlyList<MusicLine> Lines) : ImportStep;

    /// <summary>It could not be read, and why.</summary>
    public sealed record Refused(Fault Fault) : ImportStep;
}
