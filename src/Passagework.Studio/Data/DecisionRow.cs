namespace Passagework.Studio.Data;

/// <summary>A choice that was kept, with its reason.</summary>
public sealed class DecisionRow
{
    /// <summary>Part of its address.</summary>
    public Guid Id { get; init; }

    /// <summary>When it was kept.</summary>
    public DateTimeOffset Kept { get; init; }

    /// <summary>What was asked, as JSON: player, filters, exercises, how much each criterion matters.</summary>
    public required string Question { get; init; }

    /// <summary>Address key of the exercise that was chosen.</summary>
    public required string Exercise { get; init; }

    /// <summary>Its title then.</summary>
    public required string Title { get; init; }

    /// <summary>The verdict as it stood on the page.</summary>
    public required string Verdict { get; init; }

    /// <summary>The teacher's own reason; may be empty.</summary>
    public string Reason { get; set; } = "";

    /// <summary>Whether it came with the demo.</summary>
    public bool IsDemo { get; init; }
}
