namespace Passagework.Engraving.Setting;

/// <summary>
/// Words that are set alike. Signs of music stand in them as characters: ♭ ♯ ♮, and code points of the music font.
/// </summary>
/// <param name="Text">The words; any white space parts them.</param>
/// <param name="Strong">Whether they are weighed.</param>
public readonly record struct Phrase(string Text, bool Strong = false)
{
    /// <summary>Plain words.</summary>
    public static implicit operator Phrase(string text) => new(text);
}
