namespace Passagework.Sound.Takes;

/// <summary>Renders a note alone, at its place between two samples, and reads when it rises.</summary>
internal sealed class AttackMeter(Studio studio)
{
    private const double PeakSeconds = 0.04;

    /// <summary>Room for the rounding of a stroke, which begins before its time.</summary>
    private const double BeforeSeconds = 0.02;

    /// <summary>The instants of an event's first rise, in seconds of its own time.</summary>
    /// <exception cref="System.Diagnostics.UnreachableException">The note makes no sound.</exception>
    public AttackTimes Of(StringEvent note)
    {
        var earlier = Math.Floor((note.Seconds - BeforeSeconds) * studio.SampleRate) / studio.SampleRate;
        var alone = note with { Seconds = note.Seconds - earlier, EndSeconds = note.EndSeconds - earlier };
        var samples = new float[(int)((BeforeSeconds + PeakSeconds) * studio.SampleRate)];
        studio.Renderer([alone]).Render(samples, 0);
        var peak = Strings.Samples.Peak(samples);
        return peak > 0
            ? new AttackTimes(
                earlier + First(samples, 0.01f * peak),
                earlier + First(samples, 0.1f * peak),
                earlier + First(samples, 0.5f * peak)
            )
            : throw new System.Diagnostics.UnreachableException("A struck string sounds.");
    }

    private double First(float[] samples, float level) =>
        Array.FindIndex(samples, sample => Math.Abs(sample) >= level) / (double)studio.SampleRate;
}
