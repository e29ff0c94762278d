using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>One element that holds many marks.</summary>
internal interface ICompactElement
{
    /// <summary>Which lies over which, the lowest first.</summary>
    int Layer { get; }

    /// <summary>The attributes that it may share with others of its layer, each after a space.</summary>
    string Attributes { get; }

    /// <summary>Writes it.</summary>
    /// <param name="svg">Where.</param>
    /// <param name="attributes">Its attributes; empty where the group around it has them.</param>
    void Write(StringBuilder svg, string attributes);
}

/// <summary>
/// What lies over what once marks are gathered: grounds, lines to be read against, what belongs to a hand, music and words,
/// figures that hide what is under them, words upon dark figures.
/// </summary>
internal static class CompactLayer
{
    /// <summary>The layer of an ink and of a figure's inside.</summary>
    public static int Of(Ink ink, Filling filling = Filling.Solid) =>
        (ink, filling) switch
        {
            (Ink.Shade, _) => 0,
            (_, Filling.Paper) => 4,
            (Ink.Paper, _) => 5,
            (Ink.Staff or Ink.Rule or Ink.Hair, _) => 1,
            (Ink.Fretting or Ink.Picking, _) => 2,
            _ => 3,
        };
}
