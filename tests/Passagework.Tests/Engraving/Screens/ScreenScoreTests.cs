using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Screens;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Tests.Engraving.Screens;

public sealed partial class ScreenScoreTests
{
    // To be shown within 100 ms of a change, a picture may have so much (measured in a browser, see bench/README.md).
    [Theory]
    [InlineData(1312, 60_000, 650)]
    [InlineData(944, 68_000, 760)]
    [InlineData(358, 115_000, 1_400)]
    public void Sixteen_bars_of_sixteenths_are_small(double widthPx, int mostBytes, int mostElements)
    {
        var options = new ScreenOptions { WidthPx = widthPx, TempoBpm = 60 };

        var systems = ScreenScore.Draw(SixteenBars.Measured, options).OrThrow().Systems;

        Assert.Equal(256, systems.Sum(system => system.Notes.Length));
        Assert.InRange(systems.Sum(system => Encoding.UTF8.GetByteCount(system.Svg)), 40_000, mostBytes);
        Assert.InRange(systems.Sum(Elements), 400, mostElements);
    }

    [Fact]
    public void Forty_notes_are_one_system_at_a_desk()
    {
        var systems = Draw("groups-of-five-up", new ScreenOptions { TempoBpm = 60 }).Systems;

        Assert.Single(systems);
        Assert.InRange(Encoding.UTF8.GetByteCount(systems[0].Svg), 5_000, 10_000);
        Assert.InRange(Elements(systems[0]), 60, 110);
    }

    [Theory]
    [InlineData("groups-of-five-up", 1312, 3)]
    [InlineData("groups-of-five-up", 944, 2)]
    [InlineData("groups-of-five-up", 358, 0.5)]
    [InlineData("groups-of-four-up-and-down", 1312, 4)]
    public void Systems_hold_what_the_width_allows(string id, double widthPx, double mostBars)
    {
        var recipe = Played.Recipe(id);
        var onsets = Played.Of(id).Notes.Select(note => note.Note.Onset / recipe.Rhythm.Meter.Bar).ToList();

        foreach (var system in Draw(id, new ScreenOptions { WidthPx = widthPx }).Systems)
        {
            // The rest after the last note is no system of its own.
            Assert.NotEmpty(system.Notes);
            var first = onsets[system.Notes[0].Note].ToDouble();
            var last = onsets[system.Notes[^1].Note].ToDouble();

            // From its first note a system ends before that many bars later.
            Assert.InRange(last - first, 0, mostBars - 0.01);
        }
    }

    // Eight bars of quarters would fit one line wherever there is room for a desk.
    [Theory]
    [InlineData(1312, "4/4", "1-8")]
    [InlineData(944, "4/4", "1-2 3-4 5-6 7-8")]
    [InlineData(358, "4/4", "1-1 1-1 2-2 2-2 3-3 3-3 4-4 4-4 5-5 5-5 6-6 6-6 7-7 7-7 8-8 8-8")]
    [InlineData(358, "3/4", "1-1 2-2 3-3 4-4 5-5 6-6 7-7 8-8 9-9 10-10 11-11")]
    public void Long_notes_make_no_longer_systems(double widthPx, string meter, string bars)
    {
        Assert.True(Meter.TryParse(meter, out var asked));
        var quarters = Played.Recipe("first-notes-up");
        quarters = quarters with
        {
            Movement = quarters.Movement with { Repeat = 4 },
            Rhythm = quarters.Rhythm with { Meter = asked },
            Fretting = new FrettingPlan(),
        };

        var systems = ScreenScore
            .Draw(Played.Measured(quarters), new ScreenOptions { WidthPx = widthPx })
            .OrThrow()
            .Systems;

        Assert.Equal(bars, string.Join(' ', systems.Select(system => $"{system.FirstBar}-{system.LastBar}")));
    }

    [Theory]
    [InlineData(1312)]
    [InlineData(944)]
    [InlineData(358)]
    public void Every_note_of_the_library_has_one_target_in_its_system(double widthPx)
    {
        foreach (var id in Library.All.Select(exercise => exercise.Id))
        {
            var measured = Played.Measured(id);
            var score = ScreenScore.Draw(measured, new ScreenOptions { WidthPx = widthPx }).OrThrow();

            Assert.Equal(
                Enumerable.Range(0, measured.Realization.Notes.Length),
                score.Systems.SelectMany(system => CompactReading.Of(system.Svg).Hits).Select(hit => hit.Note)
            );
            Assert.All(score.Systems, HasTargetsAtItsNotes);
        }
    }

    [Fact]
    public void Everything_that_the_library_refers_to_is_in_the_page()
    {
        var ids = XElement
            .Parse(ScreenDefs.Markup)
            .Descendants()
            .Select(element => element.Attribute("id")?.Value)
            .OfType<string>()
            .ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        foreach (var id in Library.All.Select(exercise => exercise.Id))
        {
            foreach (var system in Draw(id, new ScreenOptions { WidthPx = 944 }).Systems)
            {
                Assert.Empty(
                    References().Matches(system.Svg).Select(match => match.Groups["id"].Value).Except(ids)
                );
            }
        }
    }

