using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;

namespace Passagework.Studio.Features.Choosing;

/// <summary>What one criterion adds to the lead of one exercise over another.</summary>
/// <param name="Title">The criterion.</param>
/// <param name="Points">Weight × difference, in points of 100; below 0 it speaks for the other.</param>
/// <param name="IsClear">Whether the difference is larger than its error.</param>
internal readonly record struct LeadTerm(string Title, double Points, bool IsClear);

/// <summary>Why one exercise and not another.</summary>
internal sealed class SideBySide
{
    private readonly Weighed _weighed;
    private readonly Lazy<Comparison> _comparison;

    /// <summary>Sets two side by side.</summary>
    /// <param name="weighed">Where they were ranked.</param>
    /// <param name="first">Key of the one argued for; the best where it is not there.</param>
    /// <param name="second">Key of the other; the next where it is not there.</param>
    public SideBySide(Weighed weighed, string? first, string? second)
    {
        _weighed = weighed;
        (First, Second) = (Find(first) ?? Leader, Find(second) ?? RunnerUp);
        if (First == Second)
            Second = First == Leader ? RunnerUp : Leader;

        _comparison = new(() => Comparison.Of(weighed.Answer, First.Index, Second.Index));
        Terms =
        [
            .. weighed
                .Columns.Zip(Points())
                .Select(pair => new LeadTerm(
                    pair.First.Title,
                    pair.Second,
                    weighed.Answer.IsClear(First.Index, Second.Index, pair.First.Place)
                )),
        ];
    }

    /// <summary>The one argued for.</summary>
    public RankedExercise First { get; }

    /// <summary>The other.</summary>
    public RankedExercise Second { get; }

    /// <summary>Whether they are the best and the next, of which the verdict speaks.</summary>
    public bool IsVerdict => First == Leader && Second == RunnerUp;

    /// <summary>What each criterion adds, in the order of the columns.</summary>
    public ImmutableArray<LeadTerm> Terms { get; }

    /// <summary>What speaks for the first.</summary>
    public string For => string.Join(' ', _comparison.Value.Reasons);

    /// <summary>What speaks for the second.</summary>
    public string Against => _comparison.Value.Against;

    /// <summary>In how many of 100 ways of weighing the first is ahead.</summary>
    public int Ahead => (int)Math.Round(100 * _comparison.Value.ShareOfWeightings);

    private RankedExercise Leader => _weighed.Exercises[0];

    private RankedExercise RunnerUp =>
        _weighed.Exercises.First(exercise => exercise.Index == _weighed.Answer.RunnerUp);

    private RankedExercise? Find(string? key) =>
        _weighed.Exercises.FirstOrDefault(exercise => exercise.Key.Text == key);

    private IEnumerable<double> Points()
    {
        var terms = Lead.Of(_weighed.Answer.Choice, First.Index, Second.Index).Terms;
        return _weighed.Columns.Select(column => 100 * terms[column.Place]);
    }
}
