namespace Passagework.Rhythm;

/// <summary>What players call the usual feels.</summary>
public static class FeelNames
{
    /// <summary>Such as <c>triplets</c> or <c>swung eighths</c>; counted by notes a beat in simple metres.</summary>
    public static string Of(Feel feel)
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
}
