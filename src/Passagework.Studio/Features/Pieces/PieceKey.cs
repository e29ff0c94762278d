using System.Diagnostics.CodeAnalysis;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Which piece: the name of a built-in one, or the number of the teacher's own.</summary>
/// <param name="Text">As it stands in the address.</param>
public readonly record struct PieceKey(string Text)
{
    /// <summary>The key of an own piece.</summary>
    public static PieceKey Of(Guid id) => new(id.ToString("n"));

    /// <summary>Whether it is an own one, and its number.</summary>
    public bool IsOwn(out Guid id) => Guid.TryParseExact(Text, "n", out id);

    /// <summary>Where its page is.</summary>
    [SuppressMessage("Design", "CA1056", Justification = "An address within the studio.")]
    public string Url => $"/pieces/{Text}";

    /// <inheritdoc/>
    public override string ToString() => Text;
}
