namespace Passagework.Hands.Explaining;

/// <summary>What one hand does to reach a note, in parts that a page may set apart.</summary>
/// <param name="Lead">From and to, such as <c>4:5 to 6:8</c>; empty where the sentence needs none.</param>
/// <param name="How">How it gets there.</param>
/// <param name="Figure">The least time, such as <c>225 ms</c>; empty where none is asked.</param>
/// <param name="IsAssumed">Whether at least half of that time rests on values that nobody has published.</param>
/// <param name="Rest">How much time there is, and the full stop.</param>
public sealed record MoveSentence(string Lead, string How, string Figure, bool IsAssumed, string Rest)
{
    /// <summary>The whole sentence.</summary>
    public string Text => Lead + How + Figure + Rest;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
