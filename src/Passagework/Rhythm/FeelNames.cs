namespace Passagework.Rhythm;

/// <summary>What players call the ways of dividing a beat.</summary>
public static class FeelNames
{
    /// <summary>Such as <c>triplets</c> or <c>swung eighths</c>.</summary>
    public static string Of(Feel feel, Meter meter) =>
        feel.Swing.IsStraight ? Of(feel.NotesPerBeat, meter) : "swung " + Of(feel.NotesPerBeat, meter);

    /// <summary>What a felt beat in so many parts is called; three in a dotted beat are its written notes.</summary>
    public static string Of(int parts, Meter meter) =>
        (parts, meter.IsCompound) switch
        {
            (2, true) => "duplets",
            (3, true) => NoteValue(meter.WrittenUnit),
            (4, true) => "quadruplets",
            (6, true) => NoteValue(meter.WrittenUnit * 2),
            (3, false) => "triplets",
            (5, _) => "quintuplets",
            (6, false) => "sextuplets",
            (7, _) => "septuplets",
            _ => NoteValue(meter.WrittenUnit * parts),
        };

    private static string NoteValue(int fractionOfWhole) =>
        fractionOfWhole switch
        {
            4 => "quarters",
            8 => "eighths",
            16 => "sixteenths",
            32 => "thirty-seconds",
            _ => "sixty-fourths",
        };
}
