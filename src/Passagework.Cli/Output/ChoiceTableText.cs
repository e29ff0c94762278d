using System.Text;
using Passagework.Choosing;
using static Passagework.Cli.Output.Words;

namespace Passagework.Cli.Output;

/// <summary>Scores as bars and values in hundredths, one row an exercise.</summary>
internal static class ChoiceTableText
{
    private const int BarLength = 10;
    private const int Column = 10;
    private const string Eighths = " ▏▎▍▌▋▊▉";

    public static void Append(StringBuilder text, ChoiceAnswer answer)
    {
        var shown = answer.Choice.Weights.Used;
        var names = Math.Max(8, answer.Candidates.Max(candidate => candidate.Source.Id.Length));
        var left = 4 + names + 2;
        string[] heads = [.. shown.Select(k => answer.Criteria[k].Title)];
        Line("", "", heads.Select(title => FirstLine(title)), "first");
        Line("", "score", heads.Select(title => SecondLine(title)), "in");
        Line(
            "how much it matters",
            "",
            shown.Select(k => Text($"{100 * answer.Choice.Weights.Shares[k]:0} %")),
            ""
        );
        foreach (var standing in answer.Ranking.Standings)
        {
            Row(text, answer, standing, names);
        }

        void Line(string name, string score, IEnumerable<string> columns, string last)
        {
            text.Append(name.PadRight(left)).Append(score.PadRight(5 + BarLength));
            foreach (var column in columns)
            {
                text.Append(column.PadLeft(Column));
            }

            text.AppendLine(last.PadLeft(Column));
        }

        text.AppendLine()
            .AppendLine(
                "Values with their errors: 0 is what the weakest tenth of all figures of three to eight notes in one"
            )
            .AppendLine(
                "box reaches, 100 the strongest tenth. 'First in' is the share of all ways of weighing in which it"
            )
            .AppendLine(
                "comes first; what can't be told apart shares a place. A dot is a value that could not be measured."
            );
    }

    private static void Row(StringBuilder text, ChoiceAnswer answer, Standing standing, int names)
    {
        var a = standing.Candidate;
        text.Append(Text($"{standing.Place, 3} "))
            .Append(answer.Candidates[a].Source.Id.PadRight(names + 2))
            .Append(Text($"{standing.Score, 4:0.00} "))
            .Append(Bar(answer, standing));
        foreach (var k in answer.Choice.Weights.Used)
        {
            text.Append(Value(answer.Choice.Table.Candidates[a].Marks[k]).PadLeft(Column));
        }

        text.AppendLine(Text($"{100 * answer.AllWeightings.First[a]:0} %").PadLeft(Column));
    }

    private static string Value(Mark mark)
    {
        if (mark.Value is not { } value)
        {
            return ".";
        }

        return mark.Error >= 0.005
            ? Text($"{100 * value:0} ±{100 * mark.Error:0}")
            : Text($"{100 * value:0}");
    }

    // As long as the score, or as its share of the range where a method scores otherwise.
    private static string Bar(ChoiceAnswer answer, Standing standing)
    {
        var scores = answer.Ranking.Standings.Select(each => each.Score).ToList();
        var least = Math.Min(0, scores.Min());
        var most = Math.Max(1, scores.Max());
        var length = (standing.Score - least) / (most - least) * BarLength;
        var whole = (int)length;
        var part = Eighths[(int)((length - whole) * Eighths.Length)];
        var bar = new string('█', whole) + (whole < BarLength ? part : "");
        return bar.PadRight(BarLength);
    }

    // A title of two words stands in two lines.
    private static string FirstLine(string title)
    {
        var space = title.LastIndexOf(' ');
        return space < 0 ? "" : Cut(title[..space]);
    }

    private static string SecondLine(string title) => Cut(title[(title.LastIndexOf(' ') + 1)..]);

    private static string Cut(string word) => word.Length < Column ? word : word[..(Column - 2)] + "…";
}
