using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Foundation;

namespace Passagework.Tests.Choosing;

public class ChoiceFaultTests
{
    private static readonly ImmutableArray<string> Criteria = ["load", "music"];

    [Theory]
    [InlineData("music: a weight of -1; a number not below 0", -1)]
    [InlineData("music: a weight of NaN; a number not below 0", double.NaN)]
    [InlineData("music: a weight of Infinity; a number not below 0", double.PositiveInfinity)]
    [InlineData("weights: all weights are 0; at least one above 0", 0)]
    public void Weights_that_are_none_are_refused(string expected, double weight) =>
        Assert.Equal(expected, Said(CriterionWeights.Of(Criteria, [0, weight])));

    [Fact]
    public void Weights_of_any_size_sum_to_one()
    {
        Assert.Equal([0.5, 0.5], CriterionWeights.Of(Criteria, [1e308, 1e308]).OrThrow().Shares);
        Assert.Equal([0.5, 0.5], CriterionWeights.Of(Criteria, [1e-320, 1e-320]).OrThrow().Shares);
    }

    [Theory]
    [InlineData("A, music: a value of NaN; from 0 to 1, or missing", double.NaN, 0)]
    [InlineData("A, music: a value of 1.5; from 0 to 1, or missing", 1.5, 0)]
    [InlineData("A, music: a value of -0.1; from 0 to 1, or missing", -0.1, 0)]
    [InlineData("A, music: an error of -0.1; from 0 to 1", 0.5, -0.1)]
    [InlineData("A, music: an error of NaN; from 0 to 1", 0.5, double.NaN)]
    public void Values_that_are_none_are_refused(string expected, double value, double error) =>
        Assert.Equal(expected, Said(Table(Row("A", new(0.5), new(value, error)), Row("B", new(0), new(1)))));

    [Fact]
    public void One_candidate_or_none_is_no_choice()
    {
        Assert.Equal(
            "candidates: only 1 candidate to choose by or from; at least 2",
            Said(Table(Row("A", new(0.5), new(0.5))))
        );
        Assert.Equal("candidates: no candidate to choose by or from; at least 2", Said(Table()));
        Assert.Equal("criteria: no criterion to choose by or from; at least 1", Said(ChoiceTable.Of([], [])));
    }

    [Fact]
    public void A_name_is_there_once()
    {
        Assert.Equal(
            "the candidate 'A' is there twice; each once",
            Said(Table(Row("A", new(0.5), new(0.5)), Row("A", new(0.1), new(0.2))))
        );
    }

    [Fact]
    public void What_nobody_can_be_measured_on_must_not_count()
    {
        var table = Table(Row("A", new(0.5), new(null)), Row("B", new(0.1), new(null))).OrThrow();

        Assert.Equal(
            "music: no candidate can be measured on this; a weight of 0, or other candidates",
            Said(Choice.Of(table, CriterionWeights.Of(Criteria, [1, 1]).OrThrow()))
        );
        Assert.IsType<Outcome<Choice>.Done>(
            Choice.Of(table, CriterionWeights.Of(Criteria, [1, 0]).OrThrow())
        );
    }

    [Fact]
    public void Who_has_nothing_that_counts_is_no_candidate()
    {
        var table = Table(Row("A", new(0.5), new(null)), Row("B", new(0.1), new(0.5))).OrThrow();

        Assert.Equal(
            "A: none of the criteria that count can be measured; leave it out, or weigh other criteria",
            Said(Choice.Of(table, CriterionWeights.Of(Criteria, [0, 1]).OrThrow()))
        );
    }

    private static Candidate Row(string id, params Mark[] marks) => new(id, [.. marks]);

    private static Outcome<ChoiceTable> Table(params Candidate[] rows) => ChoiceTable.Of(Criteria, [.. rows]);

    private static string Said<T>(Outcome<T> outcome) =>
        outcome.TryGet(out _, out var fault) ? "no fault" : fault.ToString();
}
