using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>Which string each line is, and how the strings are tuned.</summary>
/// <param name="Tuning">From the header, else from the labels, else the usual one of that many strings.</param>
/// <param name="TopIsFirst">Whether the top line is string 1.</param>
internal sealed record TabOrder(Tuning Tuning, bool TopIsFirst)
{
    /// <summary>String number of a line, counted from the top, from 0.</summary>
    public int StringAt(int line) => TopIsFirst ? line + 1 : Tuning.StringCount - line;

    public static TabOrder Of(TabPage page, TabFindings findings)
    {
        var strings = page.Systems[0].Strings;
        var labels = strings.Select(line => line.Label).OfType<string>().ToList();
        var header = page.Header.Tuning;
        if (labels.Count < strings.Length)
        {
            return new TabOrder(header ?? TabTuning.Usual(strings.Length), TopIsFirst: true);
        }

        var names = labels.ConvertAll(WithoutOctave);
        var down = Enumerable.Reverse(names).ToList();
        if (header is not null)
        {
            var open = TabTuning.NamesOf(header).ToList();
            var fits = open.SequenceEqual(down);
            var fitsReversed = !fits && open.SequenceEqual(names);
            if (!fits && !fitsReversed)
            {
                findings.Warn("the labels don't fit the tuning line, which is taken", strings[0].Line.At(0));
            }

            return new TabOrder(header, TopIsFirst: !fitsReversed);
        }

        var topIsFirst = !IsReversed(labels, names);
        var upward = topIsFirst ? Enumerable.Reverse(labels) : labels;
        var tuning = Tuning.TryParse(string.Join(' ', upward), out var exact)
            ? exact
            : TabTuning.FromNames(topIsFirst ? down : names);
        return new TabOrder(tuning ?? TabTuning.Usual(strings.Length), topIsFirst);
    }

    // With octaves the lowest note tells; without, a tuning that is only known the other way round.
    private static bool IsReversed(List<string> labels, List<string> names)
    {
        if (
            Theory.SpelledPitch.TryParse(labels[0], out var top)
            && Theory.SpelledPitch.TryParse(labels[^1], out var bottom)
        )
        {
            return top.Midi < bottom.Midi;
        }

        return TabTuning.OnlyReverseIsKnown(Enumerable.Reverse(names).ToList());
    }

    private static string WithoutOctave(string label) => label.TrimEnd("0123456789".ToCharArray());
}
