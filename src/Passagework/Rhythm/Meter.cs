using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How many beats of what length make a bar, 2/4 to 12/8.</summary>
/// <remarks>The default value is 4/4. The felt beat of 6/8, 9/8 and 12/8 is the dotted quarter, else the written unit.</remarks>
public readonly record struct Meter
{
    private readonly int _beatsLessFour;
    private readonly int _unitLessFour;

    private Meter(int beats, int unit)
    {
        _beatsLessFour = beats - 4;
        _unitLessFour = unit - 4;
    }

    /// <summary>The upper number of the time signature.</summary>
    public int WrittenBeats => _beatsLessFour + 4;

    /// <summary>The lower number of the time signature: 2, 4, 8 or 16.</summary>
    public int WrittenUnit => _unitLessFour + 4;

    /// <summary>Whether the felt beat is a dotted note (6/8, 9/8, 12/8).</summary>
    public bool IsCompound => WrittenUnit >= 8 && WrittenBeats > 3 && WrittenBeats % 3 == 0;

    /// <summary>Length of the felt beat as a fraction of a whole note.</summary>
    public Fraction Beat => Fraction.Of(IsCompound ? 3 : 1, WrittenUnit);

    /// <summary>Felt beats in a bar.</summary>
    public int BeatsPerBar => IsCompound ? WrittenBeats / 3 : WrittenBeats;

    /// <summary>Length of a bar as a fraction of a whole note.</summary>
    public Fraction Bar => Fraction.Of(WrittenBeats, WrittenUnit);

    /// <summary>Reads 1 to 16 beats over 2, 4, 8 or 16, such as <c>4/4</c> or <c>12/8</c>.</summary>
    public static bool TryParse(string? text, out Meter meter)
    {
        meter = default;
        var parts = text?.Split('/') ?? [];
        if (
            parts.Length != 2
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var beats)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var unit)
            || beats is < 1 or > 16
            || unit is not (2 or 4 or 8 or 16)
        )
        {
            return false;
        }

        meter = new Meter(beats, unit);
        return true;
    }

    /// <summary>Such as <c>4/4</c>.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{WrittenBeats}/{WrittenUnit}");
}
