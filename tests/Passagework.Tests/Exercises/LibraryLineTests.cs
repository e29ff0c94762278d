using Passagework.Exercises;
using Passagework.Foundation;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

/// <summary>The realized library against fret lists kept as test data (see TestData/README.md).</summary>
public class LibraryLineTests
{
    private static readonly Dictionary<string, string> Published = File.ReadLines(
            System.IO.Path.Combine(AppContext.BaseDirectory, "TestData", "library-lines.txt")
        )
        .Select(line => line.Split(' ', 2))
        .ToDictionary(parts => parts[0], parts => parts[1]);

    [Fact]
    public void The_list_of_published_lines_is_whole() => Assert.Equal(58, Published.Count);

    public static TheoryData<string> RisingAndFalling() =>
        [.. Published.Keys.Where(id => IsOneWay(id) && !IsFingerOrder(id))];

    public static TheoryData<string> ThereAndBack() =>
        [
            .. Published
                .Keys.Where(id => id.EndsWith("-up", StringComparison.Ordinal))
                .Select(id => id[..^3])
                .Where(family => family != "diagonal" && !IsFingerOrder(family)),
        ];

    public static TheoryData<string, int> Rounds() =>
        new()
        {
            { "two-string-loop", 4 },
            { "bursts-five", 4 },
            { "bursts-nine", 4 },
            { "bursts-twelve", 4 },
            { "thumb-and-fingers-rolling", 8 },
            { "thumb-and-fingers-out-and-back", 8 },
            { "trill-one-three", 4 },
            { "trill-one-four", 4 },
        };

    [Theory]
    [MemberData(nameof(RisingAndFalling))]
    public void Lines_equal_the_published_fret_lists(string id) =>
        Assert.Equal(Lines(id, Published[id]), Lines(id, Places(Realized(id))));

    [Theory]
    [MemberData(nameof(ThereAndBack))]
    public void Up_and_down_is_one_after_the_other(string family)
    {
        var id = family + "-up-and-down";
        var second = Published[family + "-down"];
        // The scale shares its top note; everything else turns back to back.
        var expected = $"{Published[family + "-up"]} | {(family == "straight" ? second[4..] : second)}";

        Assert.Equal(Lines(id, expected), Lines(id, Places(Realized(id))));
    }

    [Theory]
    [InlineData("in-order")]
    [InlineData("crossed")]
    [InlineData("outside-in")]
    public void Finger_orders_come_back_as_the_mirror(string form)
    {
        var id = $"finger-orders-{form}";

        Assert.Equal($"{Published[id + "-up"]} | {Published[id + "-down"]}", Places(Realized(id)));
    }

    [Theory]
    [MemberData(nameof(Rounds))]
    public void Loops_play_their_round_again(string id, int times) =>
        Assert.Equal(string.Join(" | ", Enumerable.Repeat(Published[id], times)), Places(Realized(id)));

    [Theory]
    [InlineData("straight", "12/12/23")]
    [InlineData("groups-of-three", "30/30/60")]
    [InlineData("groups-of-four", "36/36/72")]
    [InlineData("groups-of-five", "40/40/80")]
    [InlineData("groups-of-six", "42/42/84")]
    [InlineData("groups-of-seven", "42/42/84")]
    [InlineData("reversed-threes", "30/30/60")]
    [InlineData("out-and-back-fours", "40/40/80")]
    [InlineData("out-and-back-sixes", "30/30/60")]
    [InlineData("every-other-note", "20/20/40")]
    [InlineData("skipped-fifths", "18/18/36")]
    [InlineData("skipped-fours", "16/16/32")]
    [InlineData("pedal", "30/30/60")]
    [InlineData("one-sided-rolls-low", "12/12/24")]
    [InlineData("one-sided-rolls-high", "12/12/24")]
    [InlineData("three-string-sweeps", "24/24/48")]
    [InlineData("slurred-threes", "30/30/60")]
    [InlineData("position-shift", "20/20/40")]
    [InlineData("displaced-fours", "36/36/72")]
    [InlineData("scale-thirds", "30/30/60")]
    [InlineData("three-per-string-fours", "60/60/120")]
    [InlineData("one-string-run", "8/8/16")]
    [InlineData("first-notes", "8/8/16")]
    [InlineData("diagonal", "15/15")]
    [InlineData("two-string-loop", "24")]
    [InlineData("bursts", "20/36/48")]
    [InlineData("finger-orders", "48/48/48")]
    [InlineData("thumb-and-fingers", "32/48")]
    [InlineData("trill", "32/32")]
    public void Forms_have_their_number_of_notes(string family, string expected) =>
        Assert.Equal(
            expected,
            string.Join('/', Library.OfFamily(family).Select(form => Line(form.Recipe).Notes.Length))
        );

    [Theory]
    [InlineData("groups-of-three", 3, "5")]
    [InlineData("groups-of-three", 4, "15/4")]
    [InlineData("groups-of-four", 3, "6")]
    [InlineData("groups-of-four", 2, "9")]
    [InlineData("groups-of-four", 4, "9/2")]
    [InlineData("groups-of-five", 4, "5")]
    [InlineData("groups-of-six", 3, "7")]
    [InlineData("groups-of-six", 6, "7/2")]
    [InlineData("every-other-note", 2, "5")]
    [InlineData("skipped-fifths", 3, "3")]
    [InlineData("three-string-sweeps", 6, "2")]
    [InlineData("three-string-sweeps", 4, "3")]
    public void Up_and_down_fills_that_many_bars(string family, int notesPerBeat, string bars)
    {
        var recipe = Library.Find(family + "-up-and-down").OrThrow().Recipe;
        var line = Line(recipe with { Rhythm = recipe.Rhythm with { NotesPerBeat = notesPerBeat } });

        Assert.Equal(bars, (line.End / recipe.Rhythm.Meter.Bar).ToString());
    }

    [Fact]
    public void Displaced_fours_are_accented_every_fourth_note_and_meet_the_beat_every_twelfth()
    {
        var line = Realized("displaced-fours-up");
        var accented = line.Notes.Where(note => note.Accent).ToList();
        var onBeat = accented.Where(note => (note.Onset / Fraction.Of(1, 4)).IsWhole);

        Assert.Equal([1, 5, 9, 13, 17, 21, 25, 29, 33], accented.Select(note => note.Index + 1));
        Assert.Equal([1, 13, 25], onBeat.Select(note => note.Index + 1));
    }

    [Fact]
    public void Bursts_hold_their_last_note_and_rest() =>
        Assert.Equal(
            "0+1/16 1/16+1/16 1/8+1/16 3/16+1/16 1/4+1/4 [1/2+1/2]",
            string.Join(' ', Times(Realized("bursts-five")).Split(' ').Take(6))
        );

    private static Line Realized(string id) => Line(Library.Find(id).OrThrow().Recipe);

    private static bool IsOneWay(string id) =>
        id.EndsWith("-up", StringComparison.Ordinal) || id.EndsWith("-down", StringComparison.Ordinal);

    private static bool IsFingerOrder(string id) => id.StartsWith("finger-orders", StringComparison.Ordinal);

    /// <summary>In the straight scale the published bars are bars of four notes, not groups: they say nothing.</summary>
    private static string Lines(string id, string text) =>
        id.StartsWith("straight", StringComparison.Ordinal)
            ? text.Replace(" |", "", StringComparison.Ordinal)
            : text;
}
