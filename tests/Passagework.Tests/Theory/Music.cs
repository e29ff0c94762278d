using Passagework.Theory;

namespace Passagework.Tests.Theory;

/// <summary>Values of the trade from their written form, for tests.</summary>
internal static class Music
{
    public static NoteName Name(string text) =>
        NoteName.TryParse(text, out var name) ? name : throw new ArgumentException(text, nameof(text));

    public static SpelledPitch Pitch(string text) =>
        SpelledPitch.TryParse(text, out var pitch) ? pitch : throw new ArgumentException(text, nameof(text));

    public static NoteSet Set(string root, string scale) =>
        NoteSet.TryNamed(Name(root), scale, out var set)
            ? set
            : throw new ArgumentException(scale, nameof(scale));

    public static Chord Chord(string text) =>
        Passagework.Theory.Chord.TryParse(text, out var chord)
            ? chord
            : throw new ArgumentException(text, nameof(text));

    public static string Names(NoteSet set) => string.Join(' ', Speller.Names(set));

    public static string Spell(NoteSet? set, params int[] keys) =>
        string.Join(' ', Speller.Spell(set, keys).Select(pitch => pitch.Name));
}
