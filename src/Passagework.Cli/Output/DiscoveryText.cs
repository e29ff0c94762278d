using System.Text;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Explaining;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Notation;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli.Output;

/// <summary>What a search found, for people: what was looked at, then each find with its first bar and its merits.</summary>
internal static class DiscoveryText
{
    private static readonly TabWriting Bar = new() { Counts = true, Groups = false };

    public static string Of(DiscoveryQuestion question, DiscoveryResult result, string player, double seconds)
    {
        var text = new StringBuilder();
        Head(text, question, result, (player, seconds));
        Removed(text, result);
        if (result.Found.IsEmpty)
        {
            text.AppendLine().AppendLine(Nothing(result));
            return text.ToString();
        }

        var measured = result
            .Found.Select(found => Measurer.Measure(found.Recipe, question.Player).OrThrow())
            .ToList();
        text.AppendLine().AppendLine(Of(result));
        if (measured[0].Fit?.Sentence is { } sentence)
        {
            text.AppendLine($"In time, all alike: {sentence}.");
        }

        for (var number = 0; number < measured.Count; number++)
        {
            Found(text, number, result.Found[number], measured[number]);
        }

        text.Append(
            """

            High and low are meant against all cells of three to eight notes in box 1. Loads and tempi are modelled; that a
            find is worth playing nobody has measured. The last word is the teacher's.

            """
        );
        return text.ToString();
    }

    private static void Head(
        StringBuilder text,
        DiscoveryQuestion question,
        DiscoveryResult result,
        (string Player, double Seconds) by
    )
    {
        var space = question.Space;
        var technique = RecipeWords.Techniques.Of(space.Picking.Technique);
        var pieces = question.Music is { } music ? $", beside {music.Count} pieces" : "";
        text.AppendLine(
            Text($"New exercises of {space.Length} notes, {by.Player} player, {technique} strokes{pieces}")
        );
        var stopped = result.Complete ? "" : "; stopped before the end";
        text.AppendLine(
            Text($"{result.Visited:N0} of {result.Total:N0} looked at in {by.Seconds:0.0} s{stopped}")
        );
    }

    private static void Removed(StringBuilder text, DiscoveryResult result)
    {
        foreach (var reason in Enum.GetValues<Removal>().Where(reason => result.Removed[reason] > 0))
        {
            text.AppendLine(Text($"  {result.Removed[reason], 11:N0} left out: {Why(reason)}"));
        }
    }

    private static string Why(Removal reason) =>
        reason switch
        {
            Removal.TooWide => "wider than the notes there are",
            Removal.Double => "plays what an earlier one plays",
            Removal.Unplayable => "no hand can play it",
            Removal.Rolls => "a finger rolls over neighbouring strings",
            Removal.Stretch => "the hand spans too many frets",
            _ => "the top tempo is too low",
        };

    private static string Nothing(DiscoveryResult result) =>
        result.Complete
            ? "Nothing is left. Loosen what removes the most."
            : "Stopped before anything was found.";

    private static string Of(DiscoveryResult result)
    {
        var alike = result.Equal > 0 ? Text($" ({result.Equal:N0} more measure exactly the same)") : "";
        var among = result.Found.Length == 1 ? "the best" : Text($"{result.Found.Length} unlike ones");
        return Text($"Of {result.Front:N0} none beats on everything{alike}, {among}:");
    }

    private static void Found(StringBuilder text, int number, FoundCell found, Measurement measured)
    {
        text.AppendLine().AppendLine(Text($"{number + 1}  {found.Name}"));
        if (found.LibraryId is { } id)
        {
            text.AppendLine($"   on the shelf: {id}, whatever the first stroke");
        }

        text.AppendLine(TextTab.WriteBars(measured.Realization, 1, 1, Bar));
        var perBeat = found.Recipe.Rhythm.NotesPerBeat;
        text.AppendLine(
            $"   top tempo {Bpm(measured.Ceiling, perBeat)}, held back by {Limiting(measured.Ceiling)}"
        );
        for (var k = 0; k < CellRhythmFrom; k++)
        {
            text.AppendLine($"   {Criteria.All[k].Title, -16} {Degree.Words(found.Values[k])}");
        }
    }

    // The criteria of the rhythm come last and are the same for all finds.
    private const int CellRhythmFrom = 4;
}
