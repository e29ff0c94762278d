namespace Passagework.Hands;

/// <summary>How well a figure is known.</summary>
public enum Provenance
{
    /// <summary>Read in the source named.</summary>
    Published,

    /// <summary>Computed from published figures.</summary>
    Derived,

    /// <summary>What practitioners agree on.</summary>
    CommonPractice,

    /// <summary>A default of ours that nobody has published: a guess.</summary>
    Assumed,
}
