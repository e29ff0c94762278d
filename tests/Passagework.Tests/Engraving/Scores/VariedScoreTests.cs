using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Rhythm;
using Passagework.Tests.Architecture;
using Passagework.Theory;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>The rules of geometry in every metre, division, tuning, sound and with everything that can be written.</summary>
public sealed class VariedScoreTests
{
    private static readonly string[] Meters =
    [
        "2/4",
        "3/4",
        "4/4",
        "5/4",
        "3/8",
        "5/8",
        "6/8",
        "7/8",
        "9/8",
        "12/8",
        "2/2",
        "7/16",
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Every_metre_keeps_every_rule(int notesPerBeat)
    {
        var broken = new List<string>();
        foreach (var text in Meters)
        {
            Assert.True(Meter.TryParse(text, out var meter));
            var recipe = Recipe("groups-of-five-up");
            recipe = recipe with
            {
                Rhythm = recipe.Rhythm with { Meter = meter, NotesPerBeat = notesPerBeat },
            };
            foreach (var layout in new[] { ScoreLayout.StaffAndTab, ScoreLayout.TabWithRhythm })
            {
                var options = new ScoreOptions { Layout = layout, Counting = CountedBars.All };
                broken.AddRange(Broken(recipe, options).Select(rule => $"{text} {layout}: {rule}"));
            }
        }

        Offenders.AreNone(broken);
    }

    [Theory]
    [InlineData("seven-string")]
    [InlineData("eight-string")]
    [InlineData("bass")]
    [InlineData("five-string bass")]
    [InlineData("half step down")]
    [InlineData("open G")]
    public void Every_tuning_keeps_every_rule(string name)
    {
        Assert.True(Tuning.TryParse(name, out var tuning));
        var (broken, engraved) = (new List<string>(), 0);
        foreach (var root in new[] { "Bb", "F#", "Eb", "C" })
        {
            Assert.True(NoteName.TryParse(root, out var note));
            var moved = KeyChange
                .ToTuning(Recipe("groups-of-four-up-and-down"), tuning)
                .Then(recipe => KeyChange.ToRoot(recipe, note));
            if (moved.TryGet(out var recipe, out _))
            {
                engraved++;
                broken.AddRange(
                    Broken(recipe, new ScoreOptions { Strings = true }).Select(rule => $"{root}: {rule}")
                );
            }
        }

        Assert.InRange(engraved, 2, 4);
        Offenders.AreNone(broken);
    }

    [Theory]
    [InlineData(NoteSound.PalmMuted)]
    [InlineData(NoteSound.LetRing)]
    [InlineData(NoteSound.Staccato)]
    public void Every_sound_keeps_every_rule(NoteSound sound)
    {
        var recipe = Sounding(sound);

        Offenders.AreNone(
            Enum.GetValues<ScoreLayout>()
                .SelectMany(layout =>
                    Broken(
                        recipe,
                        new ScoreOptions
                        {
                            Layout = layout,
                            WidthMm = 120,
                            Strings = true,
                        }
                    )
                )
        );
    }

    [Theory]
    [InlineData(ScoreLayout.StaffAndTab)]
    [InlineData(ScoreLayout.Staff)]
    [InlineData(ScoreLayout.Tab)]
    [InlineData(ScoreLayout.TabWithRhythm)]
    public void Everything_at_once_keeps_every_rule(ScoreLayout layout) =>
        Offenders.AreNone(Broken(Recipe("groups-of-four-up"), Everything with { Layout = layout }));

    [Theory]
    [InlineData(ScoreLayout.StaffAndTab)]
    [InlineData(ScoreLayout.TabWithRhythm)]
    public void Ties_rests_dots_and_signs_keep_every_rule(ScoreLayout layout) =>
        Offenders.AreNone(
            new[] { 45.0, 70, 110, 180, 300 }.SelectMany(width =>
                Broken(
                        Mixed,
                        new ScoreOptions
                        {
                            Layout = layout,
                            WidthMm = width,
                            Counting = CountedBars.All,
                        }
                    )
                    .Select(rule => $"{width} mm: {rule}")
            )
        );

    [Fact]
    public void Notes_of_one_length_stand_by_the_law_where_no_ink_is_in_the_way()
    {
        var options = new ScoreOptions
        {
            WidthMm = 700,
            Fingers = false,
            Strokes = ShownStrokes.None,
            Groups = false,
            Counting = CountedBars.None,
        };
        var recipe = RecipeJson
            .Read(
                """
                { "passagework": 1, "title": "Lengths", "notes": { "root": "A", "scale": "natural minor" }, "written": [
                  { "pitch": "A3", "duration": "1/2" }, { "pitch": "C4", "duration": "1/4" }, { "pitch": "E4", "duration": "1/12" },
                  { "pitch": "D4", "duration": "1/12" }, { "pitch": "C4", "duration": "1/12" }, { "pitch": "A3", "duration": "3/8" },
                  { "pitch": "B3", "duration": "1/8" }, { "pitch": "C4", "duration": "3/16" }, { "pitch": "B3", "duration": "1/16" },
                  { "pitch": "A3", "duration": "1/20" }, { "pitch": "B3", "duration": "1/20" }, { "pitch": "C4", "duration": "1/20" },
                  { "pitch": "D4", "duration": "1/20" }, { "pitch": "E4", "duration": "1/20" } ] }
                """
            )
            .OrThrow();
        var system = Assert.Single(Engraved(recipe, options).Systems);

        var stretches = system
            .Columns.Zip(system.Columns.Skip(1))
            // The room after a bar line is fixed.
            .Where(pair => Bar(pair.First) == Bar(pair.Second))
            .Select(pair => (pair.Second.XMm - pair.First.XMm) / SpaceLaw.Width(pair.First.Length))
            .Order()
            .ToList();

        Assert.Equal(12, stretches.Count);
        Assert.InRange(stretches[0] / stretches[^1], 0.95, 1.05);
    }

    [Theory]
    [InlineData(ScoreLayout.StaffAndTab)]
    [InlineData(ScoreLayout.TabWithRhythm)]
    public void Chords_keep_every_rule(ScoreLayout layout) =>
        Offenders.AreNone(
            new[] { 60.0, 110, 180 }.SelectMany(width =>
                Broken(
                    Chords,
                    new ScoreOptions
                    {
                        Layout = layout,
                        WidthMm = width,
                        Strings = true,
                        Counting = CountedBars.All,
                    }
                )
            )
        );

    [Theory]
    [InlineData(ScoreLayout.StaffAndTab)]
    [InlineData(ScoreLayout.Staff)]
    [InlineData(ScoreLayout.Tab)]
    [InlineData(ScoreLayout.TabWithRhythm)]
    public void Bends_and_vibrato_keep_every_rule(ScoreLayout layout)
    {
        var broken = new List<string>();
        foreach (
            var (name, recipe) in new[]
            {
                ("mixed", Mixed),
                ("chords", Chords),
                ("slurs", Recipe("slurred-threes-up-and-down")),
                ("slides", Recipe("diagonal-up")),
                ("raked", Raked),
                ("muted", Sounding(NoteSound.PalmMuted)),
            }
        )
        {
            foreach (var width in new[] { 70.0, 180 })
            {
                var options = Bent(Played(recipe).Notes.Length) with { Layout = layout, WidthMm = width };
                broken.AddRange(Broken(recipe, options).Select(rule => $"{name} {width} mm: {rule}"));
            }
        }

        Offenders.AreNone(broken);
    }

    // Every size, every second with release; vibrato on bent notes and others.
    private static ScoreOptions Bent(int notes) =>
        Everything with
        {
            Repeats = [],
            Endings = [],
            Bends =
            [
                .. Enumerable
                    .Range(0, notes)
                    .Where(note => note % 5 < 3)
                    .Select((note, i) => new ScoreBend(note, Fraction.Of(1 + (i % 8), 2), i % 2 == 1)),
            ],
            Vibratos = [.. Enumerable.Range(0, notes).Where(note => note % 3 > 0)],
        };

    private static Recipe Raked { get; } =
        Recipe("groups-of-six-up") with
        {
            Picking = new PickingPlan { Technique = Technique.Rake },
        };

    private static Recipe Sounding(NoteSound sound)
    {
        var recipe = Recipe("slurred-threes-up-and-down");
        return recipe with
        {
            Cell = (recipe.Cell ?? throw new InvalidOperationException()) with { Sound = sound },
        };
    }

    [Fact]
    public void A_chord_has_a_head_and_a_number_for_each_tone_and_one_stem()
    {
        var marks = Engraved(Chords, new ScoreOptions()).Systems[0].Marks;
        var first = marks.Where(mark => mark.Note == 0).ToList();

        Assert.Equal(3, first.Count(mark => mark.Kind == "head"));
        Assert.Equal(3, first.Count(mark => mark.Kind == "tab-number"));
        Assert.Equal(3, first.Count(mark => mark.Kind == "finger"));
        Assert.Single(first, mark => mark.Kind == "stem");
        Assert.Single(first, mark => mark.Kind == "stroke");
    }

    private static Recipe Chords { get; } =
        RecipeJson
            .Read(
                """
                { "passagework": 1, "title": "Chords", "notes": { "root": "A", "scale": "natural minor" }, "written": [
                  { "place": "1:5", "duration": "1/8", "with": ["2:5", "3:5"] },
                  { "place": "1:5", "duration": "1/8", "with": ["2:8"] },
                  { "place": "2:5", "duration": "1/16", "with": ["3:8"] },
                  { "place": "3:6", "duration": "3/16", "accent": true, "with": ["4:9", "5:9"] },
                  { "place": "4:7", "duration": "1/4", "with": ["6:5"] },
                  { "place": "1:7", "duration": "3/8", "with": ["2:7", "3:8", "4:9"] },
                  { "place": "5:7", "duration": "7/8", "with": ["6:8"] } ] }
                """
            )
            .OrThrow();

    [Fact]
    public void A_capo_changes_the_key_and_the_staff_but_no_number_on_the_tab()
    {
        var plain = Recipe("groups-of-four-up");
        var capo = plain with { Instrument = plain.Instrument with { Capo = 3 } };

        Assert.Equal(Numbers(plain), Numbers(capo));
        Assert.Equal(0, Count(plain, "key"));
        // A minor pentatonic sounds as C minor pentatonic: three flats.
        Assert.Equal(3, Count(capo, "key"));
    }

    /// <summary>All that options can add at once.</summary>
    private static ScoreOptions Everything { get; } =
        new()
        {
            Strokes = ShownStrokes.All,
            Strings = true,
            Counting = CountedBars.All,
            StartBpm = 66,
            GoalBpm = 100,
            Repeats = [new ScoreRepeat(1, 2)],
            Endings = [new ScoreEnding(2, 2, "1."), new ScoreEnding(3, 3, "2.")],
            Chords =
            [
                new ScoreChord(Fraction.Zero, ChordOf("Bbm7b5/Eb")),
                new ScoreChord(Fraction.Of(1, 16), ChordOf("F#7#9")),
                new ScoreChord(Fraction.Of(3, 32), ChordOf("Gmaj7")),
                new ScoreChord(Fraction.One, ChordOf("C")),
            ],
            Words =
            [
                new ScoreWords(Fraction.Zero, "evenly, from the wrist"),
                new ScoreWords(Fraction.Of(1, 16), "no gap before the skip"),
                new ScoreWords(Fraction.Of(15, 16), "a very long remark that would run out of the line"),
            ],
        };

    private static Recipe Mixed { get; } =
        RecipeJson
            .Read(
                """
                { "passagework": 1, "title": "Mixed", "notes": { "root": "Eb", "scale": "natural minor" },
                  "rhythm": { "tempo": 80 }, "written": [
                  { "pitch": "Eb3", "duration": "3/8" }, { "pitch": "F3", "duration": "1/8" },
                  { "pitch": "Gb3", "duration": "5/16" }, { "pitch": "G3", "duration": "3/16" },
                  { "pitch": "Gb3", "duration": "1/4" }, { "rest": "1/4" }, { "pitch": "Ab3", "duration": "1/2" },
                  { "pitch": "Bb3", "duration": "1/16" }, { "rest": "1/16" }, { "pitch": "Cb4", "duration": "1/16" },
                  { "rest": "1/16" }, { "pitch": "D4", "duration": "3/4" }, { "pitch": "Db4", "duration": "1/6" },
                  { "pitch": "Eb4", "duration": "1/12" }, { "rest": "1/12" }, { "pitch": "F4", "duration": "1/6" },
                  { "pitch": "Gb4", "duration": "1/10" }, { "pitch": "F4", "duration": "1/20" },
                  { "pitch": "Eb4", "duration": "1/10" }, { "pitch": "Eb3", "duration": "5/4" }, { "rest": "1" },
                  { "pitch": "D3", "duration": "1/64" }, { "pitch": "Eb3", "duration": "1/64" },
                  { "pitch": "D4", "duration": "1/32" }, { "pitch": "B3", "duration": "7/16", "accent": true } ] }
                """
            )
            .OrThrow();

    private static Recipe Recipe(string id) => Library.Find(id).OrThrow().Recipe;

    private static Chord ChordOf(string text) =>
        Chord.TryParse(text, out var chord) ? chord : throw new InvalidOperationException(text);

    private static long Bar(ScoreColumn column) => column.Onset.Floor();

    private static Score Engraved(Recipe recipe, ScoreOptions options) =>
        ScoreEngraver.Engrave(Played(recipe), options).OrThrow();

    private static Realization Played(Recipe recipe) =>
        Realizer.Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2)).OrThrow();

    private static IEnumerable<string> Broken(Recipe recipe, ScoreOptions options)
    {
        var played = Played(recipe);
        return ScoreRules.Broken(ScoreEngraver.Engrave(played, options).OrThrow(), played, options);
    }

    private static IEnumerable<Mark> Marks(Recipe recipe) =>
        Engraved(recipe, new ScoreOptions()).Systems.SelectMany(system => system.Marks);

    private static string Numbers(Recipe recipe) =>
        string.Join(
            ' ',
            Marks(recipe)
                .OfType<TextMark>()
                .Where(mark => mark.Kind == "tab-number")
                .Select(mark => mark.Text)
        );

    private static int Count(Recipe recipe, string kind) =>
        Engraved(recipe, new ScoreOptions()).Systems[0].Marks.Count(mark => mark.Kind == kind);
}
