using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Tests.Instrument;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Exercises;

public class RecipeJsonTests
{
    private const string Sample = """
        { "passagework": 1, "id": "groups-of-five-up", "title": "Groups of five, rising",
          "purpose": "string skips after a down-stroke",
          "notes": { "root": "A", "scale": "minor pentatonic" },
          "instrument": { "tuning": "E2 A2 D3 G3 B3 E4", "frets": 22, "capo": 0, "scaleLengthMm": 648,
                          "stringSpacingMm": [7.0, 10.5] },
          "layout": { "kind": "box", "number": 1, "near": 5 },
          "cell": { "offsets": [0,1,2,3,4], "accents": [0] },
          "movement": { "step": 1, "direction": "up" },
          "rhythm": { "notesPerBeat": 4, "meter": "4/4" },
          "picking": { "technique": "alternate", "first": "down" },
          "fretting": { "locks": [], "avoid": [] } }
        """;

    [Fact]
    public void Read_takes_every_part_of_a_recipe()
    {
        var recipe = RecipeJson.Read(Sample).OrThrow();

        Assert.Equal("groups-of-five-up", recipe.Id);
        Assert.Equal("Groups of five, rising", recipe.Title);
        Assert.Equal("string skips after a down-stroke", recipe.Purpose);
        Assert.Equal(Necks.Notes("A", "minor pentatonic"), recipe.Notes);
        Assert.Equal([648.0], recipe.Instrument.ScaleLengthsMm);
        Assert.Equal(10.5, recipe.Instrument.BridgeSpacingMm);
        Assert.Equal(new Layout.Box(1, 5), recipe.Layout);
        Assert.Equal([0, 1, 2, 3, 4], recipe.Cell?.Offsets ?? []);
        Assert.Equal(new Movement(), recipe.Movement);
        Assert.Equal(new RhythmPlan(), recipe.Rhythm);
        Assert.Equal(new PickingPlan(), recipe.Picking);
        Assert.Equal(new FrettingPlan(), recipe.Fretting);
    }

    [Fact]
    public void Read_takes_bytes_with_and_without_a_mark()
    {
        var bytes = Encoding.UTF8.GetBytes(Sample);

        Assert.Equal(RecipeJson.Read(Sample).OrThrow(), RecipeJson.Read(bytes).OrThrow());
        Assert.Equal(
            RecipeJson.Read(Sample).OrThrow(),
            RecipeJson.Read([0xEF, 0xBB, 0xBF, .. bytes]).OrThrow()
        );
    }

    [Fact]
    public void Write_says_only_what_differs_from_the_defaults()
    {
        var recipe = RecipeJson.Read(Sample).OrThrow() with
        {
            Instrument = Fretboard.Standard,
            Rhythm = new RhythmPlan { NotesPerBeat = 3, TempoBpm = 92.5 },
            Movement = new Movement { Direction = Direction.UpAndDown },
        };

        Assert.Equal(
            """
            {
              "passagework": 1,
              "id": "groups-of-five-up",
              "title": "Groups of five, rising",
              "purpose": "string skips after a down-stroke",
              "notes": { "root": "A", "scale": "minor pentatonic" },
              "layout": { "kind": "box" },
              "cell": { "offsets": [0, 1, 2, 3, 4] },
              "movement": { "direction": "up-and-down" },
              "rhythm": { "notesPerBeat": 3, "tempo": 92.5 }
            }

            """.ReplaceLineEndings("\n"),
            RecipeJson.Write(recipe)
        );
    }

    [Fact]
    public void Write_breaks_lines_that_grow_too_long()
    {
        var recipe = Library.Find("bursts-twelve").OrThrow().Recipe;

        Assert.Contains(
            "  \"cell\": {\n    \"offsets\": [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, null],\n",
            RecipeJson.Write(recipe),
            StringComparison.Ordinal
        );
    }

