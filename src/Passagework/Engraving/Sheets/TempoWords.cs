using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Sheets;

/// <summary>A tempo with its note value, start and goal.</summary>
internal static class TempoWords
{
    /// <summary>Such as "♩ = 52, up to 72; four notes to the beat".</summary>
    public static ImmutableArray<Phrase> Of(int start, int goal, RhythmPlan rhythm)
    {
        var notes = rhythm.Pattern.IsEmpty
            ? $"; {NumberWords.Of(rhythm.NotesPerBeat, "note")} to the beat"
            : "";
        var swing = rhythm.Swing.IsStraight ? "" : ", swung";
        return goal > start
            ?
            [
                $"{Value(rhythm.Meter)} = ",
                new Phrase(Whole(start), Strong: true),
                ", up to ",
                new Phrase(Whole(goal), Strong: true),
                notes + swing,
            ]
            : [$"{Value(rhythm.Meter)} = ", new Phrase(Whole(start), Strong: true), notes + swing];
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Value(Meter meter)
    {
        var unit = meter.IsCompound ? meter.WrittenUnit / 2 : meter.WrittenUnit;
        var note = unit switch
        {
            2 => Glyphs.MetNoteHalfUp,
            8 => Glyphs.MetNote8thUp,
            16 => Glyphs.MetNote16thUp,
            _ => Glyphs.MetNoteQuarterUp,
        };
        return meter.IsCompound ? $"{(char)note}{(char)Glyphs.MetAugmentationDot}" : $"{(char)note}";
    }
}
