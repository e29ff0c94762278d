using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Screens;

/// <summary>
/// Where an exercise tops out, row by row of a table: the span that a ceiling most likely lies in as a line, the ceiling as a
/// dot on it, all on one axis on which a doubling is always as wide.
/// </summary>
/// <example>
/// <c>ScreenSpans.Draw([("beginner", ceiling)], notesPerBeat: 4, widthPx: 110)</c>
/// </example>
public sealed record ScreenSpans
{
    private const double RowPx = 16;
    private const double SidePx = 14;
    private const double LinePx = 1.4;
    private const double DotPx = 3.2;
    private const double TextPx = 13.5;
    private const double LeastGapPx = 24;
    private const double LeastPx = 60;
    private const double MostPx = 2_000;

    private ScreenSpans(ScreenPicture head, ImmutableArray<ScreenPicture?> rows) =>
        (Head, Rows) = (head, rows);

    /// <summary>The figures of the axis, for the head of the column.</summary>
    public ScreenPicture Head { get; }

    /// <summary>One for each row; null where no hand is asked anything, so that there is no ceiling.</summary>
    public ImmutableArray<ScreenPicture?> Rows { get; }

    /// <summary>The spans in felt beats a minute.</summary>
    /// <param name="rows">Whose ceiling each is; in notes a second.</param>
    /// <param name="notesPerBeat">Notes to a felt beat, at least 1.</param>
    /// <param name="widthPx">Width of the column, 60 to 2,000.</param>
    public static Outcome<ScreenSpans> Draw(
        IReadOnlyList<(string Name, Ceiling Ceiling)> rows,
        int notesPerBeat,
        double widthPx
    )
    {
        if (ScreenRules.Within(widthPx, (LeastPx, MostPx), "the width of the spans") is { } fault)
        {
            return fault;
        }

        if (notesPerBeat < 1)
        {
            return new Fault("no notes to a beat", "the spans", "1 or more");
        }

        var spans = rows.Select(row => Span.Of(row.Name, row.Ceiling, 60.0 / notesPerBeat)).ToList();
        var axis = Axis.Over(spans.OfType<Span>(), widthPx);
        return new ScreenSpans(axis.Head(), [.. spans.Select(span => span is null ? null : axis.Row(span))]);
    }

    private sealed record Span(string Name, double Low, double Least, double High)
    {
        public static Span? Of(string name, Ceiling ceiling, double bpmPerNote) =>
            ceiling.Least is { } least
                ? new Span(
                    name,
                    (ceiling.Range?.Low ?? least) * bpmPerNote,
                    least * bpmPerNote,
                    (ceiling.Range?.High ?? least) * bpmPerNote
                )
                : null;

        public string Words() =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{NumberWords.Sentence(Name)}: {Math.Round(Least)} beats a minute, most likely from {Math.Round(Low)} to {Math.Round(High)}."
            );
    }

    // From 25, 50, 100 … that all spans lie between; figures that would meet are left out from the left.
    private sealed record Axis(double From, double To, double WidthPx)
    {
        private const double First = 25;

        public static Axis Over(IEnumerable<Span> spans, double widthPx)
        {
            var all = spans.ToList();
            var (low, high) =
                all.Count == 0 ? (First, 2 * First) : (all.Min(span => span.Low), all.Max(span => span.High));
            var from = First * Math.Pow(2, Math.Floor(Math.Log2(Math.Max(low, 1) / First)));
            var to = First * Math.Pow(2, Math.Ceiling(Math.Log2(Math.Max(high, 1) / First)));
            return new Axis(from, Math.Max(to, 2 * from), widthPx);
        }

        public ScreenPicture Head()
        {
            var elements = new CompactSvg(new PxFrame(1));
            var ticks = Ticks();
            foreach (var bpm in ticks)
            {
                var text = new TextMark(Figure(bpm), new Point(X(bpm), RowPx - 4), Face.Sans, TextPx)
                {
                    Id = "",
                    Kind = "tick",
                    Ink = Ink.Soft,
                    Anchor = Anchor.Middle,
                };
                elements.Add(ReadyMark.Of(text));
            }

            var words =
                $"Beats a minute from {Figure(ticks[0])} to {Figure(ticks[^1])}, each step a doubling.";
            return ScreenPicture.Of(elements, (WidthPx, RowPx), "", words);
        }

        public ScreenPicture Row(Span span)
        {
            var elements = new CompactSvg(new PxFrame(1));
            var line = new LineMark(
                new Point(X(span.Low), RowPx / 2),
                new Point(X(span.High), RowPx / 2),
                LinePx
            )
            {
                Id = "",
                Kind = "span",
            };
            var dot = new CircleMark(new Point(X(span.Least), RowPx / 2), DotPx)
            {
                Id = "",
                Kind = "ceiling",
            };
            elements.Add(ReadyMark.Of(line));
            elements.Add(ReadyMark.Of(dot));
            return ScreenPicture.Of(elements, (WidthPx, RowPx), "", span.Words());
        }

        private List<double> Ticks()
        {
            var ticks = new List<double>();
            for (var bpm = To; bpm >= From; bpm /= 2)
            {
                if (ticks.Count == 0 || X(ticks[^1]) - X(bpm) >= LeastGapPx)
                    ticks.Add(bpm);
            }

            ticks.Reverse();
            return ticks;
        }

        private double X(double bpm) =>
            SidePx + ((WidthPx - (2 * SidePx)) * Math.Log2(Math.Max(bpm, 1) / From) / Math.Log2(To / From));

        private static string Figure(double bpm) => Math.Round(bpm, 1).ToString(CultureInfo.InvariantCulture);
    }
}
