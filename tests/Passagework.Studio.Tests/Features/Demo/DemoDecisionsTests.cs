using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Demo;

namespace Passagework.Studio.Tests.Features.Demo;

public sealed class DemoDecisionsTests
{
    // Nothing of a decision is invented: the question is asked anew, and the answer has to be the same.
    [Fact]
    public async Task Every_kept_choice_is_the_answer_that_its_question_gets()
    {
        await using var room = await Room.Open();
        foreach (var decision in DemoDecisions.All)
        {
            var weighing = (
                await room.Feature<WeighExercises>()
                    .Measure(decision.Question, TestContext.Current.CancellationToken)
            ).OrThrow();
            var answer = weighing.Weigh(decision.Question).OrThrow();

            Assert.Empty(weighing.Missing);
            Assert.Empty(answer.LeftOut);
            Assert.Equal(
                (decision.Exercise, decision.Title, decision.Verdict),
                (answer.Exercises[0].Key.Text, answer.Exercises[0].Title, answer.Explanation.Verdict)
            );
        }
    }

    [Fact]
    public void Every_question_can_be_kept_and_read_again()
    {
        foreach (var decision in DemoDecisions.All)
        {
            var again = AskedJson.Read(AskedJson.Write(decision.Question)).OrThrow();
            Assert.Equal(AskedJson.Write(decision.Question), AskedJson.Write(again));
        }
    }
}
