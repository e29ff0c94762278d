using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>Moves an idea to another root or another tuning, wherever its layout names places on the neck.</summary>
public static class KeyChange
{
    /// <summary>
    /// The same idea on another root. Layouts that lie near a fret are laid out anew; places that are written out move
    /// along the neck by the interval, up or down, whichever is shorter and fits.
    /// </summary>
    public static Outcome<Recipe> ToRoot(Recipe recipe, NoteName root)
    {
        if (recipe.Notes is not { } notes)
        {
            return new Fault(
                "this line names no root to change",
                "$.notes",
                "give notes.root and notes.scale"
            );
        }

        if (root == notes.Root)
        {
            return recipe;
        }

        var moved = recipe with { Notes = OnRoot(notes, root) };
        var up = WholeNumbers.Modulo(root.PitchClass - notes.Root.PitchClass, 12);
        int[] shifts = up <= 6 ? [up, up - 12] : [up - 12, up];
        Outcome<Recipe>? first = null;
        foreach (var shift in shifts)
        {
            var tried = Shifted(moved, shift, Between(notes.Root, root, shift));
            if (tried is Outcome<Recipe>.Done)
            {
                return tried;
            }

            first ??= tried;
        }

        return first ?? throw new System.Diagnostics.UnreachableException();
    }

    /// <summary>
    /// The same idea on another tuning: written places keep their pitch where their string reaches it, layouts near a
    /// fret are laid out anew. Scale length and spacing stay as written.
    /// </summary>
    public static Outcome<Recipe> ToTuning(Recipe recipe, Tuning tuning)
    {
        var before = recipe.Instrument.Tuning;
        if (tuning.Equals(before))
        {
            return recipe;
        }

        return Refretted(
            recipe with
            {
                Instrument = recipe.Instrument with { Tuning = tuning },
            },
            place =>
                place.String <= before.StringCount && place.String <= tuning.StringCount
                    ? before.Open(place.String).Midi - tuning.Open(place.String).Midi
                    : 0
        );
    }

    private static NoteSet OnRoot(NoteSet notes, NoteName root) =>
        notes.Scale is { } scale && NoteSet.TryNamed(root, scale, out var named)
            ? named
            : NoteSet.Listed(root, notes.Semitones);

    private static Interval Between(NoteName from, NoteName to, int semitones)
    {
        var start = new SpelledPitch(from, 4);
        return SpelledPitch.At(to, start.Midi + semitones) - start;
    }

    private static Outcome<Recipe> Shifted(Recipe recipe, int shift, Interval interval)
    {
        var moved = Refretted(recipe, _ => shift, interval);
        return moved.Then(found => LineBuilder.Build(found).Then<Recipe>(_ => found));
    }

    private static Outcome<Recipe> Refretted(
        Recipe recipe,
        Func<Place, int> shiftOf,
        Interval interval = default
    )
    {
        var mover = new PlaceMover(shiftOf, interval);
        var layout = mover.Move(recipe.Layout);
        var written = recipe.Written is { } line ? mover.Move(line) : null;
        // Where the notes are laid out anew, what a teacher fixed about the old ones says nothing.
        var locks = PlaceMover.MovesPlaces(recipe.Layout) ? mover.MoveLocks(recipe.Fretting.Locks) : [];
        if (mover.Lost is { } lost)
        {
            return new Fault(
                $"{lost} would leave the neck",
                "$.layout",
                "choose a root or tuning nearer to this one"
            );
        }

        return recipe with
        {
            Layout = layout,
            Written = written,
            Fretting = recipe.Fretting with { Locks = locks },
        };
    }
}
