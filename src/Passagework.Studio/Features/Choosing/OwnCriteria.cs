using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Choosing;

/// <summary>The teacher's own criteria, from the marks that exercises were given.</summary>
internal static class OwnCriteria
{
    /// <summary>
    /// Marks by criterion and exercise. A family has the mean of its forms' marks. A criterion that bears the name of one that is
    /// measured is not taken.
    /// </summary>
    public static ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, double>> Of(
        IReadOnlyCollection<MarkRow> marks,
        ImmutableArray<CandidateSource> sources
    ) =>
        marks
            .Where(mark => Criteria.All.All(measured => measured.Id != mark.Criterion))
            .GroupBy(mark => mark.Criterion)
            .ToImmutableSortedDictionary(
                criterion => criterion.Key,
                criterion =>
                    MarksOf(criterion.ToDictionary(mark => mark.Exercise, mark => mark.Value), sources),
                StringComparer.Ordinal
            );

    private static ImmutableSortedDictionary<string, double> MarksOf(
        Dictionary<string, double> marks,
        ImmutableArray<CandidateSource> sources
    ) =>
        sources
            .Select(source => (source.Id, Given: Given(marks, source.Id)))
            .Where(one => one.Given.Count > 0)
            .ToImmutableSortedDictionary(one => one.Id, one => one.Given.Average(), StringComparer.Ordinal);

    private static List<double> Given(Dictionary<string, double> marks, string id) =>
        Library
            .OfFamily(id)
            .Select(form => form.Id)
            .Prepend(id)
            .Distinct()
            .Where(marks.ContainsKey)
            .Select(key => Math.Clamp(marks[key], 0, 1))
            .ToList();
}
