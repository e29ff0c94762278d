using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>What was read from a Standard MIDI File.</summary>
/// <param name="Recipe">The line as pitches without places.</param>
/// <param name="Warnings">What had to be guessed or changed; the first hundred, then how many more.</param>
/// <param name="LeftOut">Notes that a line of one note at a time can't hold; the first thousand.</param>
/// <param name="Tracks">All tracks that hold notes.</param>
/// <param name="Track">Number of the track that was read.</param>
/// <param name="Residual">How far the file's onsets lie from the written ones.</param>
public sealed record MidiImport(
    Recipe Recipe,
    ImmutableArray<MidiWarning> Warnings,
    ImmutableArray<MidiLeftOut> LeftOut,
    ImmutableArray<MidiTrack> Tracks,
    int Track,
    MidiResidual Residual
)
{
    /// <summary>All notes left out, also those beyond the list.</summary>
    public required int NotesLeftOut { get; init; }
}

/// <summary>A track of the file, or a channel of it where all lie in one track.</summary>
/// <param name="Number">From 1, in the order of the file.</param>
/// <param name="Name">As the file names it; empty when it doesn't.</param>
/// <param name="Notes">How many notes it holds.</param>
/// <param name="IsDrums">Whether it is on channel 10.</param>
public sealed record MidiTrack(int Number, string Name, int Notes, bool IsDrums);

/// <summary>Something that had to be guessed or changed.</summary>
/// <param name="Text">What, as a phrase without a full stop.</param>
/// <param name="Where">Position in the file, or bar and beat; empty when it concerns the whole.</param>
public sealed record MidiWarning(string Text, string Where = "")
{
    /// <summary>Such as <c>bar 3, beat 2: …</c>.</summary>
    public override string ToString() => Where.Length == 0 ? Text : $"{Where}: {Text}";
}

/// <summary>A note that begins together with a higher one.</summary>
/// <param name="Midi">The key that sounds.</param>
/// <param name="Where">Bar and beat.</param>
public sealed record MidiLeftOut(int Midi, string Where);

/// <summary>How far the file's onsets lie from the written ones.</summary>
/// <param name="LargestTicks">The largest distance, in ticks.</param>
/// <param name="MeanTicks">The mean distance, in ticks.</param>
/// <param name="LargestMs">The largest distance, in milliseconds at the tempo of the line (120 quarters when none is written).</param>
/// <param name="MeanMs">The mean distance, in milliseconds at the same tempo.</param>
public sealed record MidiResidual(double LargestTicks, double MeanTicks, double LargestMs, double MeanMs)
{
    /// <summary>Such as <c>at most 3.0 ms, 1.2 ms on average</c>.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"at most {LargestMs:F1} ms ({LargestTicks:F1} ticks), {MeanMs:F1} ms on average"
        );
}
