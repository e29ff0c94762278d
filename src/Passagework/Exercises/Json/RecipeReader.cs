using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>Reads the object of a recipe: names and kinds of values; ranges are checked afterwards.</summary>
internal static class RecipeReader
{
    private const int Version = 1;

    public static Recipe Read(JsonCursor root)
    {
        var fields = JsonFields.Of(root, RecipeFields.Recipe);
        CheckVersion(fields);
        RefuseIdeaBesideLine(fields);
        return new Recipe
        {
            Id = fields.Optional("id")?.Text(),
            Title = fields.Optional("title")?.Text(),
            Purpose = fields.Optional("purpose")?.Text(),
            Notes = fields.Optional("notes") is { } notes ? NotesOf(notes) : null,
            Instrument = fields.Optional("instrument") is { } instrument
                ? InstrumentReader.Read(instrument)
                : Fretboard.Standard,
            Layout = fields.Optional("layout") is { } layout ? LayoutReader.Read(layout) : null,
            Cell = fields.Optional("cell") is { } cell ? MotionReader.Cell(cell) : null,
            Movement = fields.Optional("movement") is { } movement ? MotionReader.Movement(movement) : new(),
            Rhythm = fields.Optional("rhythm") is { } rhythm ? MotionReader.Rhythm(rhythm) : new(),
            Picking = fields.Optional("picking") is { } picking ? PickingOf(picking) : new(),
            Fretting = fields.Optional("fretting") is { } fretting ? FrettingOf(fretting) : new(),
            Written = fields.Optional("written") is { } written ? WrittenReader.Read(written) : null,
        };
    }

    private static void CheckVersion(JsonFields fields)
    {
        if (
            fields.Required("passagework", "\"passagework\": 1 marks a recipe file") is { } version
            && version.Whole() is var number
            && number != Version
        )
        {
            version.Refuse($"version {number} of the file format is not known", "1");
        }
    }

    private static void RefuseIdeaBesideLine(JsonFields fields)
    {
        if (!fields.Has("written"))
        {
            return;
        }

        foreach (var name in new[] { "layout", "cell", "movement" })
        {
            fields
                .Optional(name)
                ?.Refuse(
                    "does not go with 'written'",
                    "a written line stands in place of layout, cell and movement"
                );
        }
    }

    private static NoteSet? NotesOf(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Notes);
        if (
            fields.Required("root", "such as \"A\"") is not { } rootField
            || fields.Required("scale", "such as \"minor pentatonic\"") is not { } scale
        )
        {
            return null;
        }

        var root = RootOf(rootField);
        return scale.IsList ? Listed(root, scale) : Named(root, scale);
    }

    private static NoteName RootOf(JsonCursor cursor)
    {
        if (!NoteName.TryParse(cursor.Text(), out var root) || Math.Abs(root.Alteration) > 1)
        {
            cursor.Refuse($"{cursor.Seen} is no root", "a letter A to G, with # or b where needed");
        }

        return root;
    }

    private static NoteSet? Named(NoteName root, JsonCursor cursor)
    {
        var name = cursor.Text();
        if (NoteSet.TryNamed(root, name, out var set))
        {
            return set;
        }

        cursor.Refuse(
            $"unknown scale {cursor.Seen}",
            NearestWord.Hint(name, [.. Scales.All.Select(scale => scale.Name)])
        );
        return null;
    }

    private static NoteSet? Listed(NoteName root, JsonCursor cursor)
    {
        var semitones = cursor.List(item => item.Whole());
        var ascending = semitones.Zip(semitones.Skip(1)).All(pair => pair.First < pair.Second);
        if (!semitones.IsEmpty && semitones[0] == 0 && semitones[^1] <= 11 && ascending)
        {
            return NoteSet.Listed(root, semitones);
        }

        cursor.Refuse("is no list of notes", "semitones above the root, from 0, rising, each below 12");
        return null;
    }

    private static PickingPlan PickingOf(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Picking);
        return new PickingPlan
        {
            Technique = fields.Optional("technique")?.Word(RecipeWords.Techniques) ?? Technique.Alternate,
            First = fields.Optional("first")?.Word(RecipeWords.FirstStrokes) ?? FirstStroke.Down,
            Fingers = fields.Optional("fingers")?.Word(RecipeWords.FingerOrders) ?? FingerOrder.Pima,
        };
    }

    private static FrettingPlan FrettingOf(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Fretting);
        return new FrettingPlan
        {
            Locks = fields.Optional("locks")?.List(LockOf) ?? [],
            Avoid = fields.Optional("avoid")?.List(item => item.Whole()) ?? [],
            SlidesAtShifts = fields.Optional("slides")?.Word(RecipeWords.Slides) ?? false,
        };
    }

    private static Lock LockOf(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Lock);
        return new Lock(
            fields.Required("note", "index of the note, from 0")?.Whole() ?? 0,
            fields.Optional("finger")?.Whole(),
            fields.Optional("string")?.Whole(),
            fields.Optional("position")?.Whole(),
            fields.Optional("stroke")?.Word(RecipeWords.Strokes)
        );
    }
}
