using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Choosing.Discovery;

/// <summary>The rhythm measures of cells of a space: they hang on length, accents and metre, not on the cell.</summary>
/// <param name="Ambiguity">Share of the places of the beat that accents visit.</param>
/// <param name="ComesOutEven">Share of the usual feels in which it comes out within four bars.</param>
internal readonly record struct CellRhythm(double? Ambiguity, double? ComesOutEven)
{
    /// <summary>The measures of every cell of a space.</summary>
    public static CellRhythm Of(CellSpace space)
    {
        var group = new GroupShape(
            Fraction.Of(space.Length, 1),
            space.Length,
            [.. space.Accents.Select(accent => Fraction.Of(accent, 1))]
        );
        var fit = GroupFit.Of([group], space.Rhythm.Meter, space.Rhythm.NotesPerBeat);
        return new CellRhythm(fit?.Ambiguity?.ToDouble(), fit?.ComesOutEven.ToDouble());
    }
}
