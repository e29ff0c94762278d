using System.Text;
using Passagework.Exercises;
using Passagework.Hands;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli.Output;

/// <summary>A measurement for people: counts first, for they are certain, then times, then tempi.</summary>
internal static class MeasurementText
{
    private const int HardestMoves = 3;

    public static string Of(string exercise, string player, Measurement measured, Growth? growth)
    {
        var text = new StringBuilder();
        Head(text, exercise, player, measured);
        Counts(text, measured);
        Hardest(text, measured);
        Tempo(text, measured);
        if (growth is not null)
        {
            Levels(text, growth, measured.Realization.Line.Recipe.Rhythm.NotesPerBeat);
        }

        Beat(text, measured);
        text.Append(
            """

            Counts are certain. Times rest on published tapping rates and on assumed sizes, tempi on a level ladder
            fitted to one exam board's scale speeds: read the range, and trust the comparison with the plain scale most.
            Stop if it hurts or tingles; for pain that returns see a licensed practitioner.

            """
        );
        return text.ToString();
    }

    private static void Head(StringBuilder text, string exercise, string player, Measurement measured)
    {
        var recipe = measured.Realization.Line.Recipe;
        var set = recipe.Notes is { } notes
            ? $"{notes.Root} {notes.Scale ?? "notes " + string.Join(' ', notes.Semitones)}, "
            : "";
        var rhythm = recipe.Rhythm;
        text.AppendLine(
            recipe.Title is { } title
                ? $"{title} ({exercise}), {player} player"
                : $"{exercise}, {player} player"
        );
        text.AppendLine(
            Text(
                $"{set}{LayoutOf(recipe.Layout)}, {recipe.Instrument.Tuning}{CapoOf(recipe)}; {measured.Realization.Notes.Length} notes, {rhythm.NotesPerBeat} a beat in {rhythm.Meter}; {TechniqueOf(recipe.Picking)}"
            )
        );
    }

    private static string CapoOf(Recipe recipe) =>
        recipe.Instrument.Capo == 0 ? "" : Text($", capo {recipe.Instrument.Capo}");

    private static string TechniqueOf(PickingPlan picking) =>
        picking.Technique == Technique.Fingers
            ? $"fingers {RecipeWords.FingerOrders.Of(picking.Fingers)}"
            : $"{RecipeWords.Techniques.Of(picking.Technique)}, first stroke {RecipeWords.FirstStrokes.Of(picking.First)}";

    private static void Counts(StringBuilder text, Measurement measured)
    {
        var picking = measured.Picking;
        var fretting = measured.Fretting;
        text.AppendLine()
            .AppendLine("Picking hand")
            .AppendLine(
                Text(
                    $"  string changes  inside {picking.Inside}, outside {picking.Outside}, carried on {picking.SweepSteps}, against {picking.Against}; over a skipped string {picking.Skips}"
                )
            )
            .AppendLine(
                Text($"  they come after  down-strokes {picking.AfterDown}, up-strokes {picking.AfterUp}")
            )
            .AppendLine(
                Text(
                    $"  same string {picking.SameString}, slurred {picking.Slurs}; groups start {Shorten(picking.GroupStarts)}"
                )
            )
            .AppendLine("Fretting hand")
            .AppendLine(
                Text(
                    $"  rolls {fretting.Rolls}, same finger elsewhere {fretting.SameFingerMoves}, shifts {fretting.Shifts}"
                )
            )
            .AppendLine(
                Text(
                    $"  fingers 1 to 4 play {string.Join(" ", fretting.FingerShare.Select(share => Text($"{100 * share:0}")))} of 100 notes, as if {fretting.EffectiveFingers:0.0} fingers shared alike"
                )
            );
        if (measured.Balance is { } balance)
        {
            text.AppendLine(
                Text(
                    $"Both hands  balance {balance:0.00}, even load over hands and fingers {measured.EvenLoad:0.00} (1 is even)"
                )
            );
        }
    }

    private static void Hardest(StringBuilder text, Measurement measured)
    {
        var notes = measured.Realization.Notes;
        var moves = Enumerable
            .Range(1, notes.Length - 1)
            .SelectMany(i => Moves(i, measured.Demands[i]))
            .GroupBy(move =>
                (
                    move.Hand,
                    From: Spot(notes[move.Note - 1], move.Hand),
                    To: Spot(notes[move.Note], move.Hand)
                )
            )
            .Select(same => (same.Key, same.First().Ms, Count: same.Count()))
            .OrderByDescending(move => move.Ms)
            .Take(HardestMoves)
            .ToArray();
        if (moves.Length == 0)
        {
            return;
        }

        text.AppendLine().AppendLine("Slowest moves");
        foreach (var (key, ms, count) in moves)
        {
            text.AppendLine(Text($"  {ms, 4:0} ms  {key.From} to {key.To}, {key.Hand} hand, {Times(count)}"));
        }
    }

