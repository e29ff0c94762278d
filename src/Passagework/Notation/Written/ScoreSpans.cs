using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Where the tuplets of a bar lie.</summary>
/// <remarks>
/// A beat whose cuts all fall on halves of halves is plain, any other is a tuplet. A tuplet takes in following beats as
/// long as none of them begins with a note and it divides into equal parts throughout.
/// </remarks>
internal sealed class ScoreSpans
{
    private const int MostParts = 15;
    private const long FinestDivision = 1 << 12;
    private readonly ImmutableSortedSet<Fraction> _cuts;
    private readonly Meter _meter;

    /// <summary>The spans of one bar.</summary>
    /// <param name="cuts">Where notes and rests begin and end, after the bar line.</param>
    /// <param name="meter">The metre.</param>
    public ScoreSpans(IEnumerable<Fraction> cuts, Meter meter)
    {
        _cuts = [.. cuts];
        _meter = meter;
    }

    /// <summary>The spans of the bar from first to last; null when one would be divided too finely to write.</summary>
    public ImmutableArray<ScoreSpan>? All()
    {
        var spans = ImmutableArray.CreateBuilder<ScoreSpan>();
        for (var start = Fraction.Zero; start < _meter.Bar; start = spans[^1].End)
        {
            if (SpanAt(start) is not { } span || span.Unit < NoteValue.Shortest)
            {
                return null;
            }

            spans.Add(span);
        }

        return spans.ToImmutable();
    }

    private ScoreSpan? SpanAt(Fraction start)
    {
        var end = start + _meter.Beat;
        if (Inside(start, end).All(IsPlain))
        {
            return new ScoreSpan(start, end, 1, 1);
        }

        return Wide(start, end) ?? Tuplet(start, end);
    }

    // A tuplet over several beats: to the first that ends with a note, if it divides otherwise than beat by beat.
    private ScoreSpan? Wide(Fraction start, Fraction end)
    {
        var beats = 1;
        for (; end < _meter.Bar && !_cuts.Contains(end); beats++)
        {
            end += _meter.Beat;
        }

        var parts = Division(start, end);
        var oneKind = parts % 2 == 1 && parts <= MostParts && parts % beats != 0;
        return oneKind ? Of(start, end, (int)parts) : null;
    }

    private ScoreSpan? Tuplet(Fraction start, Fraction end)
    {
        var parts = Division(start, end);
        if (parts > FinestDivision)
        {
            return null;
        }

        var even = Inside(start, end).Count() == parts - 1;
        var odd = parts >> System.Numerics.BitOperations.TrailingZeroCount(parts);
        return Of(start, end, (int)(even && parts <= MostParts ? parts : odd));
    }

    private static ScoreSpan Of(Fraction start, Fraction end, int parts)
    {
        // The unit must be a plain value: the odd factor of the length stays in the normal number.
        var length = (end - start).Numerator;
        var odd = (int)(length >> System.Numerics.BitOperations.TrailingZeroCount(length));
        var normal = odd;
        while (2 * normal <= parts || (odd == 3 && normal == 3 && parts == 5))
        {
            normal *= 2;
        }

        return new ScoreSpan(start, end, parts, normal);
    }

    // Equal parts of the span, on whose borders all cuts fall.
    private long Division(Fraction start, Fraction end)
    {
        var parts = 1L;
        foreach (var cut in Inside(start, end))
        {
            parts = WholeNumbers.Lcm(parts, ((cut - start) / (end - start)).Denominator);
            if (parts > FinestDivision)
            {
                break;
            }
        }

        return parts;
    }

    private IEnumerable<Fraction> Inside(Fraction start, Fraction end) =>
        _cuts.Where(cut => cut > start && cut < end);

    private static bool IsPlain(Fraction cut) => (cut.Denominator & (cut.Denominator - 1)) == 0;
}
