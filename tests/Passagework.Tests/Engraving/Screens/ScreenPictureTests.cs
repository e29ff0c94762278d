using System.Globalization;
using System.Xml.Linq;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Screens;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Engraving.Screens;

public sealed class ScreenPictureTests
{
    // Figures are 13.5 px as in the look: 9.4 printer's points are 3.316 mm, so 4.071 px to a millimetre.
    private const double PxPerMm = 13.5 / (9.4 * 25.4 / 72);

    [Theory]
    [InlineData("groups-of-five-up", DotText.Order, NotesShown.FirstGroup)]
    [InlineData("straight-up", DotText.Finger, NotesShown.WholeLine)]
    [InlineData("one-string-run-up", DotText.None, NotesShown.WholeLine)]
    public void The_neck_is_the_drawn_one(string id, DotText dots, NotesShown shown)
    {
        var played = Played.Of(id);
        var options = new FretboardOptions { Dots = dots, Shown = shown };
        var figure = FretboardPicture.Draw(played, options with { LengthMm = 360 / PxPerMm }).OrThrow();

        var neck = ScreenPictures.Neck(played, options, 360).OrThrow();

        Assert.Equal(new ExpectedThings(PxPerMm, 0).Of(figure.Marks), CompactReading.Of(neck.Svg).Things);
        Assert.Equal((figure.Caption, figure.Description), (neck.Caption, neck.Description));
        Assert.InRange(neck.WidthPx, 359, 361);
        Assert.InRange(neck.Svg.Length, 1_000, 4_000);
        IsHarmless(neck);
    }

    [Theory]
    [InlineData("groups-of-five-up")]
    [InlineData("one-string-run-up")]
    public void Every_place_of_the_neck_has_a_ring_about_it_that_a_page_can_show(string id)
    {
        var played = Played.Of(id);
        var options = new FretboardOptions { Shown = NotesShown.WholeLine };
        var figure = FretboardPicture.Draw(played, options with { LengthMm = 360 / PxPerMm }).OrThrow();
        var dots = figure
            .Marks.OfType<CircleMark>()
            .ToDictionary(dot => dot.Id, dot => $"{dot.Centre.X * PxPerMm:F1} {dot.Centre.Y * PxPerMm:F1}");

        var rings = XElement
            .Parse(ScreenPictures.Neck(played, options, 360).OrThrow().Svg)
            .Descendants()
            .Where(element => element.Attribute("data-place") is not null)
            .ToDictionary(
                ring => "dot-" + ring.Attribute("data-place")!.Value,
                ring =>
                    string.Join(
                        ' ',
                        new[] { "cx", "cy" }.Select(name =>
                            double.Parse(ring.Attribute(name)!.Value, CultureInfo.InvariantCulture)
                                .ToString("F1", CultureInfo.InvariantCulture)
                        )
                    )
            );

        Assert.Equal(
            played.Notes.Select(note => $"dot-{note.Place}").Distinct().Order(StringComparer.Ordinal),
            played
                .Notes.Select(note => $"dot-{note.Place}")
                .Distinct()
                .Where(rings.ContainsKey)
                .Order(StringComparer.Ordinal)
        );
        Assert.NotEmpty(dots);
        Assert.All(dots, dot => Assert.Equal(dot.Value, rings[dot.Key]));
    }

    [Fact]
    public void Flats_among_the_degrees_are_signs_of_the_page()
    {
        var options = new FretboardOptions { Dots = DotText.Degree, Shown = NotesShown.WholeLine };

        var things = CompactReading
            .Of(ScreenPictures.Neck(Played.Of("groups-of-five-up"), options, 360).OrThrow().Svg)
            .Things.ToList();

        // A minor pentatonic in box 1: the third three times, the seventh twice.
        Assert.Equal(
            5,
            things.Count(thing => thing.StartsWith("sign pw-paper-e260 ", StringComparison.Ordinal))
        );
        Assert.Equal(
            3,
            things.Count(thing =>
                thing.EndsWith(" 3", StringComparison.Ordinal)
                && thing.Contains("pw-paper", StringComparison.Ordinal)
            )
        );
    }

