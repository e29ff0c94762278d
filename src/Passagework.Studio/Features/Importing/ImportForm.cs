using System.Diagnostics.CodeAnalysis;

namespace Passagework.Studio.Features.Importing;

/// <summary>What the page that takes music sends.</summary>
[SuppressMessage("Design", "CA1515", Justification = "Filled by the framework.")]
public sealed class ImportForm
{
    /// <summary>Pasted text.</summary>
    public string? Text { get; set; }

    /// <summary>A file.</summary>
    public IFormFile? File { get; set; }

    /// <summary>The ticket of a file of which a line is chosen.</summary>
    public string? Ticket { get; set; }

    /// <summary>Number of the chosen line, from 0.</summary>
    public int? Line { get; set; }
}
