using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Exercises.Ideas;

/// <summary>What is out of the usual in an exercise, each in a few words: rhythm, sound, hands, instrument.</summary>
internal static class DetailWords
{
    private const int UsualNotesPerBeat = 4;

    /// <summary>In the order in which they are told; empty where all is as usual.</summary>
    public static IEnumerable<string> Of(Recipe recipe, RoomStyle style) =>
        Rhythm(recipe)
            .Concat(recipe.Cell is { } cell ? OfCell(cell) : [])
            .Concat(Picking(recipe.Picking))
            .Concat(Fretting(recipe.Fretting))
            .Concat(Instrument(recipe, style));

    private static IEnumerable<string> Rhythm(Recipe recipe)
    {
        var rhythm = recipe.Rhythm;
        if (!rhythm.Pattern.IsEmpty)
        {
            yield return $"in the lengths {rhythm.Pattern.Join(" ")} over and over";
        }
        else if (recipe.Written is null && !IsUsual(rhythm))
        {
            yield return $"in {FeelNames.Of(rhythm.NotesPerBeat, rhythm.Meter)}";
        }

        if (rhythm.Meter != default)
        {
            yield return $"in {rhythm.Meter}";
        }

        // Swing acts on pairs: at two and at four notes a beat.
        if (!rhythm.Swing.IsStraight && rhythm.NotesPerBeat is 2 or 4)
        {
            yield return SwingWords.Of(rhythm.Swing);
        }

        if (rhythm.StartOffset > Fraction.Zero)
        {
            yield return $"beginning {rhythm.StartOffset} of a whole note after the bar line";
        }

        if (rhythm.TempoBpm is { } bpm)
        {
            yield return $"at {AxisText.Of(bpm)} beats a minute";
        }
    }

    // Sixteenths of a quarter; of any other beat four notes have another name.
    private static bool IsUsual(RhythmPlan rhythm) =>
        rhythm.NotesPerBeat == UsualNotesPerBeat && rhythm.Meter.Beat == Fraction.Of(1, 4);

    private static IEnumerable<string> OfCell(Cell cell)
    {
        if (cell.Durations.Distinct().Count() > 1)
        {
            yield return $"lengths {cell.Durations.Join(" ")} in each group";
        }

        var usual = cell.Accents is [0] || cell.Offsets.Length == 1;
        if (!usual)
        {
            yield return cell.Accents.IsEmpty
                ? "without accents"
                : $"{(cell.Accents.Length == 1 ? "accent" : "accents")} on {Entries(cell.Accents)} of each group";
        }

        if (cell.Slurs.SameString)
        {
            yield return "slurred on each string";
        }
        else if (!cell.Slurs.Entries.IsEmpty)
        {
            yield return $"{Entries(cell.Slurs.Entries)} of each group slurred";
        }

        if (cell.Sound != NoteSound.Normal)
        {
            yield return Sound(cell.Sound);
        }
    }

    private static string Entries(ImmutableArray<int> entries)
    {
        var ordered = entries.Order().ToList();
        var run = ordered.Count > 2 && ordered[^1] - ordered[0] == ordered.Count - 1;
        return run
            ? $"notes {AxisText.Of(ordered[0] + 1)} to {AxisText.Of(ordered[^1] + 1)}"
            : $"{(ordered.Count == 1 ? "note" : "notes")} {NumberWords.List([.. ordered.Select(entry => AxisText.Of(entry + 1))])}";
    }

    private static string Sound(NoteSound sound) =>
        sound switch
        {
            NoteSound.PalmMuted => "palm-muted",
            NoteSound.Staccato => "each note short",
            _ => "left to ring",
        };

    private static IEnumerable<string> Picking(PickingPlan plan)
    {
        if (plan.Technique != Technique.Alternate)
        {
            yield return Technically(plan);
        }

        if (HandAxes.BeginsWithAStroke(plan.Technique) && plan.First != FirstStroke.Down)
        {
            yield return plan.First == FirstStroke.Up
                ? "beginning with an up-stroke"
                : "the first stroke as it is easier";
        }
    }

    private static string Technically(PickingPlan plan) =>
        plan.Technique switch
        {
            Technique.Metric => "down on the beat and up between",
            Technique.AllDown => "with down-strokes only",
            Technique.AllUp => "with up-strokes only",
            Technique.Economy => "in economy picking",
            Technique.Sweep => "swept from string to string",
            Technique.Rake => "each note raked into",
            Technique.Hybrid => "with plectrum and fingers",
            Technique.Legato => "with a stroke only where the string changes",
            Technique.Fingers => plan.Fingers switch
            {
                FingerOrder.IndexMiddle => "plucked with index and middle finger in turn",
                FingerOrder.MiddleRing => "plucked with middle and ring finger in turn",
                FingerOrder.ThumbIndex => "plucked with thumb and index finger in turn",
                _ => "plucked with thumb and three fingers",
            },
            _ => "with any stroke anywhere",
        };

    private static IEnumerable<string> Fretting(FrettingPlan plan)
    {
        if (!plan.Avoid.IsEmpty)
        {
            yield return $"without {NumberWords.List([.. plan.Avoid.Distinct().Order().Select(finger => $"the {FingerNames.Of(finger)}")])} finger";
        }

        if (plan.SlidesAtShifts)
        {
            yield return "sliding where the hand shifts";
        }

        if (!plan.Locks.IsEmpty)
        {
            yield return $"{NumberWords.Of(plan.Locks.Length, "note")} locked";
        }
    }

    private static IEnumerable<string> Instrument(Recipe recipe, RoomStyle style)
    {
        var board = recipe.Instrument;
        if (!board.Tuning.Equals(Tuning.Standard))
        {
            yield return board.Tuning.Name is { } name
                ? $"in {name} tuning"
                : $"tuned {style.Of(board.Tuning)}";
        }

        if (board.Capo > 0)
        {
            var sounding = recipe.Notes is { } notes
                ? $", where it sounds in {style.Of(notes.Transposed(board.Capo).Root)}"
                : "";
            yield return $"with a capo at fret {AxisText.Of(board.Capo)}{sounding}";
        }
    }
}
