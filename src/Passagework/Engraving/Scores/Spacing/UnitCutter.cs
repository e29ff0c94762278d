using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Scores;

/// <summary>Cuts bars that are too wide or too long for a line: at beats, and beats themselves into halves.</summary>
/// <param name="meter">The metre.</param>
/// <param name="line">Room in a line, and the most time on it in whole notes.</param>
/// <param name="measure">How wide a piece is.</param>
internal sealed class UnitCutter(
    Meter meter,
    (double Room, double Time) line,
    Func<ImmutableArray<Column>, BreakUnit> measure
)
{
    /// <summary>Pieces that each fit a line; a fault where not even one note does.</summary>
    public Outcome<ImmutableArray<ImmutableArray<Column>>> Cut(ImmutableArray<ImmutableArray<Column>> bars)
    {
        var pieces = ImmutableArray.CreateBuilder<ImmutableArray<Column>>();
        foreach (var bar in bars)
        {
            BeamRuns.Join(bar.AsSpan());
            if (IsShort(bar) && Fits(bar))
            {
                pieces.Add(bar);
                continue;
            }

            foreach (var beat in Beats(bar))
            {
                if (!TryHalve(beat, pieces))
                {
                    return new Fault(
                        "the line is too narrow for a single note",
                        "the width of the score",
                        "a wider line or a smaller staff"
                    );
                }
            }
        }

        return pieces.ToImmutable();
    }

    private bool TryHalve(ImmutableArray<Column> piece, ImmutableArray<ImmutableArray<Column>>.Builder pieces)
    {
        BeamRuns.Join(piece.AsSpan());
        if (Fits(piece))
        {
            pieces.Add(piece);
            return true;
        }

        var half = piece.Length / 2;
        return half > 0 && TryHalve(piece[..half], pieces) && TryHalve(piece[half..], pieces);
    }

    private bool IsShort(ImmutableArray<Column> bar) =>
        bar.Sum(column => column.Written.Length.ToDouble()) <= line.Time + SystemBreaks.TimeSlack;

    private bool Fits(ImmutableArray<Column> piece)
    {
        var unit = measure(piece);
        return SystemBreaks.Fits(
            unit.Natural - unit.Spared.Natural,
            unit.Least - unit.Spared.Least,
            line.Room
        );
    }

    private IEnumerable<ImmutableArray<Column>> Beats(ImmutableArray<Column> bar)
    {
        var first = 0;
        for (var i = 1; i < bar.Length; i++)
        {
            var (before, here) = (bar[i - 1].Written, bar[i].Written);
            var onBeat = (here.Onset.Modulo(meter.Bar) / meter.Beat).IsWhole;
            var sameTuplet = here.Tuplet is not null && here.Tuplet == before.Tuplet;
            if (onBeat && !sameTuplet && here.BeamGroup != before.BeamGroup)
            {
                yield return bar[first..i];
                first = i;
            }
        }

        yield return bar[first..];
    }
}
