namespace Passagework.Studio.Data;

/// <summary>What a teacher gives an exercise for a criterion of the teacher's own.</summary>
public sealed class MarkRow
{
    /// <summary>Address key of the exercise: a library id, or the id of an own one.</summary>
    public required string Exercise { get; init; }

    /// <summary>The criterion, such as <c>fits-my-band</c>.</summary>
    public required string Criterion { get; init; }

    /// <summary>0 worst to 1 best.</summary>
    public double Value { get; set; }
}
