using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Theory;
using static Passagework.Exercises.TypedText;

namespace Passagework.Exercises;

/// <summary>One part of an idea changed, from the words that people type; a fault says what would be right.</summary>
public static class RecipeChange
{
    private const double FastestBpm = 1000;

    /// <summary>Another root; written places move along.</summary>
    public static Outcome<Recipe> Root(Recipe recipe, string text) =>
        NoteName.TryParse(text, out var root)
            ? KeyChange.ToRoot(recipe, root)
            : Unread(text, "note", "a letter A to G, with # or b");

    /// <summary>Another scale or arpeggio on the same root, by name or as semitones above it such as <c>0 3 5 7 10</c>.</summary>
    public static Outcome<Recipe> Scale(Recipe recipe, string text) =>
        recipe.Notes is { } notes
            ? ScaleOn(notes.Root, text)
                .Then<Recipe>(set => LockKeeping.Fit(recipe, recipe with { Notes = set }))
            : new Fault("this line names no scale to change", "$.notes");

    /// <summary>Another tuning; written places keep their pitch.</summary>
    public static Outcome<Recipe> Tuning(Recipe recipe, string text) =>
        Instrument.Tuning.Read(text).Then(tuning => KeyChange.ToTuning(recipe, tuning));

    /// <summary>A capo.</summary>
    public static Outcome<Recipe> Capo(Recipe recipe, string text) =>
        Whole(text, 0, 12)
            .Then<Recipe>(fret => recipe with { Instrument = recipe.Instrument with { Capo = fret } });

    /// <summary>One scale length in mm, or one for each string, separated by commas.</summary>
    public static Outcome<Recipe> ScaleLength(Recipe recipe, string text)
    {
        var lengths = new List<double>();
        foreach (var part in text.Split(','))
        {
            if (!Number(part, 200, 1500).TryGet(out var length, out var fault))
            {
                return fault;
            }

            lengths.Add(length);
        }

        return lengths.Count == 1 || lengths.Count == recipe.Instrument.Tuning.StringCount
            ? recipe with
            {
                Instrument = recipe.Instrument with { ScaleLengthsMm = [.. lengths] },
            }
            : new Fault(
                $"{lengths.Count} scale lengths",
                Right: $"one, or one for each of the {recipe.Instrument.Tuning.StringCount} strings"
            );
    }

    /// <summary>Another kind of layout.</summary>
    public static Outcome<Recipe> Layout(Recipe recipe, string text) =>
        LayoutChoice.Take(recipe, text).Then<Recipe>(found => LockKeeping.Fit(recipe, found));

    /// <summary>Another box.</summary>
    public static Outcome<Recipe> Box(Recipe recipe, string text) =>
        Whole(text, 1, 12)
            .Then(number => LayoutChoice.WithBox(recipe, number))
            .Then<Recipe>(found => LockKeeping.Fit(recipe, found));

    /// <summary>Near another fret.</summary>
    public static Outcome<Recipe> Near(Recipe recipe, string text) =>
        Whole(text, 0, 36)
            .Then(fret => LayoutChoice.Near(recipe, fret))
            .Then<Recipe>(found => LockKeeping.Fit(recipe, found));

    /// <summary>Another step between cells.</summary>
    public static Outcome<Recipe> Step(Recipe recipe, string text) =>
        Whole(text, -7, 7)
            .Then<Recipe>(step =>
                LockKeeping.Fit(recipe, recipe with { Movement = recipe.Movement with { Step = step } })
            );

    /// <summary>Another direction.</summary>
    public static Outcome<Recipe> Direction(Recipe recipe, string text) =>
        RecipeWords
            .Directions.Read(text)
            .Then<Recipe>(direction =>
                LockKeeping.Fit(
                    recipe,
                    recipe with
                    {
                        Movement = recipe.Movement with { Direction = direction },
                    }
                )
            );

    /// <summary>Another metre.</summary>
    public static Outcome<Recipe> Meter(Recipe recipe, string text) =>
        Rhythm.Meter.TryParse(text, out var meter)
            ? recipe with
            {
                Rhythm = recipe.Rhythm with { Meter = meter },
            }
            : Unread(text, "metre", "2/4 to 12/8");

    /// <summary>Other notes a felt beat.</summary>
    public static Outcome<Recipe> NotesPerBeat(Recipe recipe, string text) =>
        Whole(text, 1, 8)
            .Then<Recipe>(notes => recipe with { Rhythm = recipe.Rhythm with { NotesPerBeat = notes } });

    /// <summary>Another swing: the share of the first of each pair, as a decimal or a fraction.</summary>
    public static Outcome<Recipe> Swing(Recipe recipe, string text) =>
        Share(text) is { } share && Rhythm.Swing.TryOf(share, out var swing)
            ? recipe with
            {
                Rhythm = recipe.Rhythm with { Swing = swing },
            }
            : Unread(text, "swing", "0.5 (straight) to 0.75, or a fraction such as 2/3");

    /// <summary>Another technique.</summary>
    public static Outcome<Recipe> Technique(Recipe recipe, string text) =>
        RecipeWords
            .Techniques.Read(text)
            .Then<Recipe>(technique => Picked(recipe, recipe.Picking with { Technique = technique }));

    /// <summary>Another plan for the picking hand, to which strokes that were fixed note by note give way.</summary>
    public static Recipe Picked(Recipe recipe, PickingPlan plan) =>
        WithoutStrokes(recipe) with
        {
            Picking = plan,
        };

    /// <summary>Another first stroke.</summary>
    public static Outcome<Recipe> First(Recipe recipe, string text) =>
        RecipeWords
            .FirstStrokes.Read(text)
            .Then<Recipe>(first => recipe with { Picking = recipe.Picking with { First = first } });

    /// <summary>A tempo in felt beats a minute.</summary>
    public static Outcome<Recipe> Tempo(Recipe recipe, string text) =>
        Number(text, 1, FastestBpm)
            .Then<Recipe>(bpm => recipe with { Rhythm = recipe.Rhythm with { TempoBpm = bpm } });

    /// <summary>One more finger that is not to be used.</summary>
    public static Outcome<Recipe> Avoid(Recipe recipe, string text) =>
        Whole(text, 1, 4)
            .Then<Recipe>(finger =>
                recipe.Fretting.Avoid.Contains(finger)
                    ? recipe
                    : recipe with
                    {
                        Fretting = recipe.Fretting with { Avoid = recipe.Fretting.Avoid.Add(finger) },
                    }
            );

    private static Outcome<NoteSet> ScaleOn(NoteName root, string text)
    {
        if (text.Length > 0 && char.IsAsciiDigit(text[0]))
        {
            return Wholes(text, 0, 11)
                .Then<NoteSet>(semitones =>
                    semitones[0] == 0
                    && semitones.Zip(semitones.Skip(1)).All(pair => pair.First < pair.Second)
                        ? NoteSet.Listed(root, semitones)
                        : Unread(text, "scale", "rising semitones from 0, such as 0 3 5 7 10")
                );
        }

        return NoteSet.TryNamed(root, text, out var set)
            ? set
            : new Fault(
                $"unknown scale {Quote.Short(text)}",
                Right: NearestWord.Hint(text, [.. Scales.All.Select(scale => scale.Name)])
            );
    }

    // Fixed strokes belong to the technique that they were fixed in.
    private static Recipe WithoutStrokes(Recipe recipe)
    {
        var kept = recipe
            .Fretting.Locks.Select(locked => locked with { Stroke = null })
            .Where(locked => locked != new Lock(locked.Note));
        return recipe with { Fretting = recipe.Fretting with { Locks = [.. kept] } };
    }
}
