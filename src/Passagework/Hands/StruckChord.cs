using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>How the strings of a chord are struck at once: a brush of the plectrum through them, or one actor for each.</summary>
/// <param name="Strings">The string of each tone, in the note's order.</param>
/// <param name="Strokes">What strikes each of them.</param>
internal sealed record StruckChord(ImmutableArray<int> Strings, ImmutableArray<Stroke> Strokes)
{
    /// <summary>The string nearest the ceiling.</summary>
    public int Ceiling { get; } = Strings.Max();

    /// <summary>The string nearest the floor.</summary>
    public int Floor { get; } = Strings.Min();

    /// <summary>Whether one stroke of the plectrum goes through all, muted strings between included.</summary>
    public bool IsBrush { get; } =
        Strokes[0] is Stroke.Down or Stroke.Up && Strokes.All(stroke => stroke == Strokes[0]);

    /// <summary>A down-stroke and an up-stroke through the strings.</summary>
    public static IEnumerable<StrokeState> Brushes(ImmutableArray<int> strings) =>
        new[] { Stroke.Down, Stroke.Up }.Select(stroke =>
        {
            var chord = new StruckChord(strings, [.. strings.Select(_ => stroke)]);
            var end = stroke == Stroke.Down ? chord.Floor : chord.Ceiling;
            return new StrokeState(stroke, strings[0], end) { Chord = chord };
        });

    /// <summary>The strings with one actor each, given from the ceiling to the floor.</summary>
    public static StrokeState Plucked(
        ImmutableArray<int> strings,
        ImmutableArray<Stroke> fromCeiling,
        int anchor
    )
    {
        var order = strings.OrderDescending().ToList();
        var strokes = strings.Select(number => fromCeiling[order.IndexOf(number)]).ToImmutableArray();
        return new StrokeState(strokes[0], strings[0], anchor) { Chord = new StruckChord(strings, strokes) };
    }
}
