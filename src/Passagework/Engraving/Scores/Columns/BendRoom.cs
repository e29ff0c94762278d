using Passagework.Engraving.Drawing;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Measures of bends in staff spaces, to the right of all else that belongs to the note.</summary>
internal static class BendRoom
{
    /// <summary>From the note to where the bend begins.</summary>
    public const double Gap = 0.2;

    /// <summary>On the tab from where the arrow begins to its tip, sideways.</summary>
    public const double TabRise = 1.3;

    /// <summary>On the tab from the tip to that of the release, sideways.</summary>
    public const double TabFall = 1.5;

    /// <summary>Half an arrow head's width.</summary>
    public const double ArrowHalf = 0.35;

    /// <summary>On the staff from where the line begins to its peak, sideways.</summary>
    public const double StaffRise = 0.75;

    /// <summary>On the staff from the peak to the end: level, or down again.</summary>
    public const double StaffEnd = 0.65;

    /// <summary>The figure that tells how far, in whole steps.</summary>
    public static Lettering Figure(ScoreBend bend, Sizes sizes) =>
        new(WholeSteps(bend.HalfSteps), Face.Sans, sizes.Text);

    /// <summary>What an arrow on the tab takes.</summary>
    public static double OnTab(ScoreBend? bend, Sizes sizes)
    {
        if (bend is null)
        {
            return 0;
        }

        var end = ArrowHalf + (bend.Release ? TabFall : 0);
        return Gap + TabRise + Math.Max(end, Figure(bend, sizes).Ink(Anchor.Middle).Right);
    }

    /// <summary>What a line on the staff takes.</summary>
    public static double OnStaff(ScoreBend? bend) => bend is null ? 0 : Gap + StaffRise + StaffEnd;

    /// <summary>Such as ½, 1, 1½.</summary>
    public static string WholeSteps(Fraction halfSteps)
    {
        var steps = halfSteps / Fraction.Of(2);
        var (whole, quarters) = (steps.Floor(), (int)(steps.Modulo(Fraction.One) * Fraction.Of(4)).Floor());
        var part = new[] { "", "¼", "½", "¾" }[quarters];
        return whole == 0 ? part : System.FormattableString.Invariant($"{whole}{part}");
    }
}
