using System.Text;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Setting;

/// <summary>Accidentals inside text: no text face has them, so they are taken from the music font.</summary>
internal static class Accidentals
{
    /// <summary>The sign that a character stands for; 0 for a letter.</summary>
    public static int SignOf(Rune character) =>
        character.Value switch
        {
            '♭' => Glyphs.AccidentalFlat,
            '♮' => Glyphs.AccidentalNatural,
            '♯' => Glyphs.AccidentalSharp,
            0x1D12A => Glyphs.AccidentalDoubleSharp,
            0x1D12B => Glyphs.AccidentalDoubleFlat,
            >= 0xE000 and <= 0xF8FF and var sign => sign,
            _ => 0,
        };
}