    [Theory]
    [InlineData(460, "2 3 4 5 6")]
    [InlineData(404, "3 4 5 6")]
    [InlineData(358, "3 4 5")]
    [InlineData(120, "4")]
    public void Feels_farthest_from_the_own_go_first_where_room_is_small(double widthPx, string feels)
    {
        var line = Played.Of("groups-of-five-up").Line;

        var beat = ScreenPictures
            .Beat(line, new BeatOptions { Feels = BeatOptions.Plain }, widthPx)
            .OrThrow();

        var foot = CompactReading
            .Of(beat.Svg)
            .Things.Where(thing => thing.StartsWith("letter", StringComparison.Ordinal))
            .Select(thing => thing.Split(' '))
            .ToList();
        double Y(string[] words) => double.Parse(words[^2].Split(',')[1], CultureInfo.InvariantCulture);
        // Figures are centred on their ink, so that the lowest row is not quite level.
        foot.RemoveAll(words => Y(words) < foot.Max(Y) - 2);
        Assert.Equal(feels, string.Join(' ', foot.Select(words => words[^1]).Order(StringComparer.Ordinal)));
        Assert.InRange(beat.WidthPx, 60, widthPx + 1);
        // No figure is smaller than 13 px.
        Assert.All(
            foot,
            words => Assert.InRange(double.Parse(words[^3], CultureInfo.InvariantCulture), 13, 13.5)
        );
        IsHarmless(beat);
    }

    [Fact]
    public void The_beat_picture_is_the_drawn_one()
    {
        var line = Played.Of("bursts-nine").Line;
        var figure = BeatPicture.Draw(line, new BeatOptions()).OrThrow();

        var beat = ScreenPictures.Beat(line, new BeatOptions(), 900).OrThrow();

        Assert.Equal(new ExpectedThings(PxPerMm, 0).Of(figure.Marks), CompactReading.Of(beat.Svg).Things);
        Assert.Equal(figure.Caption, beat.Caption);
    }

    [Theory]
    [InlineData(119)]
    [InlineData(double.NaN)]
    public void Pictures_without_room_are_refused(double widthPx)
    {
        var played = Played.Of("groups-of-five-up");

        Assert.False(
            ScreenPictures.Neck(played, new FretboardOptions(), widthPx).TryGet(out _, out var neck)
        );
        Assert.False(
            ScreenPictures.Beat(played.Line, new BeatOptions(), widthPx).TryGet(out _, out var beat)
        );
        Assert.Equal(("the length of the neck", "the width of the beat picture"), (neck.Where, beat.Where));
    }

    // Axis from 25 to 200 over 120 - 2 x 14 px: an octave is 30.67 px wide.
    [Fact]
    public void Spans_lie_on_one_axis_on_which_a_doubling_is_always_as_wide()
    {
        var spans = ScreenSpans
            .Draw(
                [
                    ("slow", Ceiling(2, 3, 4)),
                    ("idle", new Ceiling(null, null, null, null)),
                    ("fast", Ceiling(4, 6, 8)),
                ],
                4,
                120
            )
            .OrThrow();

        var (slow, fast) = (Row(spans, 0), Row(spans, 2));
        Assert.Null(spans.Rows[1]);
        Assert.Equal(["25.0", "50.0", "100.0", "200.0"], TicksOf(spans));
        Assert.Equal(
            (14 + (30.67 * Math.Log2(30 / 25.0)), 14 + (30.67 * Math.Log2(45 / 25.0))),
            (slow.Low, slow.Least),
            Near
        );
        Assert.Equal(14 + (30.67 * Math.Log2(60 / 25.0)), slow.High, 0.06);
        // Twice as fast is one octave further.
        Assert.Equal((30.7, 30.7), (fast.Low - slow.Low, fast.High - slow.High), Near);
        Assert.Equal("Slow: 45 beats a minute, most likely from 30 to 60.", spans.Rows[0]!.Description);
    }

    [Fact]
    public void A_ceiling_without_a_range_is_a_dot()
    {
        var spans = ScreenSpans.Draw([("one", new Ceiling(5, null, null, null))], 4, 110).OrThrow();

        var row = Row(spans, 0);
        Assert.Equal((row.Least, row.Least), (row.Low, row.High));
    }

    [Fact]
    public void The_small_strip_is_as_high_as_the_hands_need()
    {
        var measured = Played.Measured("groups-of-five-up");

        var strip = ShelfPictures.Strip(measured, 220).OrThrow();

        // The figures begin and end on the axis, 36 px down; the highest of all reaches to 6 px from an edge.
        var figures = CompactReading
            .Of(strip.Svg)
            .Things.Where(thing => thing.StartsWith("figure", StringComparison.Ordinal))
            .ToDictionary(thing => thing.Split(' ')[1], Heights);
        var most = measured.Demands.Max(demand => Math.Max(demand.FrettingMs ?? 0, demand.PickingMs ?? 0));
        Assert.Equal(6, figures["pw-fretting"].Min());
        for (var i = 0; i < 40; i++)
        {
            Assert.Equal(
                36 - (30 * (measured.Demands[i].FrettingMs ?? 0) / most),
                figures["pw-fretting"][1 + (2 * i)],
                0.051
            );
            Assert.Equal(
                36 + (30 * (measured.Demands[i].PickingMs ?? 0) / most),
                figures["pw-picking"][1 + (2 * i)],
                0.051
            );
        }

        Assert.Equal("Time that both hands need for each of 40 notes, at most 225 ms.", strip.Description);
        Assert.InRange(strip.Svg.Length, 500, 2_000);
        IsHarmless(strip);
    }

