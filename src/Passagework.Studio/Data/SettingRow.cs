namespace Passagework.Studio.Data;

/// <summary>One setting, by name.</summary>
public sealed class SettingRow
{
    /// <summary>Which.</summary>
    public required string Name { get; init; }

    /// <summary>Its value as text.</summary>
    public required string Value { get; set; }
}
