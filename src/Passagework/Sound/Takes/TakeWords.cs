using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>The words of take files.</summary>
internal static class TakeWords
{
    public static WordList<TruthKind> Kinds { get; } =
        new(
            "kind of note",
            ("played", TruthKind.Played),
            ("missed", TruthKind.Missed),
            ("wrong", TruthKind.Wrong),
            ("extra", TruthKind.Extra)
        );

    public static WordList<GuitarSound> Guitars { get; } =
        new(
            "guitar",
            ("clean", GuitarSound.CleanElectric),
            ("steel", GuitarSound.SteelString),
            ("nylon", GuitarSound.Nylon),
            ("driven", GuitarSound.DrivenElectric)
        );

    public static WordList<StringAction> Techniques { get; } =
        new(
            "technique",
            ("down", StringAction.Down),
            ("up", StringAction.Up),
            ("thumb", StringAction.Thumb),
            ("finger", StringAction.Finger),
            ("hammer-on", StringAction.HammerOn),
            ("pull-off", StringAction.PullOff),
            ("slide", StringAction.Slide),
            ("dead", StringAction.Dead),
            ("rake", StringAction.Rake)
        );
}
