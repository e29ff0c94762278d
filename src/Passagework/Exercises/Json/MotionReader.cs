using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Exercises;

/// <summary>Reads <c>cell</c>, <c>movement</c> and <c>rhythm</c>.</summary>
internal static class MotionReader
{
    public static Cell Cell(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Cell);
        return new Cell
        {
            Offsets =
                fields
                    .Required("offsets", "steps along the path such as [0, 1, 2]")
                    ?.List(item => item.IsNull ? (int?)null : item.Whole())
                ?? [],
            Accents = fields.Optional("accents")?.List(item => item.Whole()) ?? [0],
            Durations = fields.Optional("durations")?.List(item => item.Exact()) ?? [],
            Slurs = fields.Optional("slurs") is { } slurs ? Slurs(slurs) : CellSlurs.None,
            Sound = fields.Optional("sound")?.Word(RecipeWords.Sounds) ?? NoteSound.Normal,
        };
    }

    public static Movement Movement(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Movement);
        var usual = new Movement();
        return new Movement
        {
            Step = fields.Optional("step")?.Whole() ?? usual.Step,
            Direction = fields.Optional("direction")?.Word(RecipeWords.Directions) ?? usual.Direction,
            From = fields.Optional("from")?.Whole(),
            To = fields.Optional("to")?.Whole(),
            Repeat = fields.Optional("repeat")?.Whole() ?? usual.Repeat,
            Turn = fields.Optional("turn")?.Word(RecipeWords.Turns) ?? usual.Turn,
            Ending = fields.Optional("ending")?.Word(RecipeWords.Endings) ?? usual.Ending,
        };
    }

    public static RhythmPlan Rhythm(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Rhythm);
        return new RhythmPlan
        {
            NotesPerBeat = fields.Optional("notesPerBeat")?.Whole() ?? 4,
            Pattern = fields.Optional("pattern")?.List(item => item.Exact()) ?? [],
            Meter = fields.Optional("meter") is { } meter ? MeterOf(meter) : default,
            Swing = fields.Optional("swing") is { } swing ? SwingOf(swing) : default,
            StartOffset = fields.Optional("startOffset")?.Exact() ?? Fraction.Zero,
            TempoBpm = fields.Optional("tempo")?.Number(),
        };
    }

    private static CellSlurs Slurs(JsonCursor cursor) =>
        cursor.IsList
            ? new CellSlurs(SameString: false, cursor.List(item => item.Whole()))
            : new CellSlurs(cursor.Word(RecipeWords.CellSlurWords), []);

    private static Meter MeterOf(JsonCursor cursor)
    {
        if (!Meter.TryParse(cursor.Text(), out var meter))
        {
            cursor.Refuse($"{cursor.Seen} is no metre", "such as \"4/4\" or \"12/8\"");
        }

        return meter;
    }

    private static Swing SwingOf(JsonCursor cursor)
    {
        if (!Swing.TryOf(cursor.Exact(), out var swing))
        {
            cursor.Refuse(
                $"{cursor.Seen} is no share of a pair of pulses",
                "0.5 (straight) to 0.75, no finer than millionths"
            );
        }

        return swing;
    }
}
