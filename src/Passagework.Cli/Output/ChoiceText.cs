using System.Text;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli.Output;

/// <summary>A ranking for people: the table, the argument, then each exercise's merits and faults.</summary>
internal static class ChoiceText
{
    private const int Width = 78;

    /// <param name="answer">What came out.</param>
    /// <param name="player">For whom.</param>
    /// <param name="told">How many exercises are told about one by one.</param>
    /// <param name="why">Two that are to be compared; null for none.</param>
    public static string Of(ChoiceAnswer answer, string player, int told, Comparison? why)
    {
        var text = new StringBuilder();
        text.AppendLine(Head(answer, player)).AppendLine();
        ChoiceTableText.Append(text, answer);
        text.AppendLine();
        Argument(text, answer);
        if (why is not null)
        {
            Why(text, answer, why);
        }

        foreach (var standing in answer.Ranking.Standings.Take(told))
        {
            Exercise(text, answer, standing);
        }

        Remarks(text, answer);
        text.AppendLine()
            .AppendLine(
                "Counts are certain. Loads and tempi are modelled, and how well is said above; that an exercise"
            )
            .AppendLine(
                "carries over to music has not been measured on anyone. The last word is the teacher's."
            );
        return text.ToString();
    }

    private static string Head(ChoiceAnswer answer, string player)
    {
        var recipe = answer.Candidates[0].Source.Forms[0];
        var technique = Exercises.RecipeWords.Techniques.Of(recipe.Picking.Technique);
        return Text(
            $"Which of {answer.Candidates.Length} exercises; player: {player}, technique: {technique}, beside {answer.Question.Pieces.Count} pieces"
        );
    }

    private static void Argument(StringBuilder text, ChoiceAnswer answer)
    {
        var explanation = Explanation.Of(answer);
        Wrapped(text, "", explanation.Verdict);
        Wrapped(text, "For it:     ", string.Join(' ', explanation.Reasons));
        Wrapped(text, "Against it: ", explanation.Against);
        Wrapped(text, "Change:     ", explanation.Change);
        Wrapped(text, "Doubt:      ", explanation.Doubt);
        if (answer.Question.Method.Id != RankingMethods.All[0].Id)
        {
            Wrapped(
                text,
                "Method:     ",
                $"the order is that of {answer.Question.Method.Id}; reasons and changes are those of the weighted sum."
            );
        }
    }

    private static void Why(StringBuilder text, ChoiceAnswer answer, Comparison why)
    {
        var (first, second) = (Title(answer, why.First), Title(answer, why.Second));
        text.AppendLine().AppendLine($"Why {first} and not {second}");
        var width = answer.Criteria.Max(criterion => criterion.Title.Length);
        for (var k = 0; k < why.Terms.Length; k++)
        {
            if (answer.Choice.Weights.Shares[k] > 0)
            {
                var clear = why.Clear[k] ? "" : "  no clear difference";
                text.AppendLine(
                    Text(
                        $"  {answer.Criteria[k].Title.PadRight(width)}  {100 * why.Terms[k], 6:+0.0;-0.0;0.0}{clear}"
                    )
                );
            }
        }

        text.AppendLine(Text($"  {"together".PadRight(width)}  {100 * why.Terms.Sum(), 6:+0.0;-0.0;0.0}"));
        Wrapped(text, "  For it:     ", string.Join(' ', why.Reasons));
        Wrapped(text, "  Against it: ", why.Against);
        Wrapped(
            text,
            "  Weighing:   ",
            Text($"{first} is ahead in {100 * why.ShareOfWeightings:0} of 100 ways of weighing.")
        );
    }

    private static void Exercise(StringBuilder text, ChoiceAnswer answer, Standing standing)
    {
        var a = standing.Candidate;
        var remarks = ExerciseRemarks.Of(answer, a);
        text.AppendLine().AppendLine(Text($"{standing.Place}  {Title(answer, a)}"));
        foreach (var pro in remarks.Pros)
        {
            Wrapped(text, "   + ", pro);
        }

        foreach (var con in remarks.Cons)
        {
            Wrapped(text, "   - ", con);
        }

        foreach (var note in remarks.Notes)
        {
            Wrapped(text, "   . ", note);
        }
    }

    private static void Remarks(StringBuilder text, ChoiceAnswer answer)
    {
        if (answer.LeftOut.Length + answer.NotMeasured.Length > 0)
        {
            text.AppendLine();
        }

        foreach (var criterion in answer.NotMeasured)
        {
            Wrapped(text, "", $"On none of them could {criterion.Title} be measured, so it does not count.");
        }

        foreach (var (_, why) in answer.LeftOut)
        {
            Wrapped(text, "", $"Left out: {why}.");
        }
    }

    private static string Title(ChoiceAnswer answer, int candidate) =>
        answer.Candidates[candidate].Source.Title;

    // Lines of at most the width, later ones under the first word.
    private static void Wrapped(StringBuilder text, string lead, string sentence)
    {
        var (line, isFirst) = (new StringBuilder(), true);
        foreach (var word in sentence.Split(' '))
        {
            if (line.Length > 0 && lead.Length + line.Length + 1 + word.Length > Width)
            {
                Flush();
            }

            line.Append(line.Length == 0 ? "" : " ").Append(word);
        }

        Flush();

        void Flush()
        {
            text.Append(isFirst ? lead : new string(' ', lead.Length)).Append(line).AppendLine();
            line.Clear();
            isFirst = false;
        }
    }
}
