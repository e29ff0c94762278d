using Passagework.Choosing;
using Passagework.Choosing.Measures;
using Passagework.Hands;
using Passagework.Rhythm;
using static System.FormattableString;

namespace Passagework.Studio.Features.Choosing;

/// <summary>An exercise that is not weighed.</summary>
/// <param name="Title">Which.</param>
/// <param name="Filter">What left it out, such as "a stretch over four frets".</param>
/// <param name="Why">What it has instead.</param>
public sealed record LeftOut(string Title, string Filter, string Why);

/// <summary>What an exercise must be to be weighed at all.</summary>
internal static class ExerciseFilters
{
    /// <summary>Times that an exercise has to be gone through within the minutes (assumed by us).</summary>
    public const int TimesThrough = 10;

    /// <summary>Why an exercise is left out; null when it is weighed.</summary>
    public static LeftOut? Refusal(Asked asked, MeasuredCandidate candidate) =>
        TooSlow(asked, candidate)
        ?? TooWide(asked, candidate)
        ?? OutOfFeel(asked, candidate)
        ?? TooLong(asked, candidate);

    private static LeftOut? TooSlow(Asked asked, MeasuredCandidate candidate)
    {
        var least = candidate.Forms.Min(form => form.Measured.Ceiling.Least);
        return asked.LeastTempo is { } wanted && least < wanted
            ? new LeftOut(
                candidate.Source.Title,
                Invariant($"a top tempo below {wanted:0.#} notes a second"),
                Invariant($"tops out at {least:0.0} notes a second")
            )
            : null;
    }

    private static LeftOut? TooWide(Asked asked, MeasuredCandidate candidate)
    {
        var stretch = candidate.Forms.Max(form => form.Measured.Fretting.Stretch);
        return stretch > asked.WidestStretch
            ? new LeftOut(
                candidate.Source.Title,
                Invariant($"a stretch over {asked.WidestStretch} frets"),
                Invariant($"stretches over {stretch} frets in one position")
            )
            : null;
    }

    private static LeftOut? OutOfFeel(Asked asked, MeasuredCandidate candidate)
    {
        if (Feels.NameOf(asked.Feel) is not { } name)
        {
            return null;
        }

        var place = Feels.All.Select(feel => feel.Key).ToList().IndexOf(asked.Feel!);
        var fits = candidate.Forms.All(form =>
            form.Measured.Fit is { } fit && fit.Feels[place].Grade != FeelGrade.Open
        );
        return fits
            ? null
            : new LeftOut(
                candidate.Source.Title,
                $"does not come out even in {name}",
                Invariant($"its groups do not meet the bar line within {GroupFit.PhraseBars} bars of {name}")
            );
    }

    private static LeftOut? TooLong(Asked asked, MeasuredCandidate candidate)
    {
        var minutes = candidate.Forms.Max(SecondsThrough) * TimesThrough / 60;
        return minutes > asked.Minutes
            ? new LeftOut(
                candidate.Source.Title,
                Invariant($"above {asked.Minutes} minutes"),
                Invariant($"{TimesThrough} times through at a relaxed tempo take {minutes:0.0} minutes")
            )
            : null;
    }

    // Once, at the tempo up to which playing is relaxed.
    private static double SecondsThrough(MeasuredForm form)
    {
        var line = form.Realization.Line;
        var pulses = (line.End / line.Recipe.Rhythm.Pulse).ToDouble();
        return form.Measured.Ceiling.Least is { } least ? pulses / (Ceiling.RelaxedShare * least) : 0;
    }
}
