using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Fonts;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Scores;

/// <summary>A sign at the start of a line.</summary>
/// <param name="Kind">What it stands for.</param>
/// <param name="Glyph">The sign.</param>
/// <param name="X">Its origin, in spaces from the line's start.</param>
/// <param name="Y">Its origin below the staff's top line.</param>
/// <param name="Scale">Against its natural size.</param>
internal readonly record struct PrefixSign(string Kind, int Glyph, double X, double Y, double Scale = 1);

/// <summary>Clef, key and metre at the start of a line.</summary>
/// <param name="Staff">Those on the staff.</param>
/// <param name="Tab">Those on the tab.</param>
/// <param name="Width">Room that they take.</param>
internal sealed record LinePrefix(
    ImmutableArray<PrefixSign> Staff,
    ImmutableArray<PrefixSign> Tab,
    double Width
);

/// <summary>Lays clef, key and metre out; fixed gaps in staff spaces are chosen by us.</summary>
internal sealed class PrefixWriter(ScoreOptions options, Sizes sizes, ScoreKey key, Meter meter, bool bass)
{
    private const double Gap = 0.75;
    private const double Between = 0.1;
    private const double TallTab = 7.5;
    private const double GLine = 3;
    private const double FLine = 1;

    // Half spaces above the middle line under a treble clef; two lower under a bass clef.
    private static readonly int[] Sharps = [4, 1, 5, 2, -1, 3, 0];
    private static readonly int[] Flats = [0, 3, -1, 2, -2, 1, -3];

    /// <summary>Distance of two staff lines.</summary>
    public double SpaceMm => sizes.SpaceMm;

    /// <summary>The start of the first line, or of a later one, which has no metre.</summary>
    public LinePrefix Write(bool first)
    {
        var hasMeter = first && options.Begins;
        var staff = ImmutableArray.CreateBuilder<PrefixSign>();
        var tab = ImmutableArray.CreateBuilder<PrefixSign>();
        var (staffEnd, tabEnd) = (0.0, 0.0);
        if (options.Layout is ScoreLayout.StaffAndTab or ScoreLayout.Staff)
        {
            var clef = bass ? Glyphs.FClef8vb : Glyphs.GClef8vb;
            staffEnd = Add(staff, new PrefixSign("clef", clef, 0, bass ? FLine : GLine));
            staffEnd = AddKey(staff, staffEnd);
            staffEnd = hasMeter ? AddMeter(staff, staffEnd, StaffPlace.Height / 2) : staffEnd;
        }

        if (options.Layout != ScoreLayout.Staff)
        {
            tabEnd = AddTabClef(tab);
            var alone = hasMeter && options.Layout != ScoreLayout.StaffAndTab;
            tabEnd = alone ? AddMeter(tab, tabEnd, sizes.TabHeight / 2) : tabEnd;
        }

        return new LinePrefix(staff.ToImmutable(), tab.ToImmutable(), Math.Max(staffEnd, tabEnd));
    }

    // Puts a sign behind what ends at its x, and tells where it ends.
    private static double Add(ImmutableArray<PrefixSign>.Builder signs, PrefixSign sign, double gap = Gap)
    {
        var box = Block.BoxOf(sign.Glyph, sign.Scale);
        var x = sign.X + gap - box.Left;
        signs.Add(sign with { X = x });
        return x + box.Right;
    }

    private double AddKey(ImmutableArray<PrefixSign>.Builder signs, double end)
    {
        var sharp = key.Fifths > 0;
        for (var i = 0; i < Math.Abs(key.Fifths); i++)
        {
            var position = (sharp ? Sharps : Flats)[i] - (bass ? 2 : 0);
            var glyph = sharp ? Glyphs.AccidentalSharp : Glyphs.AccidentalFlat;
            var sign = new PrefixSign("key", glyph, end, StaffPlace.Y(position));
            end = Add(signs, sign, i == 0 ? Gap : Between);
        }

        return end;
    }

    private double AddMeter(ImmutableArray<PrefixSign>.Builder signs, double end, double middle)
    {
        var (upper, lower) = (Digits(meter.WrittenBeats), Digits(meter.WrittenUnit));
        var width = Math.Max(Width(upper), Width(lower));
        foreach (var (digits, y) in new[] { (upper, middle - 1), (lower, middle + 1) })
        {
            var x = end + Gap + ((width - Width(digits)) / 2);
            foreach (var digit in digits)
            {
                signs.Add(new PrefixSign("time", digit, x, y));
                x += MusicFont.Glyph(digit).Advance;
            }
        }

        return end + Gap + width;
    }

    // The sign is made for six lines a space and a half apart; it shrinks with lower tabs and grows a little with higher.
    private double AddTabClef(ImmutableArray<PrefixSign>.Builder signs)
    {
        const double Largest = 1.2;
        var scale = Math.Min(Largest, sizes.TabHeight / TallTab);
        return Add(signs, new PrefixSign("clef", Glyphs.SixStringTabClef, 0, sizes.TabHeight / 2, scale));
    }

    private static double Width(int[] digits) => digits.Sum(digit => MusicFont.Glyph(digit).Advance);

    private static int[] Digits(int number) =>
        [.. number.ToString(CultureInfo.InvariantCulture).Select(digit => Glyphs.TimeSig0 + digit - '0')];
}
