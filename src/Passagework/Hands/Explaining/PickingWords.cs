using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands.Explaining;

/// <summary>What the picking hand does from one stroke to the next, in words.</summary>
/// <param name="measured">The exercise.</param>
internal sealed class PickingWords(Measurement measured)
{
    private readonly Realization _played = measured.Realization;

    /// <summary>A sentence without its full stop.</summary>
    public string Of(int note)
    {
        var to = _played.Notes[note];
        if (to.Stroke == Stroke.None)
        {
            return $"The picking hand rests: the note is {SlurWords.Of(_played.Notes[note - 1], to)}";
        }

        var struck = measured.Planned.Strokes.Struck;
        var at = IndexOf(note);
        return at == 0 ? First(to) : Change(struck[at - 1], struck[at], to);
    }

    /// <summary>Number of the struck note among the struck ones.</summary>
    public int IndexOf(int note)
    {
        var struck = measured.Planned.Strokes.Struck;
        var at = 0;
        while (struck[at].Note != note)
        {
            at++;
        }

        return at;
    }

    private static string First(PlayedNote to) =>
        to.Stroke is Stroke.Down or Stroke.Up && to.Tones.All(tone => tone.Stroke == to.Stroke)
            ? $"The pick begins with {Named(to.Stroke)}"
            : $"{Actors(to)} {Plucks(to)} first";

    private static string Change(StruckNote from, StruckNote to, PlayedNote note)
    {
        if (!to.State.IsPicked)
        {
            return Plucked(from, to, note);
        }

        if (note.RakedFrom is { } raked)
        {
            return $"The pick is dragged from string {raked} into {Named(to.State.Action)}";
        }

        if (to.State.Chord is not null)
        {
            return $"The pick brushes through the strings of {NumberWords.Of(note.Tones.Count())} notes with {Named(to.State.Action)}";
        }

        return from.State.IsPicked
            ? Picked(from, to)
            : $"The pick plays {Named(to.State.Action)} after {Actor(from.State.Action)}{Strings(from, to)}";
    }

    private static string Picked(StruckNote from, StruckNote to)
    {
        var change = StrokeChange.Of(from.State, to.State);
        var (one, other) = (Named(from.State.Action), Named(to.State.Action));
        var again = Stroked(to.State.Action);
        return change.Kind switch
        {
            ChangeKind.SameString when one == other => $"The pick makes another {again} on the same string",
            ChangeKind.SameString => $"The pick goes from {one} to {other} on the same string",
            ChangeKind.SweepStep when change.Distance == 1 =>
                $"The pick carries its {again} on to the next string",
            ChangeKind.SweepStep => $"The pick carries its {again} on{Over(from, to, change.Distance)}",
            ChangeKind.Against =>
                $"The pick repeats its {again} against the crossing{Over(from, to, change.Distance)}",
            ChangeKind.Inside =>
                $"The pick goes from {one} to {other}{Over(from, to, change.Distance)}, inside",
            _ => $"The pick goes from {one} to {other}{Over(from, to, change.Distance)}, outside",
        };
    }

    // The fretting hand's sentence has told which strings are passed over, unless notes without a stroke lie between.
    private static string Over(StruckNote from, StruckNote to, int distance)
    {
        var told = to.Note - from.Note == 1;
        return distance switch
        {
            1 => " on the next string",
            2 => told ? " across the same string" : " across a string",
            _ => $" across {(told ? "the same " : "")}{NumberWords.Of(distance - 1)} strings",
        };
    }

    private static string Plucked(StruckNote from, StruckNote to, PlayedNote note)
    {
        var again = !from.State.IsPicked && from.State.Action == to.State.Action && note.With.IsEmpty;
        return again
            ? $"{Actors(note)} plucks again{Strings(from, to)}"
            : $"{Actors(note)} {Plucks(note)} after {Before(from)}{Strings(from, to)}";
    }

    private static string Before(StruckNote from) =>
        from.State.IsPicked ? $"the pick's {Stroked(from.State.Action)}" : Actor(from.State.Action);

    private static string Strings(StruckNote from, StruckNote to) =>
        PlaceWords
            .Across(from.State.String, to.State.String)
            .Replace("on one string", "on the same string", StringComparison.Ordinal);

    private static string Plucks(PlayedNote note) => note.With.IsEmpty ? "plucks" : "pluck together";

    private static string Actors(PlayedNote note) =>
        NumberWords.Sentence(
            note.With.IsEmpty
                ? Actor(note.Stroke)
                : NumberWords.List([.. note.Tones.Select(tone => Actor(tone.Stroke)).Distinct()])
        );

    private static string Named(Stroke stroke) => stroke == Stroke.Down ? "a down-stroke" : "an up-stroke";

    private static string Stroked(Stroke stroke) => stroke == Stroke.Down ? "down-stroke" : "up-stroke";

    /// <summary>Who strikes: the pick, the thumb, the middle finger.</summary>
    public static string Actor(Stroke stroke) =>
        stroke switch
        {
            Stroke.Thumb => "the thumb",
            Stroke.Index => "the index finger",
            Stroke.Middle => "the middle finger",
            Stroke.Ring => "the ring finger",
            _ => "the pick",
        };
}
