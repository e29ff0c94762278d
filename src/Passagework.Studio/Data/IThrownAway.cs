namespace Passagework.Studio.Data;

/// <summary>A row that can be thrown away and brought back.</summary>
public interface IThrownAway
{
    /// <summary>Which.</summary>
    Guid Id { get; }

    /// <summary>When it was thrown away; null while it is there.</summary>
    DateTimeOffset? ThrownAway { get; set; }
}
