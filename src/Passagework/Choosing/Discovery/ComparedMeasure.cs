namespace Passagework.Choosing.Discovery;

/// <summary>A measure on which candidates are compared.</summary>
/// <param name="Criterion">Its place in <see cref="RawMeasures.Criteria"/>.</param>
/// <param name="Sign">1 where more is better, −1 where a teacher's anchors run downwards.</param>
internal readonly record struct ComparedMeasure(int Criterion, int Sign);
