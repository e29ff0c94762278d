using CsCheck;
using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class LeadTests
{
    [Fact]
    public void The_leader_is_ahead_by_these_terms()
    {
        var lead = Lead.Of(Questions.Running(), 3, 1);

        Questions.Near([-0.0400, 0.0267, 0.0225, -0.0117, 0.0417], lead.Terms, 0.00005);
        Assert.Equal(0.0392, lead.Margin, 0.00005);
        Assert.Equal(1, lead.ChanceAhead);
    }

    [Fact]
    public void Errors_make_the_lead_soft()
    {
        var lead = Lead.Of(Questions.Running(error: 0.05), 3, 1);

        Assert.Equal(0.03428, lead.Error, 0.000005);
        Assert.Equal(0.8734, lead.ChanceAhead, 0.00005);
        Assert.Equal(0.1266, Lead.Of(Questions.Running(error: 0.05), 1, 3).ChanceAhead, 0.00005);
    }

    [Fact]
    public void A_missing_value_is_as_uncertain_as_any_value() =>
        // 1 over the root of 12, half of the weight.
        Assert.Equal(
            0.14434,
            Lead.Of(
                Questions.Of(
                    [1, 1],
                    [
                        [1, double.NaN],
                        [0, 1],
                    ]
                ),
                0,
                1
            ).Error,
            0.000005
        );

    [Fact]
    public void Without_lead_or_errors_neither_is_ahead() =>
        Assert.Equal(
            0.5,
            Lead.Of(
                Questions.Of(
                    [1],
                    [
                        [0.5],
                        [0.5],
                    ]
                ),
                0,
                1
            ).ChanceAhead
        );

    [Fact]
    public void The_normal_distribution_is_the_tabled_one()
    {
        // Standard normal table.
        Assert.Equal(0.5, NormalDistribution.Below(0));
        Assert.Equal(0.975002, NormalDistribution.Below(1.96), 0.0000005);
        Assert.Equal(0.001350, NormalDistribution.Below(-3), 0.0000005);
        Assert.Equal(1, NormalDistribution.Below(40));
        Assert.Equal(0, NormalDistribution.Below(-40));
    }

    [Fact]
    public void Terms_add_up_to_the_margin_exactly() =>
        Questions.Fine.Sample(choice =>
        {
            var ranking = Ranking.Of(choice);
            var lead = Lead.Of(choice, ranking.Leader, ranking.RunnerUp);
            var sum = 0.0;
            foreach (var term in lead.Terms)
            {
                sum += term;
            }

            Assert.Equal(sum, lead.Margin);
            Assert.Equal(ranking.Standings[0].Score - ranking.Standings[1].Score, lead.Margin, 1e-14);
        });
}
