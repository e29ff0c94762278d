using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Writes <c>cell</c>, <c>movement</c> and <c>rhythm</c>.</summary>
internal static class MotionWriter
{
    public static JsonObject Cell(Cell cell)
    {
        var fields = new JsonObject { ["offsets"] = cell.Offsets.ToList() };
        if (!cell.Accents.SequenceEqual([0]))
        {
            fields.Put("accents", cell.Accents.ToList());
        }

        fields.Put("durations", cell.Durations.IsEmpty ? null : Lengths(cell.Durations));
        if (cell.Slurs.SameString)
        {
            fields.Put("slurs", RecipeWords.CellSlurWords.Of(true));
        }
        else if (!cell.Slurs.Entries.IsEmpty)
        {
            fields.Put("slurs", cell.Slurs.Entries.ToList());
        }

        fields.PutUnless("sound", cell.Sound, NoteSound.Normal, RecipeWords.Sounds);
        return fields;
    }

    public static JsonObject Movement(Movement movement)
    {
        var fields = new JsonObject();
        var usual = new Movement();
        fields.PutUnless("step", movement.Step, usual.Step);
        fields.PutUnless("direction", movement.Direction, usual.Direction, RecipeWords.Directions);
        fields.Put("from", movement.From);
        fields.Put("to", movement.To);
        fields.PutUnless("repeat", movement.Repeat, usual.Repeat);
        fields.PutUnless("turn", movement.Turn, usual.Turn, RecipeWords.Turns);
        fields.PutUnless("ending", movement.Ending, usual.Ending, RecipeWords.Endings);
        return fields;
    }

    public static JsonObject Rhythm(RhythmPlan rhythm)
    {
        var fields = new JsonObject();
        var usual = new RhythmPlan();
        fields.PutUnless("notesPerBeat", rhythm.NotesPerBeat, usual.NotesPerBeat);
        fields.Put(
            "pattern",
            rhythm.Pattern.IsEmpty
                ? null
                : new JsonArray([.. rhythm.Pattern.Select(length => (JsonNode)length.ToString())])
        );
        fields.PutUnless("meter", rhythm.Meter.ToString(), usual.Meter.ToString());
        fields.PutUnless("swing", rhythm.Swing.Share.ToString(), usual.Swing.Share.ToString());
        fields.PutUnless("startOffset", rhythm.StartOffset.ToString(), usual.StartOffset.ToString());
        fields.Put("tempo", rhythm.TempoBpm);
        return fields;
    }

    /// <summary>Whole pulses as numbers, parts of a pulse as fractions in quotes.</summary>
    private static JsonArray Lengths(ImmutableArray<Fraction> durations) =>
        new([
            .. durations.Select(length =>
                length.IsWhole ? (JsonNode)JsonValue.Create(length.Numerator) : length.ToString()
            ),
        ]);
}
