using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Engraving.Strips;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Screens;

/// <summary>A note of a score in words and figures, for a table.</summary>
/// <param name="Note">Index of the note.</param>
/// <param name="Bar">Its bar as numbered; a pick-up is bar 0.</param>
/// <param name="Count">What is said at it when counting; empty where it lies between what can be counted aloud.</param>
/// <param name="Place">String and fret, such as <c>4:5</c>; those of a chord from high to low.</param>
/// <param name="Pitch">What sounds, such as <c>G3</c>.</param>
/// <param name="Finger">Fretting finger 1 to 4, 0 for an open string; of a chord the highest tone's.</param>
/// <param name="Stroke">The picking hand's action.</param>
/// <param name="FrettingMs">Time that the fretting hand needs to reach it; null for the first note.</param>
/// <param name="PickingMs">Time that the picking hand needs; null for the first note, 0 for a slurred one.</param>
/// <param name="ThereAreMs">Time there is since the note before; null for the first note.</param>
public sealed record ScreenRow(
    int Note,
    int Bar,
    string Count,
    string Place,
    string Pitch,
    int Finger,
    Stroke Stroke,
    double? FrettingMs,
    double? PickingMs,
    double? ThereAreMs
);

/// <summary>Says what a score shows.</summary>
internal sealed class ScreenWords(Measurement measured, double tempoBpm, ScreenLayout layout)
{
    private readonly Recipe _recipe = measured.Realization.Line.Recipe;
    private readonly ImmutableArray<PlayedNote> _notes = measured.Realization.Notes;

    /// <summary>One sentence.</summary>
    public string Sentence()
    {
        var bars = BarCut.Count(measured.Realization.Line);
        var tempo = Math.Round(tempoBpm, 1).ToString(CultureInfo.InvariantCulture);
        return $"{SheetDefaults.TitleOf(_recipe)}: {NumberWords.Of(_notes.Length, "note")} in {NumberWords.Of(bars, "bar")} of {_recipe.Rhythm.Meter}; times of both hands at {tempo} beats a minute.";
    }

    /// <summary>One row for each note.</summary>
    public ImmutableArray<ScreenRow> Rows()
    {
        var meter = _recipe.Rhythm.Meter;
        var counts = new CountRow(_notes.Select(note => note.Note.Onset), meter, layout.Music.Syllables);
        var firstBar = WrittenScore.BeginsWithPickUp(_recipe, layout.Music) ? 0 : 1;
        var times = MoveTimes.Of(measured.Realization, tempoBpm);
        return [.. _notes.Select((note, index) => RowOf(note, index))];

        ScreenRow RowOf(PlayedNote note, int index) =>
            new(
                index,
                (int)(note.Note.Onset / meter.Bar).Floor() + firstBar,
                counts.At(note.Note.Onset),
                string.Join(" ", note.Tones.Select(tone => tone.Place)),
                string.Join(" ", note.Tones.Select(tone => layout.Options.Style.Of(tone.Tone.Pitch))),
                note.Finger,
                note.Stroke,
                measured.Demands[index].FrettingMs,
                measured.Demands[index].PickingMs,
                times.Fretting[index]
            );
    }
}
