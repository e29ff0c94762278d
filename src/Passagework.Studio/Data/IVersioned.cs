namespace Passagework.Studio.Data;

/// <summary>A row that two pages may change at once: the second one is told.</summary>
public interface IVersioned
{
    /// <summary>Raised by every change.</summary>
    int Version { get; set; }
}
