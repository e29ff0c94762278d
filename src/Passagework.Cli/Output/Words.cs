using System.Globalization;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Cli.Output;

/// <summary>Figures and values in words for people.</summary>
internal static class Words
{
    /// <summary>Below this share of the draws no hand is named as the limit (chosen by us).</summary>
    private const double SureShare = 0.7;

    public static string Of(Limit limit) =>
        limit switch
        {
            Limit.Fretting => "fretting",
            Limit.Picking => "picking",
            _ => "together",
        };

    /// <summary>Who sets the pace, or "either hand" where that is not clear.</summary>
    public static string Limiting(Ceiling ceiling)
    {
        if (ceiling is not { LimitedBy: { } limit, Range: { } range })
        {
            return "nothing";
        }

        if (range.ShareOf(limit) < SureShare)
        {
            return "either hand";
        }

        return limit == Limit.Together ? "the hands' meeting" : $"the {Of(limit)} hand";
    }

    /// <summary>The plausible top tempo in whole beats a minute.</summary>
    public static string Bpm(Ceiling ceiling, int notesPerBeat) =>
        ceiling.Range is { } range
            ? Text($"{60 * range.Low / notesPerBeat:0}–{60 * range.High / notesPerBeat:0}")
            : "no limit";

    public static string Finger(PlayedNote note) =>
        note.Finger switch
        {
            0 => "open",
            1 => "first",
            2 => "second",
            3 => "third",
            _ => "little",
        };

    public static string LayoutOf(Layout? layout) =>
        layout switch
        {
            Layout.Box box => Text($"box {box.Number} near fret {box.Near}"),
            Layout.PerString even => Text($"{even.Count} notes per string from {even.From}"),
            Layout.Joined joined => Text(
                $"boxes {joined.First} and {joined.Second} joined, near fret {joined.Near}"
            ),
            Layout.Diagonal diagonal => Text(
                $"diagonal {string.Join('-', diagonal.Pattern)} from {diagonal.From}"
            ),
            Layout.OneString single => Text($"string {single.String}, frets {single.From} to {single.To}"),
            Layout.StringPair pair => Text(
                $"strings {string.Join(' ', pair.Strings)} of box {pair.Boxes[0]}"
            ),
            Layout.Chain chain => Text(
                $"strings {string.Join(' ', chain.Strings)}, boxes {string.Join(' ', chain.Boxes)}"
            ),
            Layout.OneSide side => Text(
                $"{(side.High ? "higher" : "lower")} side of box {side.Number} near fret {side.Near}"
            ),
            Layout.OpenPosition => "open position",
            Layout.Given => "given places",
            _ => "written note by note",
        };

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
