using Passagework.Rhythm;

namespace Passagework.Cli.Output;

/// <summary>A feel and how groups lie in it, in words.</summary>
internal static class FeelText
{
    public static string Of(GradedFeel graded) => $"{Name(graded.Feel)} {Grade(graded.Grade)}";

    private static string Name(Feel feel)
    {
        var name = feel.NotesPerBeat switch
        {
            2 => "eighths",
            3 => "triplets",
            4 => "sixteenths",
            5 => "quintuplets",
            _ => "sextuplets",
        };
        return feel.Swing.IsStraight ? name : "swung " + name;
    }

    private static string Grade(FeelGrade grade) =>
        grade switch
        {
            FeelGrade.Locked => "on every beat",
            FeelGrade.Nested => "inside the beat",
            FeelGrade.Resolving => "across the beat",
            _ => "open",
        };
}
