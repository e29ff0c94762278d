using Passagework.Choosing;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Measures what a question names, once; weighing and filtering it then is quick.</summary>
internal sealed class WeighExercises(GatherExercises exercises, GatherMusic music)
{
    /// <summary>Everything measured for the player of the question; refused where there is no music.</summary>
    public async Task<Outcome<Weighing>> Measure(Asked asked, CancellationToken stop = default)
    {
        var gathered = await exercises.Gather(asked, stop);
        if (!(await music.Gather(asked, stop)).TryGet(out var atHand, out var fault))
        {
            return fault;
        }

        var question = new ChoiceQuestion
        {
            Player = asked.Player,
            Candidates = gathered.Sources,
            Pieces = atHand.Pieces,
            Anchors = atHand.Anchors,
            Wishes = Wishes.Usual with { Marks = gathered.Marks },
            LeavesOutUnfit = true,
        };
        return await Task.Run(
            () =>
                Chooser
                    .Measure(question)
                    .Then<Weighing>(measured => new Weighing(asked, question, measured, gathered.Missing)),
            stop
        );
    }
}
