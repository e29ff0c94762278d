using System.Globalization;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Screens;

/// <summary>What can be asked of a score on a screen (ranges chosen by us).</summary>
internal static class ScreenRules
{
    /// <summary>Why a score cannot be drawn so; null where it can.</summary>
    public static Fault? Check(Measurement measured, ScreenOptions options) =>
        Within(options.WidthPx, (280, 4_000), "the width of the score")
        ?? Within(options.SpacePx, (6, 20), "the staff space")
        ?? (
            options.Staff || options.Tab
                ? null
                : new Fault("neither staff nor tab", "the rows of the score", "one of them or both")
        )
        ?? Chosen(options.Chosen, measured.Realization.Notes.Length);

    /// <summary>A length in pixels out of its range; null where it lies within.</summary>
    public static Fault? Within(double px, (double Least, double Most) range, string where) =>
        px >= range.Least && px <= range.Most
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{px} pixels"),
                where,
                string.Create(CultureInfo.InvariantCulture, $"from {range.Least} to {range.Most}")
            );

    private static Fault? Chosen(int? note, int notes) =>
        note is null || (note >= 0 && note < notes)
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"note {note} is chosen"),
                Right: string.Create(CultureInfo.InvariantCulture, $"a note from 0 to {notes - 1}")
            );
}
