using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class RegretTests
{
    [Fact]
    public void The_worst_that_a_choice_may_cost() =>
        Questions.Near(
            [0.2500, 0.1800, 0.1400, 0.1000, 0.4000],
            Regret.Greatest(
                Questions.Running().Table,
                [Questions.G, Questions.U, Questions.B, Questions.H, Questions.R]
            ),
            0.00005
        );
}
