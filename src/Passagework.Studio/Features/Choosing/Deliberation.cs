using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Foundation;
using static System.FormattableString;

namespace Passagework.Studio.Features.Choosing;

/// <summary>One teacher's choosing while it goes on: the question, what was measured, the answer, the way back.</summary>
/// <remarks>
/// Changes come faster than answers while a weight is dragged: an answer that was overtaken is followed by one to the latest
/// question, and those between are dropped. Everything but the work itself happens on the page's own thread.
/// </remarks>
public sealed class Deliberation
{
    private readonly WeighExercises _weigh;
    private readonly KeepQuestion _keep;
    private readonly ListDecisions _decisions;
    private readonly HeldControl<AskedStep> _held;
    private Weighing? _weighing;
    private Asked? _settled;
    private ImmutableArray<AskedStep> _steps = [];
    private bool _isWorking;
    private bool _isKeeping;

    internal Deliberation(
        WeighExercises weigh,
        KeepQuestion keep,
        ListDecisions decisions,
        TimeProvider time
    ) => (_weigh, _keep, _decisions, _held) = (weigh, keep, decisions, new HeldControl<AskedStep>(time));

    /// <summary>The question.</summary>
    public Asked Asked { get; private set; } = new();

    /// <summary>What was measured; null until it is.</summary>
    internal Weighing? Weighing => _weighing;

    /// <summary>The last answer that could be given; null until there is one.</summary>
    public Weighed? Answer { get; private set; }

    /// <summary>Why the question as it stands has no answer; null when it has.</summary>
    public Fault? Fault { get; private set; }

    /// <summary>Why it could not be kept; null when it is.</summary>
    public Fault? NotKept { get; private set; }

    /// <summary>Whether exercises are being measured.</summary>
    public bool IsMeasuring { get; private set; }

    /// <summary>What undoing takes back; null where there is nothing.</summary>
    public string? Undoes => _steps.IsEmpty ? null : _steps[^1].What;

    /// <summary>What shows the page anew.</summary>
    public Action? Changed { get; set; }

    /// <summary>Takes up the question that was kept, or a first one.</summary>
    /// <param name="first">A first question.</param>
    public async Task Resume(Asked first)
    {
        var kept = await _keep.Read();
        (Asked, _steps) = kept is null ? (first, []) : (kept.Asked, kept.Steps);
    }

    /// <summary>Answers the question as it stands, that of a decision, or one about exercises that another page picked.</summary>
    /// <param name="picked">Keys of exercises; empty for the question as it stands.</param>
    /// <param name="decision">The id of a decision; null for none.</param>
    /// <returns>Why the decision's question cannot be asked; null when there is nothing wrong.</returns>
    public async Task<Fault?> Begin(IReadOnlyList<string> picked, string? decision)
    {
        Fault? wrong = null;
        if (decision is not null)
        {
            if ((await QuestionOf(decision)).TryGet(out var asked, out wrong))
            {
                await Ask(asked, "the question before the decision");
                return null;
            }
        }
        else if (picked.Count > 0 && !Asked.Picked.SequenceEqual(picked))
        {
            await Ask(Asked with { Picked = [.. picked] }, "the exercises picked");
            return null;
        }

        await Work();
        return wrong;
    }

    /// <summary>Asks another question; undoing comes back to this one.</summary>
    /// <param name="next">The other question.</param>
    /// <param name="what">What is changed, such as "level from beginner to expert".</param>
    public async Task Ask(Asked next, string what)
    {
        if (AskedJson.Check(next) is { } wrong)
        {
            Fault = wrong;
            Changed?.Invoke();
            return;
        }

        _steps = _steps.Add(new AskedStep(Asked, what));
        Asked = next;
        await Task.WhenAll(Work(), Keep());
    }

    /// <summary>Moves a weight without a step of its own, while it is dragged.</summary>
    public Task Move(string criterion, int weight)
    {
        _settled ??= Asked;
        Asked = Asked.Weighing(criterion, weight);
        return Work();
    }

    /// <summary>Ends a drag or a press: all its moves are one step, and so are presses that follow one another.</summary>
    public async Task Settle(Criterion criterion)
    {
        if (_settled is not { } moved)
        {
            return;
        }

        _settled = null;
        var before = moved;
        if (_held.Last(criterion.Id) is { } held && _steps.LastOrDefault() == held)
        {
            before = held.Before;
            _steps = _steps.RemoveAt(_steps.Length - 1);
        }

        var (from, to) = (before.Weights[criterion.Id], Asked.Weights[criterion.Id]);
        if (from != to)
        {
            var step = new AskedStep(before, Invariant($"{criterion.Title} from {from} to {to}"));
            _steps = _steps.Add(step);
            _held.Moved(criterion.Id, step);
        }

        Changed?.Invoke();
        await Keep();
    }

    /// <summary>Takes the last change back.</summary>
    public async Task Undo()
    {
        if (!_steps.IsEmpty)
        {
            Asked = _steps[^1].Before;
            _steps = _steps.RemoveAt(_steps.Length - 1);
            await Task.WhenAll(Work(), Keep());
        }
    }

    private async Task<Outcome<Asked>> QuestionOf(string decision) =>
        Guid.TryParse(decision, out var id)
            ? await _decisions.Question(id)
            : new Fault("the address names no decision", Right: "one of those below");

    // One after the other, so that the last one stays; those between are dropped.
    private async Task Keep()
    {
        if (_isKeeping)
        {
            return;
        }

        _isKeeping = true;
        var before = NotKept;
        KeptQuestion done;
        do
        {
            done = new KeptQuestion(Asked, _steps);
            NotKept = await _keep.Keep(done);
        } while (!ReferenceEquals(done.Asked, Asked) || done.Steps != _steps);

        _isKeeping = false;
        if (NotKept != before)
            Changed?.Invoke();
    }

    private async Task Work()
    {
        if (_isWorking)
        {
            return;
        }

        _isWorking = true;
        try
        {
            Asked done;
            do
            {
                done = Asked;
                await Once(done);
            } while (!ReferenceEquals(done, Asked));
        }
        finally
        {
            _isWorking = false;
        }
    }

    private async Task Once(Asked asked)
    {
        if (_weighing?.Serves(asked) != true)
        {
            _weighing = null;
            IsMeasuring = true;
            Changed?.Invoke();
            var measured = await _weigh.Measure(asked);
            IsMeasuring = false;
            (_weighing, Fault) = (
                measured.TryGet(out var weighing, out var refused) ? weighing : null,
                refused
            );
        }

        if (_weighing is { } ready)
        {
            var answer = await Task.Run(() => ready.Weigh(asked));
            Fault = answer.TryGet(out var weighed, out var fault) ? null : fault;
            Answer = weighed ?? Answer;
        }

        Changed?.Invoke();
    }
}