    [Fact]
    public void First_bars_of_the_library_fit_a_row_of_the_shelf()
    {
        foreach (var id in Library.All.Select(exercise => exercise.Id))
        {
            var tab = ShelfPictures.FirstBar(Played.Of(id), 330).OrThrow();
            Assert.Equal((330, 72), (tab.WidthPx, tab.HeightPx));
            // Nothing that tells a place is left out.
            Assert.Equal(tab.Description.Count(letter => letter == ':') - 1, Frets(tab));
            IsHarmless(tab);
        }
    }

    // Frets of two figures are two letters closer than any two notes.
    private static int Frets(ScreenPicture tab)
    {
        var places = CompactReading
            .Of(tab.Svg)
            .Things.Where(thing => thing.StartsWith("letter pw-main pw-sans-bold", StringComparison.Ordinal))
            .Select(thing => thing.Split(' ')[^2].Split(','))
            .GroupBy(place => place[1])
            .Select(row =>
                row.Select(place => double.Parse(place[0], CultureInfo.InvariantCulture)).Order().ToList()
            );
        return places.Sum(row =>
            row.Count - row.Zip(row.Skip(1)).Count(pair => pair.Second - pair.First < 10)
        );
    }

    [Fact]
    public void The_first_bar_is_told_by_its_places()
    {
        var played = Played.Of("groups-of-five-up");

        Assert.Equal(
            "The first bar as tab: 6:5, 6:8, 5:5, 5:7, 4:5, 6:8, 5:5, 5:7, 4:5, 4:7, 5:5, 5:7, 4:5, 4:7, 3:5, 5:7.",
            ShelfPictures.FirstBar(played, 330).OrThrow().Description
        );
        Assert.StartsWith(
            "The first bar as tab, its first part: 6:5, 6:8, ",
            ShelfPictures.FirstBar(played, 200).OrThrow().Description,
            StringComparison.Ordinal
        );
    }

    private static IEqualityComparer<(double, double)> Near { get; } =
        EqualityComparer<(double A, double B)>.Create(
            (one, other) => Math.Abs(one.A - other.A) < 0.11 && Math.Abs(one.B - other.B) < 0.11,
            _ => 0
        );

    private static Ceiling Ceiling(double low, double least, double high) =>
        new(least, null, null, new CeilingRange(low, high, 1, 0, 0, []));

    private static (double Low, double Least, double High) Row(ScreenSpans spans, int row)
    {
        var things = CompactReading
            .Of(spans.Rows[row]!.Svg)
            .Things.Select(thing => thing.Split(' '))
            .ToList();
        var line = things.Find(words => words[0] is "line");
        var dot = X(things.Single(words => words[0] == "dot" && words[3] == "6.4")[^1]);
        // A span without length is read as a dot too.
        return line is null ? (dot, dot, dot) : (X(line[^2]), dot, X(line[^1]));
    }

    private static List<string> TicksOf(ScreenSpans spans) =>
        [
            .. XElement
                .Parse(spans.Head.Svg)
                .Descendants()
                .Where(element => element.Name.LocalName == "text")
                .SelectMany(text => Split(text.Value, text.Attribute("x")!.Value)),
        ];

    // Figures of one row are one text; letters nearer than 10 px are one figure.
    private static IEnumerable<string> Split(string letters, string middles)
    {
        var xs = middles.Split(' ').Select(x => double.Parse(x, CultureInfo.InvariantCulture)).ToList();
        var word = "";
        for (var i = 0; i < letters.Length; i++)
        {
            word += letters[i];
            if (i == letters.Length - 1 || xs[i + 1] - xs[i] > 10)
            {
                yield return CompactReading.Tenth(double.Parse(word, CultureInfo.InvariantCulture));
                word = "";
            }
        }
    }

    private static List<double> Heights(string thing) =>
        [
            .. thing
                .Split(' ')
                .Where(part => part.Contains(','))
                .Select(part => double.Parse(part.Split(',')[1], CultureInfo.InvariantCulture)),
        ];

    private static double X(string place) => double.Parse(place.Split(',')[0], CultureInfo.InvariantCulture);

    private static void IsHarmless(ScreenPicture picture)
    {
        var svg = XElement.Parse(picture.Svg);
        Assert.Equal(picture.Description, svg.Attribute("aria-label")?.Value);
        Assert.All(
            svg.Descendants(),
            element => Assert.Contains(element.Name.LocalName, new[] { "circle", "g", "path", "text" })
        );
        Assert.True(picture.Description.Length > 0);
    }
}
