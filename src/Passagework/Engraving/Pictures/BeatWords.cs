using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Pictures;

/// <summary>Says how to read a beat picture, and when the groups come home.</summary>
internal sealed class BeatWords(GroupRound round, Meter meter, Feel own, BeatOptions options)
{
    /// <summary>Sentences to be printed beside the picture.</summary>
    public string Caption()
    {
        var fit = round.Sentence is { } sentence ? NumberWords.Sentence(sentence) + "." : "";
        return string.Join(" ", new[] { Reading(), Home(), fit, Unshown() }.Where(text => text.Length > 0));
    }

    /// <summary>One sentence for those who do not see the picture.</summary>
    public string Description()
    {
        var feels = options.Feels.Select(feel =>
            $"{Name(feel)}: back on a beat after {NumberWords.Of(round.Beats(feel.NotesPerBeat), "beat")}, on the first of a bar after {NumberWords.Of(round.Bars(feel.NotesPerBeat, meter), "bar")}"
        );
        return $"Groups against the beat in {meter}; {string.Join("; ", feels)}.";
    }

    private string Reading() =>
        "One line is one beat; a large dot starts a group, a ring is the first start on a beat again. "
        + (round.HasGaps ? "Where a line has no dots a note is held or silent. " : "")
        + "Notes to a beat below.";

    // The feel of the exercise in words; the others can be read from the picture.
    private string Home()
    {
        var name = NumberWords.Sentence(Name(own));
        var beats = round.Beats(own.NotesPerBeat);
        if (round.IsLocked(own.NotesPerBeat))
        {
            return $"{name}, every group starts on a beat.";
        }

        if (beats == 1)
        {
            return $"{name}, a group starts on every beat, and others between.";
        }

        var who = round.Starts.Marks.Length == 1 ? "a group starts" : "the round begins";
        return $"{name}, {who} on a beat again after {NumberWords.Of(beats, "beat")}"
            + $", on the first of a bar after {NumberWords.Of(round.Bars(own.NotesPerBeat, meter), "bar")}.";
    }

    private string Unshown()
    {
        var longest = options.Feels.Max(feel => round.Beats(feel.NotesPerBeat));
        return longest > options.MostBeats
            ? $"Drawn are the first {NumberWords.Of(options.MostBeats, "beat")} of {NumberWords.Of(longest)}."
            : "";
    }

    private static string Name(Feel feel) =>
        $"with {NumberWords.Of(feel.NotesPerBeat, "note")} to the beat{(feel.Swing.IsStraight ? "" : ", swung")}";
}