    [Fact]
    public void Nothing_that_a_page_could_run_or_style_is_in_it_and_titles_are_harmless()
    {
        var recipe = Played.Recipe("groups-of-five-up") with { Title = "<script>&\"'</script>" };
        var system = ScreenScore
            .Draw(Played.Measured(recipe), new ScreenOptions { IdPrefix = "\"><b>" })
            .OrThrow()
            .Systems[0];

        var svg = XElement.Parse(system.Svg);

        Assert.Equal("Bars 1 to 3 of <script>&\"'</script>", svg.Attribute("aria-label")?.Value);
        Assert.Equal("\"><b>system-1", svg.Attribute("id")?.Value);
        Assert.Equal(
            ["g", "path", "svg", "text"],
            svg.DescendantsAndSelf()
                .Select(element => element.Name.LocalName)
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
        Assert.DoesNotContain("style=", system.Svg, StringComparison.Ordinal);
        Assert.Equal((system.WidthPx, system.HeightPx), (Number(svg, "width"), Number(svg, "height")));
    }

    [Fact]
    public void The_chosen_note_lies_on_a_band_and_no_other()
    {
        var drawn = Draw("groups-of-five-up", new ScreenOptions { Chosen = 7 });

        var bands = XElement
            .Parse(drawn.Systems[0].Svg)
            .Descendants()
            .Where(element => element.Attribute("class")?.Value == "pw-shade");

        Assert.Equal(["7"], bands.Select(band => band.Attribute("data-note")?.Value));
    }

    [Theory]
    [InlineData(1312, "count fretting hand hand picking staff strokes tab")]
    [InlineData(944, "count fretting hand hand picking staff strokes tab")]
    [InlineData(358, "")]
    public void Rows_are_named_in_the_margin_where_there_is_room(double widthPx, string names)
    {
        foreach (var system in Draw("groups-of-five-up", new ScreenOptions { WidthPx = widthPx }).Systems)
        {
            var words = CompactReading
                .Of(system.Svg)
                .Things.Where(thing => thing.Contains("pw-small-caps", StringComparison.Ordinal))
                .Select(thing => thing.Split(' '))
                .ToList();

            Assert.Equal(
                names,
                string.Join(' ', words.Select(word => word[^1]).Order(StringComparer.Ordinal))
            );
            Assert.All(words, word => Assert.Equal("end", word[^3]));
            Assert.InRange(system.MusicStartPx, names.Length > 0 ? 100 : 20, 200);
        }
    }

    [Fact]
    public void What_is_locked_is_framed()
    {
        var recipe = Played.Recipe("groups-of-five-up");
        recipe = recipe with
        {
            Fretting = recipe.Fretting with
            {
                Locks = [new(3, Finger: 3), new(6, Stroke: Stroke.Down), new(9, Position: 5)],
            },
        };

        var free = Frames(Draw("groups-of-five-up", new ScreenOptions()));
        var locked = ScreenScore.Draw(Played.Measured(recipe), new ScreenOptions()).OrThrow();
        var frames = Frames(locked);

        Assert.Empty(free);
        Assert.Equal(3, frames.Count);
        var notes = locked.Systems[0].Notes;
        // The finger left of its head, the stroke and the fret about theirs.
        Assert.InRange(frames[0].Right, notes[3].XPx - 15, notes[3].XPx);
        Assert.All(
            [(1, 6), (2, 9)],
            at => Assert.InRange(notes[at.Item2].XPx, frames[at.Item1].Left, frames[at.Item1].Right)
        );
        Assert.InRange(frames[1].Bottom, 0, locked.Systems[0].Staff!.TopPx);
        Assert.InRange(frames[2].Top, locked.Systems[0].Tab!.TopPx, locked.Systems[0].Tab!.BottomPx);
    }

    [Fact]
    public void Rows_that_are_not_asked_for_are_not_there()
    {
        var bare = Draw(
            "groups-of-five-up",
            new ScreenOptions
            {
                Staff = false,
                Strokes = ShownStrokes.None,
                Counts = false,
                Strip = false,
                Fingers = false,
            }
        ).Systems[0];

        Assert.Null(bare.Staff);
        Assert.Null(bare.Strip);
        Assert.NotNull(bare.Tab);
        Assert.DoesNotContain("pw-picking", bare.Svg, StringComparison.Ordinal);
        Assert.DoesNotContain("pw-fretting-ed1", bare.Svg, StringComparison.Ordinal);
        Assert.Equal(
            ["tab"],
            CompactReading
                .Of(bare.Svg)
                .Things.Where(thing => thing.Contains("small-caps", StringComparison.Ordinal))
                .Select(thing => thing.Split(' ')[^1])
        );
    }

    [Fact]
    public void A_larger_score_needs_more_systems()
    {
        var larger = new ScreenOptions { SpacePx = ScreenOptions.LargerSpacePx };

        Assert.Equal(2, Draw("groups-of-five-up", larger).Systems.Length);
    }

    [Theory]
    [InlineData(279, 8.7, null, true, "279 pixels", "the width of the score")]
    [InlineData(double.NaN, 8.7, null, true, "NaN pixels", "the width of the score")]
    [InlineData(1312, 5, null, true, "5 pixels", "the staff space")]
    [InlineData(1312, 8.7, 40, true, "note 40 is chosen", "")]
    [InlineData(1312, 8.7, -1, true, "note -1 is chosen", "")]
    [InlineData(1312, 8.7, null, false, "neither staff nor tab", "the rows of the score")]
    public void What_cannot_be_drawn_is_refused(
        double width,
        double space,
        int? chosen,
        bool rows,
        string what,
        string where
    )
    {
        var options = new ScreenOptions
        {
            WidthPx = width,
            SpacePx = space,
            Chosen = chosen,
            Staff = rows,
            Tab = rows,
        };

        Assert.False(
            ScreenScore.Draw(Played.Measured("groups-of-five-up"), options).TryGet(out _, out var fault)
        );
        Assert.Equal((what, where), (fault.What, fault.Where));
    }

    [Fact]
    public void A_tempo_that_is_none_is_refused() =>
        Assert.False(
            ScreenScore
                .Draw(Played.Measured("groups-of-five-up"), new ScreenOptions { TempoBpm = 0 })
                .TryGet(out _, out _)
        );

    [Fact]
    public void The_key_explains_what_occurs_and_nothing_else()
    {
        var strip = Draw("groups-of-five-up", new ScreenOptions { TempoBpm = 60 });
        var bare = Draw("groups-of-five-up", new ScreenOptions { Strip = false });

        Assert.Equal(
            "time the fretting hand needs to reach the note; time the picking hand needs; all the time there is at 60 beats a minute; a string is passed over (pointed: by the pick)",
            string.Join("; ", strip.Key.Select(line => line.Words))
        );
        Assert.All(strip.Key, line => Assert.NotEmpty(CompactReading.Of(line.Sign.Svg).Things));
        Assert.Empty(bare.Key);
    }

    // 4:5 to 6:8 and the figures of its two hands: what the strip shows at note 5.
    [Fact]
    public void A_table_says_the_same_note_by_note()
    {
        var score = Draw("groups-of-five-up", new ScreenOptions { TempoBpm = 60 });

        Assert.Equal(
            "Groups of five, rising: 40 notes in three bars of 4/4; times of both hands at 60 beats a minute.",
            score.Words
        );
        Assert.Equal(40, score.Rows.Length);
        var row = score.Rows[5];
        Assert.Equal(
            (1, "e", "6:8", "C3", 4, Stroke.Up),
            (row.Bar, row.Count, row.Place, row.Pitch, row.Finger, row.Stroke)
        );
        Assert.Equal(250, row.ThereAreMs!.Value, 1e-9);
        Assert.Equal((225, 209), (Math.Round(row.FrettingMs!.Value), Math.Round(row.PickingMs!.Value)));
        Assert.Null(score.Rows[0].FrettingMs);
        Assert.Equal((3, "a"), (score.Rows[39].Bar, score.Rows[39].Count));
    }

    private static void HasTargetsAtItsNotes(ScreenSystem system)
    {
        var hits = CompactReading.Of(system.Svg).Hits;
        Assert.Equal(system.Notes.Select(note => note.Note), hits.Select(hit => hit.Note));
        var before = 0.0;
        foreach (var (note, hit) in system.Notes.Zip(hits))
        {
            var (left, right) = (hit.Corners.Min(corner => corner.X), hit.Corners.Max(corner => corner.X));

            Assert.Equal((note.LeftPx, note.RightPx), (left, right));
            Assert.InRange(note.XPx, left + 1, right - 1);
            Assert.InRange(left, before, system.WidthPx);
            Assert.InRange(right, left, system.WidthPx);
            Assert.Equal((0, system.HeightPx), (hit.Corners.Min(c => c.Y), hit.Corners.Max(c => c.Y)));
            before = right;
        }
    }

    private static List<Box> Frames(ScreenScore score) =>
        [
            .. CompactReading
                .Of(score.Systems[0].Svg)
                .Things.Where(thing => thing.StartsWith("figure pw-main pw-line", StringComparison.Ordinal))
                .Select(thing => thing.Split(' ').Where(part => part.Contains(',')).Select(Place).ToList())
                .Select(corners => new Box(
                    corners.Min(c => c.X),
                    corners.Min(c => c.Y),
                    corners.Max(c => c.X),
                    corners.Max(c => c.Y)
                ))
                .OrderBy(box => box.Left),
        ];

    private static Point Place(string text)
    {
        var parts = text.Split(',').Select(part => double.Parse(part, CultureInfo.InvariantCulture)).ToList();
        return new Point(parts[0], parts[1]);
    }

    private static ScreenScore Draw(string id, ScreenOptions options) =>
        ScreenScore.Draw(Played.Measured(id), options).OrThrow();

    private static int Elements(ScreenSystem system) =>
        XElement.Parse(system.Svg).DescendantsAndSelf().Count();

    private static double Number(XElement svg, string name) =>
        double.Parse(svg.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"url\(#(?<id>[^)]*)\)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex References();
}
