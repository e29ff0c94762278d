using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;
using static Passagework.Tests.Exercises.RecipeJsonTests;

namespace Passagework.Tests.Exercises;

/// <summary>What is said of recipe files that are wrong: where, what, and what would be right.</summary>
public class RecipeFaultTests
{
    [Theory]
    [InlineData("\"tempoo\": 1", "$.tempoo: unknown field 'tempoo'; one of: passagework, id, title,")]
    [InlineData("\"ryhthm\": {}", "$.ryhthm: unknown field 'ryhthm'; did you mean 'rhythm'?")]
    [InlineData("\"title\": null", "$.title: null says nothing; leave the field out")]
    [InlineData("\"title\": 7", "$.title: 7 is no text")]
    [InlineData(
        "\"title\": \"a\\nb\"",
        "$.title: is no line of text; at most 200 letters, without line breaks"
    )]
    [InlineData("\"movement\": []", "$.movement: a list is no object; fields in braces: { … }")]
    [InlineData("\"movement\": { \"step\": 8 }", "$.movement.step: 8 is out of range; -7 to 7")]
    [InlineData("\"movement\": { \"step\": 1.5 }", "$.movement.step: 1.5 is no whole number")]
    [InlineData("\"movement\": { \"step\": 99999999999 }", "$.movement.step: 99999999999 is no whole number")]
    [InlineData("\"movement\": { \"repeat\": 0 }", "$.movement.repeat: 0 is out of range; 1 to 9999")]
    [InlineData(
        "\"movement\": { \"turn\": \"share\" }",
        "$.movement.turn: unknown turn 'share'; did you mean 'shared'?"
    )]
    [InlineData(
        "\"movement\": { \"direction\": \"sideways\" }",
        "$.movement.direction: unknown direction 'sideways'; one of: up, down, up-and-down, down-and-up"
    )]
    [InlineData(
        "\"rhythm\": { \"tempo\": 0 }",
        "$.rhythm.tempo: no tempo; above 0, at most 1000 beats a minute"
    )]
    [InlineData(
        "\"rhythm\": { \"swing\": \"5764607523034234880/9223372036854775807\" }",
        "$.rhythm.swing: '5764607523034234880/9223372036854775807' is no share of a pair of pulses; 0.5 (straight) to 0.75, no finer than millionths"
    )]
    [InlineData("\"rhythm\": { \"tempo\": 1e999 }", "$.rhythm.tempo: 1e999 is no number")]
    [InlineData("\"rhythm\": { \"notesPerBeat\": 9 }", "$.rhythm.notesPerBeat: 9 is out of range; 1 to 8")]
    [InlineData(
        "\"rhythm\": { \"meter\": \"4/5\" }",
        "$.rhythm.meter: '4/5' is no metre; such as \"4/4\" or \"12/8\""
    )]
    [InlineData(
        "\"rhythm\": { \"swing\": 0.8 }",
        "$.rhythm.swing: 0.8 is no share of a pair of pulses; 0.5 (straight) to 0.75, no finer than millionths"
    )]
    [InlineData(
        "\"rhythm\": { \"startOffset\": \"1\" }",
        "$.rhythm.startOffset: 1 does not lie in the first bar; 0 or more, below 1"
    )]
    [InlineData(
        "\"rhythm\": { \"pattern\": [\"1/8\", \"0\"] }",
        "$.rhythm.pattern[1]: 0 is no length; above 0, at most 64"
    )]
    [InlineData(
        "\"rhythm\": { \"pattern\": [\"1/99991\", \"1/99989\"] }",
        "$.rhythm.pattern[0]: 1/99991 divides time too finely beside the other lengths; "
    )]
    [InlineData(
        "\"picking\": { \"technique\": \"sweeping\" }",
        "$.picking.technique: unknown technique 'sweeping'; did you mean 'sweep'?"
    )]
    [InlineData("\"fretting\": { \"avoid\": [5] }", "$.fretting.avoid[0]: 5 is out of range; 1 to 4")]
    [InlineData(
        "\"fretting\": { \"locks\": [{ \"note\": 1 }] }",
        "$.fretting.locks[0]: locks nothing; finger, string, position or stroke"
    )]
    [InlineData(
        "\"fretting\": { \"locks\": [{ \"note\": 1, \"string\": 7 }] }",
        "$.fretting.locks[0].string: 7 is out of range; 1 to 6"
    )]
    [InlineData(
        "\"fretting\": { \"locks\": [{ \"note\": 1, \"finger\": 1 }, { \"note\": 1, \"finger\": 2 }] }",
        "$.fretting.locks[1]: note 1 is locked twice; all that is fixed about a note in one lock"
    )]
    [InlineData(
        "\"instrument\": { \"tuning\": \"E2 A2 D3\" }",
        "$.instrument.tuning: a tuning of 3 strings; 4 to 8 notes"
    )]
    [InlineData(
        "\"instrument\": { \"tuning\": \"E2 A2 D3 G3 B3 E4 A4 D5 G5\" }",
        "$.instrument.tuning: a tuning of 9 strings; 4 to 8 notes"
    )]
    [InlineData(
        "\"instrument\": { \"tuning\": \"E2 A2 D3 H3\" }",
        "$.instrument.tuning: 'H3' is no note; notes with octaves such as E2 A2 D3 G3 B3 E4"
    )]
    [InlineData(
        "\"instrument\": { \"tuning\": \"drop d\" }",
        "$.instrument.tuning: unknown tuning 'drop d'; did you mean 'drop D'?"
    )]
    [InlineData(
        "\"instrument\": { \"tuning\": \"E2 A2 D3 G9\" }",
        "$.instrument.tuning: string 1 cannot be tuned to G9; C0 to E6"
    )]
    [InlineData("\"instrument\": { \"frets\": 11 }", "$.instrument.frets: 11 is out of range; 12 to 36")]
    [InlineData("\"instrument\": { \"capo\": 13 }", "$.instrument.capo: 13 is out of range; 0 to 12")]
    [InlineData(
        "\"instrument\": { \"scaleLengthMm\": [648, 650] }",
        "$.instrument.scaleLengthMm: has 2 lengths; one, or one for each of 6 strings"
    )]
    [InlineData(
        "\"instrument\": { \"scaleLengthMm\": 25.5 }",
        "$.instrument.scaleLengthMm: out of range; 200 to 1500 mm"
    )]
    [InlineData(
        "\"instrument\": { \"stringSpacingMm\": [7] }",
        "$.instrument.stringSpacingMm: has 1 entry; [at the nut, at the bridge]"
    )]
    [InlineData(
        "\"written\": [{ \"rest\": \"1/4\" }]",
        "$.layout: does not go with 'written'; a written line stands in place of layout, cell and movement"
    )]
    public void Read_says_where_and_what(string field, string expected) =>
        Assert.StartsWith(expected, Refuse(Box(field)).ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("{ \"kind\": \"boxx\" }", "$.layout.kind: unknown layout 'boxx'; did you mean 'box'?")]
    [InlineData("{ \"number\": 1 }", "$.layout: the field 'kind' is missing; such as \"kind\": \"box\"")]
    [InlineData(
        "{ \"kind\": \"box\", \"count\": 3 }",
        "$.layout.count: does not belong to the layout 'box'; it takes number, near"
    )]
    [InlineData(
        "{ \"kind\": \"open\", \"near\": 3 }",
        "$.layout.near: does not belong to the layout 'open'; it takes no field but 'kind'"
    )]
    [InlineData(
        "{ \"kind\": \"box\", \"nubmer\": 3 }",
        "$.layout.nubmer: unknown field 'nubmer'; did you mean 'number'?"
    )]
    [InlineData("{ \"kind\": \"box\", \"near\": 37 }", "$.layout.near: 37 is out of range; 0 to 36")]
    [InlineData(
        "{ \"kind\": \"per-string\", \"count\": 5, \"from\": \"6:5\" }",
        "$.layout.count: 5 is out of range; 2 to 4"
    )]
    [InlineData(
        "{ \"kind\": \"per-string\", \"count\": 3 }",
        "$.layout: the field 'from' is missing; the place of the first note such as \"6:5\""
    )]
    [InlineData(
        "{ \"kind\": \"per-string\", \"count\": 3, \"from\": \"9:5\" }",
        "$.layout.from: '9:5' is no place; string:fret such as \"6:5\""
    )]
    [InlineData(
        "{ \"kind\": \"joined\", \"boxes\": [1] }",
        "$.layout.boxes: has 1 entry; two neighbours such as [1, 2]"
    )]
    [InlineData(
        "{ \"kind\": \"string-pair\", \"strings\": [2], \"boxes\": [1] }",
        "$.layout.strings: has 1 entry; 2"
    )]
    [InlineData(
        "{ \"kind\": \"one-side\", \"side\": \"left\" }",
        "$.layout.side: unknown side 'left'; one of: low, high"
    )]
    [InlineData("{ \"kind\": \"places\", \"places\": [\"6:5\", 7] }", "$.layout.places[1]: 7 is no text")]
    public void Read_refuses_fields_that_do_not_belong_to_a_layout(string layout, string expected) =>
        Assert.StartsWith(
            expected,
            Refuse(Idea($"\"layout\": {layout}, \"cell\": {{ \"offsets\": [0] }}")).ToString(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("{ \"offsets\": [] }", "$.cell.offsets: has 0 entries; 1 to 16")]
    [InlineData("{ \"offsets\": [null] }", "$.cell.offsets: the cell holds only rests; at least one note")]
    [InlineData(
        "{ \"offsets\": [0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0,0] }",
        "$.cell.offsets: has 17 entries; 1 to 16"
    )]
    [InlineData("{ \"offsets\": [0, \"1\"] }", "$.cell.offsets[1]: '1' is no whole number")]
    [InlineData("{ \"offsets\": [0, 1000] }", "$.cell.offsets[1]: 1000 is out of range; -999 to 999")]
    [InlineData("{ \"offsets\": [0, 1], \"accents\": [2] }", "$.cell.accents[0]: 2 is out of range; 0 to 1")]
    [InlineData(
        "{ \"offsets\": [0, 1], \"accents\": [1, 1] }",
        "$.cell.accents: names an entry twice; each entry of the cell once"
    )]
    [InlineData("{ \"offsets\": [0, 1], \"durations\": [1] }", "$.cell.durations: has 1 entry; 2")]
    [InlineData(
        "{ \"offsets\": [0, 1], \"durations\": [1, 0] }",
        "$.cell.durations[1]: 0 is no length; above 0, at most 64"
    )]
    [InlineData(
        "{ \"offsets\": [0, 1], \"durations\": [1, -1] }",
        "$.cell.durations[1]: -1 is no length; above 0, at most 64"
    )]
    [InlineData(
        "{ \"offsets\": [0, 1], \"durations\": [1, \"x\"] }",
        "$.cell.durations[1]: 'x' is no fraction; such as \"1/8\""
    )]
    [InlineData(
        "{ \"offsets\": [0, 1], \"slurs\": \"same string\" }",
        "$.cell.slurs: unknown kind of slurs 'same string'; did you mean 'same-string'?"
    )]
    [InlineData(
        "{ \"offsets\": [0, 1], \"sound\": \"loud\" }",
        "$.cell.sound: unknown sound 'loud'; one of: normal, palm-muted, staccato, let-ring"
    )]
    public void Read_refuses_cells_that_are_wrong(string cell, string expected) =>
        Assert.Equal(
            expected,
            Refuse(Idea($"\"layout\": {{ \"kind\": \"box\" }}, \"cell\": {cell}")).ToString()
        );

    [Theory]
    [InlineData(
        "{ \"root\": \"A\", \"scale\": \"minor pentatonik\" }",
        "$.notes.scale: unknown scale 'minor pentatonik'; did you mean 'minor pentatonic'?"
    )]
    [InlineData(
        "{ \"root\": \"H\", \"scale\": \"major\" }",
        "$.notes.root: 'H' is no root; a letter A to G, with # or b where needed"
    )]
    [InlineData(
        "{ \"root\": \"Abb\", \"scale\": \"major\" }",
        "$.notes.root: 'Abb' is no root; a letter A to G, with # or b where needed"
    )]
    [InlineData(
        "{ \"root\": \"A\", \"scale\": [0, 3, 3] }",
        "$.notes.scale: is no list of notes; semitones above the root, from 0, rising, each below 12"
    )]
    [InlineData(
        "{ \"root\": \"A\", \"scale\": [] }",
        "$.notes.scale: is no list of notes; semitones above the root, from 0, rising, each below 12"
    )]
    [InlineData("{ \"scale\": \"major\" }", "$.notes: the field 'root' is missing; such as \"A\"")]
    public void Read_refuses_notes_that_are_wrong(string notes, string expected) =>
        Assert.Equal(
            expected,
            Refuse(
                    $"{{ \"passagework\": 1, \"notes\": {notes}, \"layout\": {{ \"kind\": \"box\" }}, "
                        + "\"cell\": { \"offsets\": [0] } }"
                )
                .ToString()
        );

    [Theory]
    [InlineData("[]", "$.written: has 0 entries; 1 to 20000")]
    [InlineData("[{ \"duration\": \"1/4\" }]", "$.written[0]: has no place, pitch or rest; ")]
    [InlineData(
        "[{ \"place\": \"6:5\", \"pitch\": \"A2\", \"duration\": \"1/4\" }]",
        "$.written[0]: has both a place and a pitch; "
    )]
    [InlineData(
        "[{ \"place\": \"6:5\" }]",
        "$.written[0]: the field 'duration' is missing; such as \"1/16\""
    )]
    [InlineData(
        "[{ \"rest\": \"1/4\", \"accent\": true }]",
        "$.written[0].accent: does not belong to a rest; "
    )]
    [InlineData("[{ \"pitch\": \"H2\", \"duration\": \"1/4\" }]", "$.written[0].pitch: 'H2' is no pitch; ")]
    [InlineData(
        "[{ \"place\": \"6:5\", \"duration\": \"1/4\", \"slur\": \"hamer\" }]",
        "$.written[0].slur: unknown slur 'hamer'; did you mean 'hammer'?"
    )]
    [InlineData(
        "[{ \"place\": \"6:5\", \"duration\": \"1/4\", \"accent\": 1 }]",
        "$.written[0].accent: 1 is neither true nor false"
    )]
    [InlineData(
        "[{ \"place\": \"6:5\", \"duration\": \"99/1\" }]",
        "$.written[0].duration: 99 is no length; above 0, at most 64"
    )]
    public void Read_refuses_written_lines_that_are_wrong(string written, string expected) =>
        Assert.StartsWith(
            expected,
            Refuse($"{{ \"passagework\": 1, \"written\": {written} }}").ToString(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(
        "{ \"passagework\": 2, \"written\": [] }",
        "$.passagework: version 2 of the file format is not known; 1"
    )]
    [InlineData(
        "{ \"written\": [] }",
        "$: the field 'passagework' is missing; \"passagework\": 1 marks a recipe file"
    )]
    [InlineData(
        "{ \"passagework\": 1 }",
        "$: the field 'notes' is missing; an exercise has notes, layout and cell, or written"
    )]
    [InlineData("[]", "$: a list is no object; fields in braces: { … }")]
    [InlineData("{\n  \"passagework\": 1,\n  \"id\" \"x\"\n}", "line 3, column 8: not JSON: ")]
    [InlineData("{ \"passagework\": 1, }", "line 1, column 21: not JSON: ")]
    [InlineData("", "line 1, column 1: not JSON: ")]
    [InlineData("{ \"id\": \"ü\", x }", "line 1, column 14: not JSON: ")]
    [InlineData("{ \"id\": \"a\", \"id\": \"b\" }", "not JSON: Duplicate property 'id'")]
    [InlineData("{ \"title\": \"\\ud800\" }", "line 1, column 12: half a surrogate pair in a text")]
    [InlineData("{ \"\\udc00\": 1 }", "line 1, column 3: half a surrogate pair in a text")]
    public void Read_refuses_what_is_no_recipe(string text, string expected) =>
        Assert.StartsWith(expected, Refuse(text).ToString(), StringComparison.Ordinal);

    [Fact]
    public void Read_refuses_deep_nesting() =>
        Assert.Equal("nested too deeply, more than 16 levels", Refuse(new string('[', 100_000)).What);

    [Fact]
    public void Read_refuses_files_that_are_too_large() =>
        Assert.Equal(
            "the file has 1048577 bytes, too many for a recipe; at most 1048576 bytes",
            Refuse(new string(' ', 1_048_577)).ToString()
        );

    [Fact]
    public void Read_refuses_bytes_that_are_no_text() =>
        Assert.Equal(
            "the file is not text in UTF-8",
            RecipeJson.Read([0x7B, 0xFF, 0x7D]).TryGet(out _, out var fault) ? "" : fault.ToString()
        );

    [Fact]
    public void Messages_stay_on_one_short_line()
    {
        var name = new string('x', 100_000) + "\\n";

        var message = Refuse($"{{ \"{name}\": 1 }}").ToString();

        Assert.InRange(message.Length, 1, 400);
        Assert.DoesNotContain('\n', message);
    }

    [Fact]
    public void Mangled_recipes_are_read_or_refused_but_never_break()
    {
        var texts = Library
            .All.Select(exercise => Encoding.UTF8.GetBytes(RecipeJson.Write(exercise.Recipe)))
            .ToArray();
        var chance = new Random(7);
        var read = 0;
        for (var round = 0; round < 4000; round++)
        {
            var text = (byte[])texts[chance.Next(texts.Length)].Clone();
            for (var change = chance.Next(1, 4); change > 0; change--)
            {
                text[chance.Next(text.Length)] = (byte)"0123456789-\"{}[],:.aeu\\\n\xc3"[chance.Next(24)];
            }

            var line = RecipeJson.Read(text).Then(LineBuilder.Build);
            read += line.TryGet(out _, out var fault) ? 1 : 0;
            Assert.DoesNotContain('\n', fault?.ToString() ?? "");
        }

        // Some changes fall into titles and numbers and leave a legal recipe.
        Assert.InRange(read, 400, 3000);
    }

    private static Fault Refuse(string text) =>
        RecipeJson.Read(text).TryGet(out var recipe, out var fault)
            ? throw new InvalidOperationException($"read {recipe}")
            : fault;

    // Found by fuzzing: times with such a denominator left 64 bits.
    [Theory]
    [InlineData("\"durations\": [1, \"1/9223372036854775807\"]", "$.cell.durations[1]")]
    [InlineData("\"durations\": [1, \"1/1000001\"]", "$.cell.durations[1]")]
    public void Lengths_that_divide_time_too_finely_are_refused(string durations, string where)
    {
        var text =
            $$"""{ "passagework": 1, "notes": { "root": "A", "scale": "minor pentatonic" }, "layout": { "kind": "box" }, "cell": { "offsets": [0, 1], {{durations}} } }""";

        Assert.False(RecipeJson.Read(text).TryGet(out _, out var fault));
        Assert.Equal(where, fault.Where);
        Assert.Contains("divides time too finely", fault.What, StringComparison.Ordinal);
    }
}
