using System.Globalization;

namespace Passagework.Instrument;

/// <summary>One place on the neck: a string and a fret, written <c>string:fret</c>.</summary>
/// <remarks>
/// String 1 is the one nearest the floor (the highest-sounding on an ordinarily strung guitar); frets count from the
/// capo, 0 is the open string. The default value is string 1, open.
/// </remarks>
public readonly record struct Place
{
    private readonly int _stringLessOne;

    private Place(int stringNumber, int fret)
    {
        _stringLessOne = stringNumber - 1;
        Fret = fret;
    }

    /// <summary>Counted from 1.</summary>
    public int String => _stringLessOne + 1;

    /// <summary>0 for the open string.</summary>
    public int Fret { get; }

    /// <summary>Whether the string is open.</summary>
    public bool IsOpen => Fret == 0;

    /// <summary>A place on string 1 to 8, fret 0 to 36.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static Place At(int stringNumber, int fret)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(stringNumber, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stringNumber, 8);
        ArgumentOutOfRangeException.ThrowIfNegative(fret);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(fret, 36);
        return new Place(stringNumber, fret);
    }

    /// <summary>Reads <c>6:5</c>; string 1 to 8, fret 0 to 36.</summary>
    public static bool TryParse(string? text, out Place place)
    {
        place = default;
        var parts = text?.Split(':') ?? [];
        if (
            parts.Length != 2
            || !int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out var stringNumber)
            || !int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var fret)
            || stringNumber is < 1 or > 8
            || fret > 36
        )
        {
            return false;
        }

        place = new Place(stringNumber, fret);
        return true;
    }

    /// <summary>Such as <c>6:5</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{String}:{Fret}");
}
