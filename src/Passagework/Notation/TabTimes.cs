using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Settles when everything sounds: lengths, ties, rests of empty bars, repeats.</summary>
internal sealed class TabTimes
{
    private const long FinestGrid = 1L << 40;
    private readonly TabPiece _piece;
    private readonly TabReading _options;
    private readonly TabFindings _findings;
    private readonly Meter _meter;

    private TabTimes(TabPiece piece, TabReading options, TabFindings findings)
    {
        _piece = piece;
        _options = options;
        _findings = findings;
        _meter = piece.Header.Meter ?? default;
    }

    /// <summary>The piece with a length for every event, tied notes joined and repeats written out.</summary>
    public static Outcome<TabPiece> Settle(TabPiece piece, TabReading options, TabFindings findings)
    {
        var times = new TabTimes(piece, options, findings);
        var isWritten = times.FindLengths();
        if ((times.GridFault() ?? (isWritten ? times.CheckBars() : null)) is { } fault)
        {
            return fault;
        }

        var meter = piece.Header.Meter ?? (isWritten ? TabMeter.Guess(piece.Bars) : default);
        var start =
            piece.Header.Start ?? (isWritten ? TabMeter.PickUp(piece.Bars, meter, findings) : Fraction.Zero);
        times.JoinTies();
        return times
            .WriteOutRepeats()
            .Then<TabPiece>(bars => piece with { Bars = bars, Meter = meter, Start = start });
    }

    // Whether every note's length was written; what has none gets the option's.
    private bool FindLengths()
    {
        TabReadBar? unwritten = null;
        foreach (var bar in _piece.Bars)
        {
            if (bar.Events.Count == 0)
            {
                AddWholeRest(bar);
            }
            else if (bar.Events.Exists(note => note.Length is null) && !TabCounts.TryTime(bar, _meter))
            {
                unwritten ??= bar;
                bar.Events.ForEach(note => note.Length = _options.UnwrittenLength);
            }
        }

        if (unwritten is null)
        {
            return true;
        }

        _findings.Warn(
            $"no rhythm is written, every note lasts {_options.UnwrittenLength}{Suggestion()}",
            unwritten.Spot
        );
        return false;
    }

    private void AddWholeRest(TabReadBar bar)
    {
        _findings.Warn("an empty bar, read as a bar of rest", bar.Spot);
        bar.Events.Add(
            new TabReadEvent
            {
                Column = 0,
                End = 0,
                Spot = bar.Spot,
                Length = _meter.Bar,
            }
        );
    }

    // Dashes are no rhythm; where all bars are equally wide they may suggest one, which a person has to confirm.
    private string Suggestion()
    {
        var widths = _piece.Bars.Where(bar => bar.Closed).Select(bar => bar.Columns).Distinct().ToList();
        return widths is [var width] && width % _meter.WrittenBeats == 0
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"; all bars are {width} columns wide, so a column may stand for {_meter.Bar / Fraction.Of(width)}"
            )
            : "";
    }

    // All lengths must have a common grid that 64-bit fractions can hold with room to spare.
    private Fault? GridFault()
    {
        var grid = 1L;
        foreach (var note in _piece.Bars.SelectMany(bar => bar.Events))
        {
            grid = WholeNumbers.Lcm(grid, note.Length!.Value.Denominator); // FindLengths left none without
            if (grid > FinestGrid)
            {
                return new Fault(
                    "lengths without a common grid",
                    note.Spot.ToString(),
                    "lengths such as e, q., s3"
                );
            }
        }

        return null;
    }

    // With a metre written, every bar but the first and the last lasts as long as it says.
    private Fault? CheckBars()
    {
        if (_piece.Header.Meter is null)
        {
            return null;
        }

        var start = (_piece.Header.Start ?? Fraction.Zero).Modulo(_meter.Bar);
        for (var i = 0; i < _piece.Bars.Count; i++)
        {
            var bar = _piece.Bars[i];
            var full = i == 0 && _piece.Header.Start is not null ? _meter.Bar - start : _meter.Bar;
            var lasts = LengthOf(bar);
            var mayBeShort = i == _piece.Bars.Count - 1 || (i == 0 && _piece.Header.Start is null);
            if (lasts > full || (lasts < full && !mayBeShort))
            {
                var number = (i + 1).ToString(CultureInfo.InvariantCulture);
                return new Fault($"bar {number} lasts {lasts}", bar.Spot.ToString(), $"{full} in {_meter}");
            }
        }

        return null;
    }

    /// <summary>How long a bar is by its events.</summary>
    public static Fraction LengthOf(TabReadBar bar) =>
        bar.Events.Aggregate(Fraction.Zero, (sum, note) => sum + note.Length!.Value); // FindLengths left none without

    // A note in brackets at the beginning of a bar, the same as the last before, holds that on.
    private void JoinTies()
    {
        TabReadEvent? before = null;
        foreach (var bar in _piece.Bars)
        {
            var first = bar.Events[0];
            if (first.InBrackets && before is not null && Same(before, first))
            {
                before.Length += first.Length;
                bar.Events.RemoveAt(0);
            }

            foreach (var ghost in bar.Events.Where(note => note.InBrackets))
            {
                ghost.Mark(TabMarkKind.Ghost, "in brackets", ghost.Spot);
            }

            before = bar.Events.Count > 0 ? bar.Events[^1] : before;
        }
    }

    private static bool Same(TabReadEvent one, TabReadEvent other) =>
        one.Place is not null && one.Place == other.Place && one.With.SequenceEqual(other.With);

    private Outcome<List<TabReadBar>> WriteOutRepeats()
    {
        var all = new List<TabReadBar>();
        var section = 0;
        var events = 0L;
        foreach (var bar in _piece.Bars)
        {
            section = bar.StartsRepeat ? all.Count : section;
            all.Add(bar);
            events += bar.Events.Count;
            if (bar.Times > 1)
            {
                var repeated = all.GetRange(section, all.Count - section);
                events += repeated.Sum(part => (long)part.Events.Count) * (bar.Times - 1);
                if (events > TabPiece.MostEvents)
                {
                    return new Fault(
                        "repeats make too many notes",
                        bar.Spot.ToString(),
                        $"at most {TabPiece.MostEvents}"
                    );
                }

                for (var time = 1; time < bar.Times; time++)
                {
                    all.AddRange(repeated);
                }

                _findings.Warn($"repeated bars are written out {bar.Times} times", bar.Spot);
                section = all.Count;
            }
        }

        return all;
    }
}
