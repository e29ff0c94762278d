using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>In which order the bars of a part are played.</summary>
internal static class RepeatOrder
{
    private const int MostBars = 100_000;

    /// <summary>Bar indices as written.</summary>
    public static ImmutableArray<int> AsWritten(IReadOnlyList<ReadBar> bars) =>
        [.. Enumerable.Range(0, bars.Count)];

    /// <summary>Bar indices with repeats and endings played; refused when that gets endless.</summary>
    /// <remarks>A repeat goes back to the last sign that begins one, else to behind the repeat before, else to the start.</remarks>
    public static Outcome<ImmutableArray<int>> AsPlayed(IReadOnlyList<ReadBar> bars)
    {
        var order = ImmutableArray.CreateBuilder<int>(bars.Count);
        var start = 0;
        for (var from = 0; from < bars.Count; from = start)
        {
            var section = Section.From(bars, from);
            for (var turn = 1; turn <= section.Times; turn++)
            {
                order.AddRange(section.Bars(bars, turn));
                if (order.Count > MostBars)
                {
                    return new Fault(
                        "more than 100,000 bars when repeats are played",
                        Right: "repeats as written"
                    );
                }
            }

            start = section.End;
        }

        return order.ToImmutable();
    }

    /// <summary>A stretch that is played a number of times, with its endings.</summary>
    private sealed record Section(int Start, int End, int Times)
    {
        public static Section From(IReadOnlyList<ReadBar> bars, int start)
        {
            var times = 1;
            var end = start;
            var inEnding = false;
            for (; end < bars.Count; end++)
            {
                var bar = bars[end];
                if (end > start && bar.RepeatStarts && !inEnding)
                {
                    break;
                }

                inEnding |= bar.Ending.Count > 0;
                times = Math.Max(times, bar.Ending.DefaultIfEmpty(1).Max());
                times = Math.Max(times, bar.RepeatTimes);
                var closes = bar.RepeatTimes > 0 || bar.EndingStops;
                var endingFollows = end + 1 < bars.Count && bars[end + 1].Ending.Count > 0;
                inEnding &= !bar.EndingStops;
                if (closes && !endingFollows)
                {
                    end++;
                    break;
                }
            }

            return new Section(start, end, times);
        }

        /// <summary>The bars of one turn: an ending only in its turns, and nothing behind one that leads back.</summary>
        public IEnumerable<int> Bars(IReadOnlyList<ReadBar> bars, int turn)
        {
            var silent = false;
            for (var at = Start; at < End; at++)
            {
                var bar = bars[at];
                if (bar.Ending.Count > 0)
                {
                    silent = !bar.Ending.Contains(turn);
                }

                if (!silent)
                {
                    yield return at;
                }

                silent &= !bar.EndingStops;
            }
        }
    }
}
