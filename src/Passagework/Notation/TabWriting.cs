namespace Passagework.Notation;

/// <summary>How tab is written.</summary>
public sealed record TabWriting
{
    /// <summary>Narrowest line, in characters.</summary>
    public const int LeastWidth = 60;

    /// <summary>Widest line, in characters: wider text wraps on a screen and is ruined.</summary>
    public const int MostWidth = 76;

    /// <summary>Most characters on a line, 60 to 76.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside this range.</exception>
    public int Width
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, LeastWidth);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostWidth);
            field = value;
        }
    } = MostWidth;

    /// <summary>Whether a row of counting syllables stands above each system.</summary>
    public bool Counts { get; init; } = true;

    /// <summary>Whether the picking hand's strokes are written.</summary>
    public bool Strokes { get; init; } = true;

    /// <summary>Whether the fretting fingers are written.</summary>
    public bool Fingers { get; init; } = true;

    /// <summary>Whether the first note of each group is marked.</summary>
    public bool Groups { get; init; } = true;

    /// <summary>What is said between the beats.</summary>
    public CountSyllables Syllables { get; init; } = CountSyllables.Common;
}
