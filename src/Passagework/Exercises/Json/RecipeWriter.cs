using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>Turns a recipe into JSON: only what differs from the defaults, in the order of the field lists.</summary>
internal static class RecipeWriter
{
    public static JsonObject Write(Recipe recipe)
    {
        var page = new JsonObject { ["passagework"] = 1 };
        page.Put("id", recipe.Id);
        page.Put("title", recipe.Title);
        page.Put("purpose", recipe.Purpose);
        page.Put("notes", recipe.Notes is { } notes ? NotesOf(notes) : null);
        page.PutFilled("instrument", InstrumentOf(recipe.Instrument));
        page.Put("layout", recipe.Layout is { } layout ? LayoutWriter.Write(layout) : null);
        page.Put("cell", recipe.Cell is { } cell ? MotionWriter.Cell(cell) : null);
        page.PutFilled("movement", MotionWriter.Movement(recipe.Movement));
        page.PutFilled("rhythm", MotionWriter.Rhythm(recipe.Rhythm));
        page.PutFilled("picking", PickingOf(recipe.Picking));
        page.PutFilled("fretting", FrettingOf(recipe.Fretting));
        page.Put("written", recipe.Written is { } written ? WrittenOf(written) : null);
        return page;
    }

    private static JsonObject NotesOf(NoteSet notes)
    {
        JsonNode scale = notes.Scale is { } name ? JsonValue.Create(name) : notes.Semitones.ToList();
        return new JsonObject { ["root"] = notes.Root.ToString(), ["scale"] = scale };
    }

    private static JsonObject InstrumentOf(Fretboard fretboard)
    {
        var fields = new JsonObject();
        var usual = Fretboard.Standard;
        fields.PutUnless("tuning", fretboard.Tuning.Text, usual.Tuning.Text);
        fields.PutUnless("frets", fretboard.Frets, usual.Frets);
        fields.PutUnless("capo", fretboard.Capo, usual.Capo);
        fields.Put(
            "scaleLengthMm",
            fretboard.ScaleLengthsMm.Length switch
            {
                0 => null,
                1 => fretboard.ScaleLengthsMm[0],
                _ => fretboard.ScaleLengthsMm.ToList(),
            }
        );
        if (fretboard is { NutSpacingMm: { } nut, BridgeSpacingMm: { } bridge })
        {
            fields.Put("stringSpacingMm", new JsonArray(nut, bridge));
        }

        return fields;
    }

    private static JsonObject PickingOf(PickingPlan picking)
    {
        var fields = new JsonObject();
        var usual = new PickingPlan();
        fields.PutUnless("technique", picking.Technique, usual.Technique, RecipeWords.Techniques);
        fields.PutUnless("first", picking.First, usual.First, RecipeWords.FirstStrokes);
        fields.PutUnless("fingers", picking.Fingers, usual.Fingers, RecipeWords.FingerOrders);
        return fields;
    }

    private static JsonObject FrettingOf(FrettingPlan fretting)
    {
        var fields = new JsonObject();
        if (!fretting.Locks.IsEmpty)
        {
            fields.Put("locks", new JsonArray([.. fretting.Locks.Select(LockOf)]));
        }

        fields.Put("avoid", fretting.Avoid.IsEmpty ? null : fretting.Avoid.ToList());
        fields.PutUnless("slides", fretting.SlidesAtShifts, false, RecipeWords.Slides);
        return fields;
    }

    private static JsonObject LockOf(Lock held)
    {
        var fields = new JsonObject { ["note"] = held.Note };
        fields.Put("finger", held.Finger);
        fields.Put("string", held.String);
        fields.Put("position", held.Position);
        fields.Put("stroke", held.Stroke is { } stroke ? RecipeWords.Strokes.Of(stroke) : null);
        return fields;
    }

    private static JsonArray WrittenOf(WrittenLine written) => new([.. written.Entries.Select(EntryOf)]);

    private static JsonNode ToneOf(WrittenTone tone) =>
        JsonValue.Create(tone.Place?.ToString() ?? tone.Pitch?.ToString() ?? "");

    private static JsonObject EntryOf(WrittenEntry entry)
    {
        if (entry.IsRest)
        {
            return new JsonObject { ["rest"] = entry.Duration.ToString() };
        }

        var fields = new JsonObject();
        fields.Put("place", entry.Place?.ToString());
        fields.Put("pitch", entry.Pitch?.ToString());
        fields.Put("with", entry.With.IsEmpty ? null : new JsonArray([.. entry.With.Select(ToneOf)]));
        fields.Put("duration", entry.Duration.ToString());
        fields.Put("group", entry.Group);
        fields.PutUnless("accent", entry.Accent, false);
        fields.Put("slur", entry.Slur == Slur.None ? null : RecipeWords.Slurs.Of(entry.Slur));
        return fields;
    }
}
