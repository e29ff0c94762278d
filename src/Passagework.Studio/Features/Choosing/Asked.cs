using System.Collections.Immutable;
using System.Globalization;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Studio.Features.Choosing;

/// <summary>What a teacher asks when choosing: for whom, what for, out of which exercises, and what matters how much.</summary>
public sealed record Asked
{
    /// <summary>The weight of what matters most.</summary>
    public const int MostWeight = 100;

    /// <summary>The player's level, 0 beginner to 4 expert.</summary>
    public double Level { get; init; } = 2;

    /// <summary>Size of the fretting hand, 1 is the average adult's; 0.5 to 1.5.</summary>
    public double HandSize { get; init; } = 1;

    /// <summary>Fretting fingers, 1 to 4, that are never used.</summary>
    public ImmutableArray<int> Avoid { get; init; } = [];

    /// <summary>How all of it is picked.</summary>
    public Technique Technique { get; init; } = Technique.Alternate;

    /// <summary>What it is for, in the teacher's words.</summary>
    public string Purpose { get; init; } = "";

    /// <summary>Minutes a day, 1 to 240.</summary>
    public int Minutes { get; init; } = 10;

    /// <summary>Least top tempo, notes a second; null for any.</summary>
    public double? LeastTempo { get; init; }

    /// <summary>Most frets between two fingers while the hand stays; null for any.</summary>
    public int? WidestStretch { get; init; }

    /// <summary>The feel in which it is to come out within a phrase, a key of <see cref="Feels"/>; null for any.</summary>
    public string? Feel { get; init; }

    /// <summary>Whether the teacher's own exercises on the shelf are weighed beside every family.</summary>
    public bool WithOwn { get; init; }

    /// <summary>Families, ids of the library and keys of own exercises; empty for every family.</summary>
    public ImmutableArray<string> Picked { get; init; } = [];

    /// <summary>Whether the teacher's own pieces are the music at hand, not the built-in ones.</summary>
    public bool OwnMusic { get; init; }

    /// <summary>How much each criterion matters, 0 to 100, by its id; one that is not named does not count.</summary>
    public ImmutableSortedDictionary<string, int> Weights { get; init; } =
        Criteria
            .All.Remove(Criteria.ComesOutEven)
            .ToImmutableSortedDictionary(criterion => criterion.Id, _ => MostWeight);

    /// <summary>The player's hands.</summary>
    internal Player Player => Player.At(Level) with { HandSize = HandSize, Avoid = Avoid };

    /// <summary>What measuring hangs on: two questions that have this alike need measuring once.</summary>
    internal string Measured =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Level} {HandSize} {string.Join(',', Avoid)} {Technique} {WithOwn} {OwnMusic} {string.Join('\n', Picked)}"
        );

    /// <summary>The same with one weight changed.</summary>
    public Asked Weighing(string criterion, int weight) =>
        this with
        {
            Weights = Weights.SetItem(criterion, Math.Clamp(weight, 0, MostWeight)),
        };

    /// <summary>The same with a criterion that no longer counts.</summary>
    public Asked NotCounting(string criterion) => this with { Weights = Weights.Remove(criterion) };
}
