namespace Passagework.Theory;

/// <summary>How a room names the seven natural notes and what is raised or lowered; files always use letters A to G.</summary>
public enum NoteNaming
{
    /// <summary>A to G with signs: B, B♭, F♯.</summary>
    Letters,

    /// <summary>With H for B and B for B flat, and syllables for signs: H, B, Fis, Es.</summary>
    LettersWithH,

    /// <summary>Do to Si with signs: Si, Si♭, Fa♯.</summary>
    Syllables,
}
