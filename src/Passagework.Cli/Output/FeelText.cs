using Passagework.Rhythm;

namespace Passagework.Cli.Output;

/// <summary>A feel and how groups lie in it, in words.</summary>
internal static class FeelText
{
    public static string Of(GradedFeel graded, Meter meter) =>
        $"{FeelNames.Of(graded.Feel, meter)} {Grade(graded.Grade)}";

    private static string Grade(FeelGrade grade) =>
        grade switch
        {
            FeelGrade.Locked => "on every beat",
            FeelGrade.Nested => "inside the beat",
            FeelGrade.Resolving => "across the beat",
            _ => "open",
        };
}
