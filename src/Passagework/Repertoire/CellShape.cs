using System.Globalization;
using System.Text;
using Passagework.Foundation;

namespace Passagework.Repertoire;

/// <summary>A figure of a few notes wherever it begins: the intervals between them and their coarse rhythm.</summary>
/// <remarks>
/// The default holds no notes. How long the last note lasts does not count. One interval takes 8 bits, one rhythm step 2,
/// the number of notes 4, so that shapes are compared as numbers.
/// </remarks>
public readonly record struct CellShape : IComparable<CellShape>
{
    /// <summary>Fewest notes of a figure.</summary>
    public const int FewestNotes = 3;

    /// <summary>Most notes of a figure.</summary>
    public const int MostNotes = 12;

    private const int IntervalBits = 8;
    private const int StepBits = 2;
    private const int CountBits = 4;
    private readonly UInt128 _code;

    private CellShape(UInt128 code) => _code = code;

    /// <summary>Number of notes.</summary>
    public int Notes => (int)(_code & ((1 << CountBits) - 1));

    /// <summary>The shape of notes that follow one another.</summary>
    /// <param name="keys">MIDI keys, 3 to 12 of them.</param>
    /// <param name="onsets">When each begins, ascending.</param>
    /// <exception cref="ArgumentException">Other numbers of notes.</exception>
    public static CellShape Of(ReadOnlySpan<int> keys, ReadOnlySpan<Fraction> onsets)
    {
        if (keys.Length is < FewestNotes or > MostNotes || onsets.Length != keys.Length)
        {
            throw new ArgumentException("A figure has 3 to 12 notes, each with its onset.", nameof(keys));
        }

        UInt128 code = 0;
        for (var i = keys.Length - 1; i >= 1; i--)
        {
            var step =
                i < 2
                    ? RhythmStep.Even
                    : RhythmSteps.Of(onsets[i - 1] - onsets[i - 2], onsets[i] - onsets[i - 1]);
            code = (code << StepBits) | (uint)step;
            code = (code << IntervalBits) | (uint)(keys[i] - keys[i - 1] + 128);
        }

        return new CellShape((code << CountBits) | (uint)keys.Length);
    }

    /// <summary>Semitones from a note to the next.</summary>
    /// <param name="number">From 0 to two less than the notes.</param>
    public int Interval(int number) => (int)(Part(number) & ((1 << IntervalBits) - 1)) - 128;

    /// <summary>How the time after a note compares with the time before it.</summary>
    /// <param name="number">From 0, the step at the second note, to three less than the notes.</param>
    public RhythmStep Step(int number) =>
        (RhythmStep)(int)((Part(number + 1) >> IntervalBits) & ((1 << StepBits) - 1));

    /// <summary>A fixed order without musical meaning.</summary>
    public int CompareTo(CellShape other) => _code.CompareTo(other._code);

    /// <summary>Semitones, with &lt; before a quicker and &gt; before a slower step: <c>+3 +2 &gt;-2</c>.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        for (var i = 0; i < Notes - 1; i++)
        {
            var step = i == 0 ? RhythmStep.Even : Step(i - 1);
            var sign = step switch
            {
                RhythmStep.Quicker => "<",
                RhythmStep.Slower => ">",
                _ => "",
            };
            text.Append(i == 0 ? "" : " ")
                .Append(sign)
                .Append(Interval(i).ToString("+0;-0;0", CultureInfo.InvariantCulture));
        }

        return text.ToString();
    }

    private UInt128 Part(int number)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(number);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, Notes - 2);
        return _code >> (CountBits + (number * (IntervalBits + StepBits)));
    }

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator <(CellShape a, CellShape b) => a.CompareTo(b) < 0;

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator >(CellShape a, CellShape b) => a.CompareTo(b) > 0;

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator <=(CellShape a, CellShape b) => a.CompareTo(b) <= 0;

    /// <inheritdoc cref="CompareTo"/>
    public static bool operator >=(CellShape a, CellShape b) => a.CompareTo(b) >= 0;
}
