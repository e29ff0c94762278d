using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Candidates against criteria: values from 0 to 1, some of them missing, each with its error.</summary>
public sealed class ChoiceTable
{
    /// <summary>Most candidates of one table.</summary>
    public const int MostCandidates = 5000;

    /// <summary>Most criteria of one table.</summary>
    public const int MostCriteria = 64;

    /// <summary>
    /// What a missing value counts as in a sum: the mean of the uniform distribution that stands for it. Never
    /// silent: <see cref="Standing.MissingWeight"/> says how much of the score rests on it.
    /// </summary>
    public const double MissingCountsAs = 0.5;

    /// <summary>Standard deviation of that distribution, 1 over the root of 12.</summary>
    public const double MissingError = 0.28867513459481287;

    private ChoiceTable(ImmutableArray<string> criteria, ImmutableArray<Candidate> candidates)
    {
        Criteria = criteria;
        Candidates = candidates;
    }

    /// <summary>Names of the criteria.</summary>
    public ImmutableArray<string> Criteria { get; }

    /// <summary>The candidates, oldest first: the order in which equal ones are listed.</summary>
    public ImmutableArray<Candidate> Candidates { get; }

    /// <summary>A table of at least two candidates and one criterion.</summary>
    /// <exception cref="ArgumentException">A candidate has more or fewer marks than there are criteria.</exception>
    public static Outcome<ChoiceTable> Of(
        ImmutableArray<string> criteria,
        ImmutableArray<Candidate> candidates
    )
    {
        if (candidates.Any(candidate => candidate.Marks.Length != criteria.Length))
        {
            throw new ArgumentException("One mark per criterion.", nameof(candidates));
        }

        var fault =
            WrongNumber(criteria.Length, 1, MostCriteria, "criterion", "criteria")
            ?? WrongNumber(candidates.Length, 2, MostCandidates, "candidate", "candidates")
            ?? Repeated(criteria, "criterion")
            ?? Repeated(candidates.Select(candidate => candidate.Id), "candidate")
            ?? candidates
                .Select(candidate => WrongMark(criteria, candidate))
                .FirstOrDefault(f => f is not null);
        return fault ?? (Outcome<ChoiceTable>)new ChoiceTable(criteria, candidates);
    }

    /// <summary>The value, or what a missing one counts as.</summary>
    public double Counted(int candidate, int criterion) =>
        Candidates[candidate].Marks[criterion].Value ?? MissingCountsAs;

    /// <summary>Whether a value is missing.</summary>
    public bool IsMissing(int candidate, int criterion) =>
        Candidates[candidate].Marks[criterion].Value is null;

    private static Fault? WrongNumber(int count, int least, int most, string one, string many)
    {
        if (count < least)
        {
            var found = count == 0 ? $"no {one}" : $"only {count} {one}";
            return new Fault($"{found} to choose by or from", many, $"at least {least}");
        }

        return count > most ? new Fault($"{count} {many} are too many", many, $"at most {most}") : null;
    }

    private static Fault? Repeated(IEnumerable<string> names, string kind)
    {
        var seen = new HashSet<string>();
        return names.FirstOrDefault(name => !seen.Add(name)) is { } twice
            ? new Fault($"the {kind} '{twice}' is there twice", "", "each once")
            : null;
    }

    private static Fault? WrongMark(ImmutableArray<string> criteria, Candidate candidate)
    {
        for (var k = 0; k < criteria.Length; k++)
        {
            var (value, error) = candidate.Marks[k];
            var where = $"{candidate.Id}, {criteria[k]}";
            if (value is not (null or (>= 0 and <= 1)))
            {
                return new Fault($"a value of {Text(value.Value)}", where, "from 0 to 1, or missing");
            }

            if (error is not (>= 0 and <= 1))
            {
                return new Fault($"an error of {Text(error)}", where, "from 0 to 1");
            }
        }

        return null;
    }

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);
}
