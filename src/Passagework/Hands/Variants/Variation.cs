using Passagework.Exercises;

namespace Passagework.Hands.Variants;

/// <summary>One thing that may be changed about an exercise.</summary>
/// <param name="Words">What is changed, such as <c>by two steps</c>.</param>
/// <param name="Recipe">The changed exercise; it need not be playable.</param>
internal sealed record Variation(string Words, Recipe Recipe);
