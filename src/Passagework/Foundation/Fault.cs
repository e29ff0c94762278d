namespace Passagework.Foundation;

/// <summary>Why an input was refused: what is wrong, where, and what would be right.</summary>
/// <param name="What">What is wrong, a phrase without a full stop.</param>
/// <param name="Where">JSON path, line and column, or bar and beat; empty when there is only one place.</param>
/// <param name="Right">What would be right, a phrase without a full stop; empty when nothing helpful is known.</param>
public sealed record Fault(string What, string Where = "", string Right = "")
{
    /// <summary>The same fault, found inside <paramref name="outer"/> (prefix of a path).</summary>
    public Fault At(string outer) => this with { Where = Where.Length == 0 ? outer : outer + Where };

    /// <summary>One line: where, what, and what would be right.</summary>
    public override string ToString()
    {
        var place = Where.Length == 0 ? "" : Where + ": ";
        var hint = Right.Length == 0 ? "" : "; " + Right;
        return place + What + hint;
    }
}