    private static IEnumerable<(int Note, string Hand, double Ms)> Moves(int note, MoveDemand demand)
    {
        if (demand.FrettingMs is > 0 and { } fretting)
        {
            yield return (note, "fretting", fretting);
        }

        if (demand.PickingMs is > 0 and { } picking)
        {
            yield return (note, "picking", picking);
        }
    }

    private static string Spot(PlayedNote note, string hand) =>
        hand == "fretting"
            ? $"{Places(note)} {Finger(note)}"
            : $"{Places(note)} {RecipeWords.Strokes.Of(note.Stroke)}";

    private static string Places(PlayedNote note) =>
        string.Join('+', note.Tones.Select(tone => tone.Place.ToString()));

    private static void Tempo(StringBuilder text, Measurement measured)
    {
        var notesPerBeat = measured.Realization.Line.Recipe.Rhythm.NotesPerBeat;
        var ceiling = measured.Ceiling;
        text.AppendLine().AppendLine("Top tempo");
        if (ceiling.Range is not { } range)
        {
            text.AppendLine("  nothing limits it");
            return;
        }

        text.AppendLine(
            Text(
                $"  plausibly {Bpm(ceiling, notesPerBeat)} beats a minute at {notesPerBeat} notes a beat ({range.Low:0.0}–{range.High:0.0} notes a second)"
            )
        );
        text.AppendLine(
            Text(
                $"  {Limiting(ceiling)} sets the pace: fretting hand in {100 * range.FrettingShare:0} of 100 cases, picking hand in {100 * range.PickingShare:0}, their meeting in {100 * range.TogetherShare:0}"
            )
        );
        var relaxed = Ceiling.RelaxedShare;
        text.AppendLine(
            Text(
                $"  relaxed up to about {60 * relaxed * range.Low / notesPerBeat:0}–{60 * relaxed * range.High / notesPerBeat:0} ({100 * relaxed:0} % of it, assumed)"
            )
        );
        if (measured.RatioToScale is { } ratio)
        {
            text.AppendLine(Text($"  {100 * ratio:0} % of the plain scale in the same layout"));
        }
    }

    private static void Levels(StringBuilder text, Growth growth, int notesPerBeat)
    {
        text.AppendLine().AppendLine("By level");
        foreach (var level in growth.Levels)
        {
            var against = level.RelativeDifficulty is { } times
                ? Text($", plain scale {times:0.00} times as fast")
                : "";
            text.AppendLine(
                Text(
                    $"  {Player.LevelNames[level.Level], -12}  {Bpm(level.Ceiling, notesPerBeat), 8}  {Limiting(level.Ceiling)}{against}"
                )
            );
        }

        if (growth.Ratio is { } ratio)
        {
            var word = ratio > 1 ? "gets relatively harder" : "is relatively outgrown";
            text.AppendLine(Text($"  from beginner to expert it {word} ({ratio:0.00}; the size is assumed)"));
        }
    }

    private static void Beat(StringBuilder text, Measurement measured)
    {
        if (measured.Fit is not { } fit)
        {
            return;
        }

        text.AppendLine().AppendLine("Against the beat");
        if (fit.Sentence is { } sentence)
        {
            text.AppendLine($"  {sentence}");
        }

        text.AppendLine(
            Text(
                $"  group starts meet a beat again after {Counted(fit.BeatsToRealign, "beat")}, a bar line after {Counted(fit.BarsToRealign, "bar")}"
            )
        );
        var meter = measured.Realization.Line.Recipe.Rhythm.Meter;
        text.AppendLine($"  in {string.Join(", ", fit.Feels.Select(feel => FeelText.Of(feel, meter)))}");
    }

    private static string Times(int count) =>
        count switch
        {
            1 => "once",
            2 => "twice",
            _ => Text($"{count} times"),
        };

    private static string Counted(long number, string thing) =>
        Text($"{number} {thing}{(number == 1 ? "" : "s")}");

    private static string Shorten(string starts) => starts.Length <= 24 ? starts : starts[..24] + "…";
}
