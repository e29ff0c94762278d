using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Strips;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Engraving;

/// <summary>The strip of both hands: where its marks stand, how long its bars are, which signs it has.</summary>
public sealed class HandsStripTests
{
    // Groups of five, intermediate, 60 beats a minute, four to the beat: 250 ms for each note. The move back over a string
    // (4:5 first finger to 6:8 little finger) takes 225 ms, as in the table of FrettingMovesTests.
    [Fact]
    public void Bar_and_limit_stand_in_proportion()
    {
        var (measured, score) = Strip("groups-of-five-up", bpm: 60);
        var axis = Axis(score.Systems[0]);
        var bar = Box(score.Systems[0], "note-5-fretting-demand");
        var limit = score.Systems[0].Marks.OfType<LineMark>().First(mark => mark.Kind == "limit");

        Assert.Equal(225, measured.Demands[5].FrettingMs!.Value, 0.5);
        Assert.Equal(
            measured.Demands[5].FrettingMs!.Value / 250,
            (axis - bar.Top) / (axis - limit.From.Y),
            0.001
        );
    }

    // Four of seven joins go back over a string (hands of two notes to a string, groups of five: every second join and the
    // first), each for both hands.
    [Fact]
    public void Skips_stand_over_the_moves_that_skip()
    {
        var (_, score) = Strip("groups-of-five-up", bpm: 60);

        var notes = score
            .Systems.SelectMany(system => system.Marks)
            .Where(mark => mark.Kind == "move-sign")
            .GroupBy(mark => mark.Ink)
            .ToDictionary(hand => hand.Key, hand => hand.Select(mark => mark.Note).Distinct().ToList());

        Assert.Equal([5, 15, 25, 35], notes[Ink.Fretting].Select(note => note ?? -1));
        Assert.Equal([5, 15, 25, 35], notes[Ink.Picking].Select(note => note ?? -1));
    }

    [Fact]
    public void What_does_not_fit_stands_hollow_under_a_cap()
    {
        Assert.Empty(Kinds(Strip("groups-of-five-up", bpm: 40).Score, "fretting-cap"));

        var fast = Strip("groups-of-five-up", bpm: 140);
        var over = fast.Measured.Demands.Count(demand => demand.FrettingMs > 60_000 / 140.0 / 4);
        Assert.Equal(over, Kinds(fast.Score, "fretting-cap").Count);
        Assert.All(
            Kinds(fast.Score, "fretting-excess"),
            mark => Assert.Equal(Filling.None, Assert.IsType<PolygonMark>(mark).Filling)
        );
    }

    [Theory]
    [InlineData(40, false)]
    [InlineData(140, true)]
    public void Key_explains_what_does_not_fit_where_it_occurs(double bpm, bool explained)
    {
        var key = HandsStrip.Of(Measured(Played.Recipe("groups-of-five-up")), bpm).OrThrow().Key(180);

        Assert.Equal(
            explained,
            key.Marks.OfType<TextMark>()
                .Any(mark => mark.Text.Contains("what does not fit", StringComparison.Ordinal))
        );
    }

    // Rolls and lifts are assumed, presses are derived from published rates.
    [Theory]
    [InlineData("groups-of-five-up", false)]
    [InlineData("groups-of-four-up", true)]
    public void Guessed_figures_have_a_ring(string id, bool rings) =>
        Assert.Equal(rings, Kinds(Strip(id, bpm: 60).Score, "assumed").Count > 0);

