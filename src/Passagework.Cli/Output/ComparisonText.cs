using System.Text;
using Passagework.Hands;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli.Output;

/// <summary>Two measurements side by side for people.</summary>
internal static class ComparisonText
{
    /// <summary>From this share of the draws on a difference counts as clear (chosen by us).</summary>
    private const double SureShare = 0.9;

    public static string Of(
        (string Name, Measurement Measured) one,
        (string Name, Measurement Measured) other,
        string player
    )
    {
        var rows = new List<(string What, string One, string Other)> { ("", one.Name, other.Name) };
        Counts(rows, one.Measured, other.Measured);
        Times(rows, one.Measured, other.Measured);
        var width = rows.Max(row => row.What.Length);
        var first = rows.Max(row => row.One.Length);
        var text = new StringBuilder($"Side by side, {player} player\n\n");
        foreach (var (what, left, right) in rows)
        {
            text.Append(what.PadRight(width))
                .Append("  ")
                .Append(left.PadRight(first))
                .Append("  ")
                .Append(right)
                .Append('\n');
        }

        return text.Append('\n').Append(Verdict(one, other)).Append('\n').ToString();
    }

    private static void Counts(List<(string, string, string)> rows, Measurement one, Measurement other)
    {
        Row("notes", measured => Text($"{measured.Realization.Notes.Length}"));
        Row(
            "inside / outside changes",
            measured => Text($"{measured.Picking.Inside} / {measured.Picking.Outside}")
        );
        Row("strokes carried on", measured => Text($"{measured.Picking.SweepSteps}"));
        Row("skipped strings", measured => Text($"{measured.Picking.Skips}"));
        Row(
            "changes after down / up",
            measured => Text($"{measured.Picking.AfterDown} / {measured.Picking.AfterUp}")
        );
        Row("rolls", measured => Text($"{measured.Fretting.Rolls}"));
        Row("same finger elsewhere", measured => Text($"{measured.Fretting.SameFingerMoves}"));
        Row("shifts", measured => Text($"{measured.Fretting.Shifts}"));
        Row("effective fingers", measured => Text($"{measured.Fretting.EffectiveFingers:0.00}"));
        Row("balance of the hands", measured => measured.Balance is { } value ? Text($"{value:0.00}") : "-");
        Row("even load", measured => measured.EvenLoad is { } value ? Text($"{value:0.00}") : "-");

        void Row(string what, Func<Measurement, string> value) => rows.Add((what, value(one), value(other)));
    }

    private static void Times(List<(string, string, string)> rows, Measurement one, Measurement other)
    {
        Row("top tempo, notes a second", measured => Range(measured.Ceiling));
        Row("set by", measured => Limiting(measured.Ceiling));
        Row(
            "of the plain scale",
            measured => measured.RatioToScale is { } ratio ? Text($"{100 * ratio:0} %") : "-"
        );
        Row("bars to come home", measured => measured.Fit is { } fit ? Text($"{fit.BarsToRealign}") : "-");
        Row(
            "places of the beat visited",
            measured => measured.Fit?.Ambiguity is { } share ? Text($"{100 * share.ToDouble():0} %") : "-"
        );

        void Row(string what, Func<Measurement, string> value) => rows.Add((what, value(one), value(other)));
    }

    private static string Range(Ceiling ceiling) =>
        ceiling.Range is { } range ? Text($"{range.Low:0.0}–{range.High:0.0}") : "-";

    private static string Verdict(
        (string Name, Measurement Measured) one,
        (string Name, Measurement Measured) other
    )
    {
        if (one.Measured.Ceiling.Range is not { } left || other.Measured.Ceiling.Range is not { } right)
        {
            return "Top tempo: nothing to compare.";
        }

        var share = left.ShareFasterThan(right);
        var (faster, sure) = share >= 0.5 ? (one.Name, share) : (other.Name, 1 - share);
        return sure >= SureShare
            ? Text($"Top tempo: {faster} is the faster in {100 * sure:0} of 100 cases.")
            : Text($"Top tempo: no clear difference ({faster} is ahead in {100 * sure:0} of 100 cases).");
    }
}