    public static TheoryData<string> Layouts() =>
        [
            """{ "kind": "box", "number": 3, "near": 12 }""",
            """{ "kind": "per-string", "count": 3, "from": "6:5" }""",
            """{ "kind": "joined", "boxes": [5, 1], "near": 12 }""",
            """{ "kind": "diagonal", "pattern": [2, 3], "from": "6:3" }""",
            """{ "kind": "one-string", "string": 1, "from": 5, "to": 17 }""",
            """{ "kind": "string-pair", "strings": [3, 1], "boxes": [1, 2] }""",
            """{ "kind": "chain", "strings": [3, 2, 1], "boxes": [1, 2], "near": 3 }""",
            """{ "kind": "one-side", "side": "high", "number": 2 }""",
            """{ "kind": "open" }""",
            """{ "kind": "places", "places": ["6:5", "5:12", "1:0"] }""",
        ];

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Layouts_are_written_as_they_are_read(string layout)
    {
        var text = Idea($"\"layout\": {layout}, \"cell\": {{ \"offsets\": [0] }}");

        Assert.Contains(
            $"\"layout\": {layout}",
            RecipeJson.Write(RecipeJson.Read(text).OrThrow()),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_value_survives_writing_and_reading()
    {
        var recipe = new Recipe
        {
            Id = "x",
            Title = "Gruppen über „vier“ — \"so\" \\ 𝄞",
            Notes = Necks.Notes("Bb", "half-diminished seventh"),
            Instrument = Necks.Tuned("G4 C4 E4 A4", frets: 19, capo: 2) with
            {
                ScaleLengthsMm = [350.1, 350.2, 350.3, 350.4],
                NutSpacingMm = 9.1,
                BridgeSpacingMm = 12.3,
            },
            Layout = new Layout.OneSide(High: true, 2, 7),
            Cell = new Cell
            {
                Offsets = [-1, null, 2],
                Accents = [],
                Durations = [Fraction.Of(1, 2), Fraction.Of(3), Fraction.Of(2, 3)],
                Slurs = new CellSlurs(SameString: true, []),
                Sound = NoteSound.PalmMuted,
            },
            Movement = new Movement
            {
                Step = -2,
                Direction = Direction.DownAndUp,
                From = 1,
                To = 9,
                Repeat = 3,
                Turn = Turn.Shared,
                Ending = Ending.FillBar,
            },
            Rhythm = new RhythmPlan
            {
                NotesPerBeat = 6,
                Meter = Meter.TryParse("12/8", out var meter) ? meter : default,
                Swing = Swing.TryOf(Fraction.Of(2, 3), out var swing) ? swing : default,
                StartOffset = Fraction.Of(3, 16),
                TempoBpm = 71.3,
            },
            Picking = new PickingPlan
            {
                Technique = Technique.Fingers,
                First = FirstStroke.Best,
                Fingers = FingerOrder.ThumbIndex,
            },
            Fretting = new FrettingPlan
            {
                Locks =
                [
                    new Lock(3, 2, 4, 5, Stroke.Ring),
                    new Lock(1, Stroke: Stroke.None),
                    new Lock(0, Finger: 0),
                ],
                Avoid = [4, 2],
                SlidesAtShifts = true,
            },
        };

        Assert.Equal(recipe, RecipeJson.Read(RecipeJson.Write(recipe)).OrThrow());
    }

    [Fact]
    public void Written_lines_survive_writing_and_reading()
    {
        const string Entries = """
            [
                { "place": "6:5", "duration": "1/16", "group": 0, "accent": true },
                { "place": "6:8", "duration": "1/16", "group": 0, "slur": "hammer" },
                { "rest": "1/16" },
                { "pitch": "C4", "duration": "1/8", "group": 1, "slur": "slide" }
              ]
            """;

        var read = RecipeJson.Read($"{{ \"passagework\": 1, \"written\": {Entries} }}").OrThrow();

        Assert.Contains(Entries.ReplaceLineEndings("\n"), RecipeJson.Write(read), StringComparison.Ordinal);
        Assert.Equal(read, RecipeJson.Read(RecipeJson.Write(read)).OrThrow());
        Assert.Equal(4, read.Written?.Entries.Length);
    }

    [Fact]
    public void Listed_scales_survive_writing_and_reading()
    {
        const string Text = """
            { "passagework": 1, "notes": { "root": "F#", "scale": [0, 3, 5, 7, 10] },
              "layout": { "kind": "box" }, "cell": { "offsets": [0] } }
            """;

        var read = RecipeJson.Read(Text).OrThrow();

        Assert.Equal([0, 3, 5, 7, 10], read.Notes?.Semitones ?? []);
        Assert.Equal(read, RecipeJson.Read(RecipeJson.Write(read)).OrThrow());
    }

    [Theory]
    [InlineData("0.6", "3/5")]
    [InlineData("0.5", "1/2")]
    [InlineData("\"2/3\"", "2/3")]
    public void Swing_is_a_decimal_or_a_fraction(string written, string share) =>
        Assert.Equal(
            share,
            RecipeJson
                .Read(Box($"\"rhythm\": {{ \"swing\": {written} }}"))
                .OrThrow()
                .Rhythm.Swing.Share.ToString()
        );

    internal static string Idea(string fields) =>
        $"{{ \"passagework\": 1, \"notes\": {{ \"root\": \"A\", \"scale\": \"minor pentatonic\" }}, {fields} }}";

    internal static string Box(string fields) =>
        Idea($"\"layout\": {{ \"kind\": \"box\" }}, \"cell\": {{ \"offsets\": [0] }}, {fields}");
}