    [Theory]
    [InlineData("one-sided-rolls-low", MoveKind.Roll)]
    [InlineData("three-string-sweeps-up", MoveKind.Sweep)]
    [InlineData("position-shift", MoveKind.ShiftUp)]
    public void Key_knows_the_signs_that_occur(string family, MoveKind kind)
    {
        var exercise = Library.All.First(found => found.Id == family || found.Family == family);

        Assert.Contains(kind, HandsStrip.Of(Measured(exercise.Recipe), 60).OrThrow().Kinds);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-60)]
    [InlineData(100_000)]
    [InlineData(double.NaN)]
    public void Tempo_out_of_range_is_refused(double bpm)
    {
        var measured = Measured(Library.Find("groups-of-five-up").OrThrow().Recipe);

        Assert.False(HandsStrip.Of(measured, bpm).TryGet(out _, out var fault));
        Assert.Contains("above 0, at most 1000 beats a minute", fault.ToString(), StringComparison.Ordinal);
    }

    // As slow as a recipe may be: the limit is far beyond the strip, and the key says the tempo.
    [Theory]
    [InlineData(5, "at 5 beats a minute")]
    [InlineData(0.5, "at 0.5 beats a minute")]
    [InlineData(0.001, "at 0.001 beats a minute")]
    [InlineData(1e-300, "at 1E-300 beats a minute")]
    public void The_slowest_tempi_have_a_strip(double bpm, string words)
    {
        var (measured, score) = Strip("groups-of-five-up", bpm);
        var key = HandsStrip.Of(measured, bpm).OrThrow().Key(180);

        Assert.Equal(39, Kinds(score, "fretting-demand").Count);
        Assert.Empty(Kinds(score, "limit"));
        Assert.Contains(
            key.Marks.OfType<TextMark>(),
            text => text.Text.Contains(words, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void The_hands_are_named_in_the_first_system_whatever_signs_stand_there()
    {
        foreach (var id in All)
        {
            var system = Strip(id, bpm: 60).Score.Systems[0];
            var names = system
                .Marks.OfType<TextMark>()
                .Where(mark => mark.Id.EndsWith("ing-name", StringComparison.Ordinal));

            Assert.Equal(["fretting hand", "picking hand"], names.Select(name => name.Text));
        }
    }

    public static TheoryData<string> All => [.. Library.All.Select(exercise => exercise.Id)];

    [Theory]
    [MemberData(nameof(All))]
    public void Every_exercise_keeps_its_strip_in_line_and_inside(string id)
    {
        var (measured, score) = Strip(id, bpm: 50);
        var drawn = new HashSet<(int, Ink)>();
        foreach (var system in score.Systems)
        {
            var columns = system
                .Columns.Where(column => column.Heads is [{ TiedBack: false }, ..])
                .ToDictionary(column => column.Heads[0].Note, column => column.XMm);
            foreach (
                var bar in system.Marks.Where(mark => mark.Kind.EndsWith("-demand", StringComparison.Ordinal))
            )
            {
                var box = MarkBox.Of(bar);
                Assert.Equal(columns[bar.Note!.Value], (box.Left + box.Right) / 2, 0.1);
                drawn.Add((bar.Note.Value, bar.Ink));
            }

            var strip = system.Marks.Where(mark => MarkBox.Of(mark).Bottom > Axis(system) - 12).ToList();
            Assert.All(strip, mark => Assert.InRange(MarkBox.Of(mark).Bottom, 0, system.HeightMm));
            AssertApart(strip.Where(mark => mark.Kind is "move-sign" or "strip-name"));
        }

        Assert.Equal(
            measured
                .Demands.Select((demand, note) => (demand, note))
                .Where(pair => pair.demand.FrettingMs > 0)
                .Select(pair => pair.note),
            drawn.Where(pair => pair.Item2 == Ink.Fretting).Select(pair => pair.Item1).Order()
        );
    }

    [Fact]
    public void Names_of_marks_are_all_different()
    {
        var ids = Strip("groups-of-five-up-and-down", bpm: 60)
            .Score.Systems.SelectMany(system => system.Marks)
            .Select(mark => mark.Id)
            .ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    // Marks of one sign touch; those of different notes and names must not.
    private static void AssertApart(IEnumerable<Mark> marks)
    {
        var boxes = marks.Select(mark => (mark.Note, mark.Id, Box: MarkBox.Of(mark))).ToList();
        foreach (var (note, id, box) in boxes)
        {
            var clash = boxes.Find(other =>
                other.Id != id && (note is null || other.Note != note) && other.Box.Overlaps(box)
            );
            Assert.True(clash.Id is null, $"{id} lies over {clash.Id}");
        }
    }

    private static List<Mark> Kinds(Score score, string kind) =>
        [.. score.Systems.SelectMany(system => system.Marks).Where(mark => mark.Kind == kind)];

    private static double Axis(ScoreSystem system) =>
        Assert.IsType<LineMark>(system.Marks.Single(mark => mark.Kind == "strip-axis")).From.Y;

    private static Box Box(ScoreSystem system, string id) =>
        MarkBox.Of(
            system.Marks.Single(mark => mark.Id == id) is PolygonMark bar
                ? bar with
                {
                    OutlineMm = 0,
                }
                : throw new InvalidOperationException()
        );

    private static (Measurement Measured, Score Score) Strip(string id, double bpm)
    {
        var measured = Measured(Library.Find(id).OrThrow().Recipe);
        var score = ScoreEngraver.Engrave(measured.Realization, new ScoreOptions()).OrThrow();
        return (measured, HandsStrip.Of(measured, bpm).OrThrow().Under(score));
    }

    private static Measurement Measured(Recipe recipe) => Measurer.Measure(recipe, Player.At(2)).OrThrow();
}
