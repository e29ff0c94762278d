namespace Passagework.Sound.Strings;

/// <summary>The key that sounds in the course of a stroke: bend, vibrato, and the way to the note a slide goes to.</summary>
internal sealed class PitchPath(int sampleRate)
{
    private const double LongestSlide = 0.07;
    private const double VibratoGrows = 0.15;
    private const double FretCrossing = 0.35;

    /// <summary>The sample from which the pitch of a stroke moves; positive infinity when it stands.</summary>
    public double MovesFrom(Stroke stroke)
    {
        if (!stroke.Event.Bend.IsEmpty || stroke.Event.Vibrato is not null)
        {
            return stroke.Start;
        }

        return stroke.Slur is { Event.Action: StringAction.Slide } slide
            ? slide.Start - SlideLength(stroke, slide)
            : double.PositiveInfinity;
    }

    /// <summary>The key at a sample of the stroke.</summary>
    public double KeyAt(Stroke stroke, double sample)
    {
        var since = Math.Max(0, (sample - stroke.Start) / sampleRate);
        var key = stroke.Event.Key + BendAt(stroke.Event, since) + VibratoAt(stroke.Event, since);
        if (stroke.Slur is not { Event.Action: StringAction.Slide } slide)
        {
            return key;
        }

        var length = SlideLength(stroke, slide);
        var way = (sample - slide.Start + length) / length;
        return way <= 0 ? key : key + Travelled(slide.Event.Key - key, Math.Min(way, 1));
    }

    private double SlideLength(Stroke from, Stroke slide) =>
        Math.Min(LongestSlide * sampleRate, (slide.Start - from.Start) / 2);

    // From fret to fret: the pitch stands between the wires and crosses each in a part of its time.
    private static double Travelled(double semitones, double way)
    {
        var frets = Math.Max(1, Math.Round(Math.Abs(semitones)));
        var passed = Math.Min(Math.Floor(way * frets), frets - 1);
        var inside = (way * frets) - passed;
        return semitones / frets * (passed + Smooth((inside - 1 + FretCrossing) / FretCrossing));
    }

    private static double BendAt(StringEvent note, double since)
    {
        var (seconds, semitones) = (0.0, 0.0);
        foreach (var point in note.Bend)
        {
            if (since < point.Seconds)
            {
                var share = Smooth((since - seconds) / (point.Seconds - seconds));
                return semitones + ((point.Semitones - semitones) * share);
            }

            (seconds, semitones) = point;
        }

        return semitones;
    }

    private static double VibratoAt(StringEvent note, double since)
    {
        if (note.Vibrato is not { } vibrato)
        {
            return 0;
        }

        var depth = Smooth(since / VibratoGrows) * vibrato.Semitones / 2;
        return depth * (1 - Math.Cos(Math.Tau * vibrato.Hz * since));
    }

    private static double Smooth(double x)
    {
        x = Math.Clamp(x, 0, 1);
        return x * x * (3 - (2 * x));
    }
}
