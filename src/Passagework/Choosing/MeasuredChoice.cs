using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>The candidates of a question, measured: weighing them anew costs little.</summary>
/// <param name="Candidates">In the order of the question.</param>
/// <param name="LeftOut">Candidates that no hand can play, with the reason.</param>
public sealed record MeasuredChoice(
    ImmutableArray<MeasuredCandidate> Candidates,
    ImmutableArray<(string Id, Fault Why)> LeftOut
);
