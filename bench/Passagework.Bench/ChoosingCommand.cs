using System.Collections.Immutable;
using System.Globalization;
using Passagework.Choosing;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Bench;

/// <summary>Prints the tables of <c>docs/choosing.md</c>: figures of three families, who wins when what is assumed changes, correlations.</summary>
internal static class ChoosingCommand
{
    private static readonly string[] Three = ["groups-of-five", "groups-of-three", "one-sided-rolls-low"];
    private static readonly Technique[] Techniques =
    [
        Technique.Alternate,
        Technique.Economy,
        Technique.Sweep,
        Technique.Legato,
    ];

    private static readonly (string Name, Func<int, bool> Holds)[] Repertoires =
    [
        ("all 23", _ => true),
        ("the 12 easiest", number => number < 12),
        ("the 11 hardest", number => number >= 12),
    ];

    public static int Run()
    {
        Families();
        Winners("Who leads among the three", Three, Wishes.Usual);
        Winners("The same with coming out even in place of ambiguity", Three, EvenInPlace());
        Winners("Who leads among all 29 families", [.. Library.Families], Wishes.Usual);
        Winners("The same with coming out even in place of ambiguity", [.. Library.Families], EvenInPlace());
        Correlations();
        return 0;
    }

    private static Wishes EvenInPlace() =>
        new()
        {
            Weights = Criteria
                .All.Where(criterion => criterion != Criteria.RhythmicAmbiguity)
                .ToImmutableSortedDictionary(criterion => criterion.Id, _ => 1.0, StringComparer.Ordinal),
        };

    private static void Families()
    {
        var answer = Ask(Three, 2, Technique.Alternate, Repertoires[0].Holds, Wishes.Usual);
        Print(
            $"| family | {string.Join(" | ", answer.Criteria.Select(criterion => criterion.Title))} | score |"
        );
        Print($"|---|{string.Concat(answer.Criteria.Select(_ => "---|"))}---|");
        foreach (var standing in answer.Ranking.Standings)
        {
            var a = standing.Candidate;
            var cells = answer.Criteria.Select((_, k) => Cell(answer, a, k));
            Print(
                $"| {answer.Candidates[a].Source.Title} | {string.Join(" | ", cells)} | {standing.Score:0.000} |"
            );
        }

        Pairs(answer);
        var clear = answer.Criteria.Where(
            (_, k) => !answer.IsClear(answer.Ranking.Leader, answer.RunnerUp, k)
        );
        Print(
            $"\nNo clear difference of the first two on: {string.Join(", ", clear.Select(each => each.Title))}\n"
        );
    }

    private static void Pairs(ChoiceAnswer answer)
    {
        for (var a = 0; a < answer.Candidates.Length; a++)
        {
            for (var b = a + 1; b < answer.Candidates.Length; b++)
            {
                var cells = answer.Criteria.Select(
                    (criterion, k) => Text($"{criterion.Title} {Ahead(answer, a, b, k)}")
                );
                Print(
                    $"{answer.Candidates[a].Source.Id} over {answer.Candidates[b].Source.Id}, cases of 200: {string.Join(", ", cells)}, together {answer.DrawsAhead(a, b)}"
                );
            }
        }
    }

    // On the raw figures, which the anchors can't cut off.
    private static int Ahead(ChoiceAnswer answer, int a, int b, int k)
    {
        var (one, other) = (answer.Candidates[a].Figures[k], answer.Candidates[b].Figures[k]);
        return Enumerable.Range(0, Figure.DrawCount).Count(d => one.At(d) > other.At(d));
    }

    private static string Cell(ChoiceAnswer answer, int a, int k)
    {
        var figure = answer.Candidates[a].Figures[k];
        return figure.Raw is { } raw
            ? Text($"{raw:0.0000} ± {figure.Error:0.0000}: {answer.Choice.Table.Counted(a, k):0.00}")
            : "missing";
    }

    private static void Winners(string title, string[] families, Wishes wishes)
    {
        Console.WriteLine($"**{title}**\n");
        Print($"| music, technique | {string.Join(" | ", Player.LevelNames)} |");
        Print($"|---|{string.Concat(Player.LevelNames.Select(_ => "---|"))}");
        foreach (var music in Repertoires)
        {
            foreach (var technique in Techniques)
            {
                var cells = Enumerable
                    .Range(0, Player.LevelNames.Length)
                    .Select(level => Winner(Ask(families, level, technique, music.Holds, wishes)));
                Print($"| {music.Name}, {Name(technique)} | {string.Join(" | ", cells)} |");
            }
        }

        Console.WriteLine();
    }

    private static string Winner(ChoiceAnswer answer)
    {
        var leader = answer.Ranking.Leader;
        var unclear = answer.LeadIsClear ? "" : " ~";
        return Text($"{answer.Leader.Source.Id} {100 * answer.AllWeightings.First[leader]:0} %{unclear}");
    }

    private static void Correlations()
    {
        var answer = Ask([.. Library.Families], 2, Technique.Alternate, Repertoires[0].Holds, Wishes.Usual);
        Print($"| | {string.Join(" | ", answer.Criteria.Select(criterion => criterion.Title))} |");
        Print($"|---|{string.Concat(answer.Criteria.Select(_ => "---|"))}");
        for (var k = 0; k < answer.Criteria.Length; k++)
        {
            var row = answer.Criteria.Select((_, other) => Text($"{Correlation(answer, k, other):0.00}"));
            Print($"| {answer.Criteria[k].Title} | {string.Join(" | ", row)} |");
        }
    }

    private static double Correlation(ChoiceAnswer answer, int one, int other)
    {
        var pairs = answer
            .Candidates.Select(candidate => (X: candidate.Figures[one].Raw, Y: candidate.Figures[other].Raw))
            .Where(pair => pair is { X: not null, Y: not null })
            .Select(pair => (X: pair.X ?? 0, Y: pair.Y ?? 0))
            .ToList();
        var (x, y) = (pairs.Average(pair => pair.X), pairs.Average(pair => pair.Y));
        return pairs.Sum(pair => (pair.X - x) * (pair.Y - y))
            / Math.Sqrt(
                pairs.Sum(pair => (pair.X - x) * (pair.X - x))
                    * pairs.Sum(pair => (pair.Y - y) * (pair.Y - y))
            );
    }

    private static ChoiceAnswer Ask(
        string[] families,
        int level,
        Technique technique,
        Func<int, bool> holds,
        Wishes wishes
    )
    {
        var player = Player.At(level);
        var music = BuiltInPieces
            .Lines.Where((_, number) => holds(number))
            .Select(piece => (piece.Id, piece.Line));
        return Chooser
            .Choose(
                new ChoiceQuestion
                {
                    Player = player,
                    Candidates =
                    [
                        .. families.Select(family => CandidateSource.OfFamily(family, technique).OrThrow()),
                    ],
                    Pieces = PieceCollection.Of(music, player, technique).OrThrow(),
                    Wishes = wishes,
                    LeavesOutUnfit = true,
                }
            )
            .OrThrow();
    }

    private static string Name(Technique technique) => RecipeWords.Techniques.Of(technique);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static void Print(FormattableString text) => Console.WriteLine(Text(text));
}
