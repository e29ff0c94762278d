using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Shelf;

namespace Passagework.Studio.Tests.Features.Shelf;

public sealed class ListShelfTests : IAsyncLifetime
{
    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Room.Open();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task A_family_is_one_row_with_its_forms_and_the_engines_figures()
    {
        var shelf = await List(new ShelfWords { Level = "advanced" });
        var row = Library(shelf).Single(row => row.Title == "Groups of five");
        var measured = Measurer
            .Measure(Passagework.Exercises.Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(3))
            .OrThrow();

        Assert.Equal(["rising", "falling", "up and down"], row.Forms.Select(form => form.Words));
        Assert.Equal("groups-of-five-up", row.First.Key.Text);
        Assert.Equal(60 * measured.Ceiling.Range!.Low / 4, row.First.Figures.Top?.Low);
        Assert.Equal(60 * measured.Ceiling.Range!.High / 4, row.First.Figures.Top?.High);
        Assert.Equal(measured.Fit!.Sentence, row.First.Figures.Beat);
        Assert.Contains("<svg", row.First.Figures.FirstBar, StringComparison.Ordinal);
        Assert.Contains("<svg", row.First.Figures.Hands, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_exercise_of_the_library_is_reached_by_some_row()
    {
        var rows = Library(await List(new ShelfWords()));
        var reached = rows.SelectMany(row =>
            row.Forms.Count == 0 ? [row.First.Key.Text] : row.Forms.Select(form => form.Key.Text)
        );

        Assert.Equal(
            Passagework.Exercises.Library.All.Select(one => one.Id).Order(StringComparer.Ordinal),
            reached.Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public async Task The_form_that_the_filters_leave_stands_for_its_family()
    {
        var rows = Library(await List(new ShelfWords { Search = "five falling" }));

        Assert.Equal("groups-of-five-down", Assert.Single(rows).First.Key.Text);
    }

    // Groups of four sixteenths start on every beat; groups of five come home after five bars, too long for a phrase.
    [Fact]
    public async Task A_feel_leaves_the_groups_that_come_out_even_in_it()
    {
        var rows = Library(await List(Filtered("sits-in", "sixteenths"))).Select(row => row.Title).ToList();

        Assert.Contains("Groups of four", rows);
        Assert.DoesNotContain("Groups of five", rows);
    }

    [Fact]
    public async Task A_range_of_top_speeds_leaves_those_within()
    {
        var rows = Library(await List(Filtered("time", "4-to-6")));

        Assert.NotEmpty(rows);
        Assert.All(rows, row => Assert.InRange(row.First.Figures.NotesPerSecond ?? 0, 4, 6));
    }

    [Theory]
    [InlineData("family", "groups-of-fiv", "did you mean 'groups-of-five'?")]
    [InlineData("time", "fast", "one of: below-4")]
    [InlineData("label", "Nobody", "")]
    public async Task What_an_address_asks_that_is_not_there_is_said_and_the_rest_counts(
        string name,
        string key,
        string right
    )
    {
        var shelf = await List(Filtered(name, key) with { Search = "five" });

        Assert.Equal(name == "label", shelf.Fault is null);
        Assert.Contains(right, shelf.Fault?.Right ?? "", StringComparison.Ordinal);
        Assert.Contains(Library(shelf), row => row.Title == "Groups of five");
    }

    [Fact]
    public async Task An_unknown_level_is_said_and_the_usual_one_counts()
    {
        var shelf = await List(new ShelfWords { Level = "legendary" });

        Assert.Contains("'legendary'", shelf.Fault!.What, StringComparison.Ordinal);
        Assert.Equal("intermediate", shelf.Player.LevelText);
    }

    [Fact]
    public async Task Own_ones_are_found_by_labels_and_remarks_and_the_oldest_of_many_are_folded()
    {
        var change = _room.Feature<ChangeExercise>();
        var recipe = Passagework.Exercises.Library.All[0].Recipe;
        OpenedExercise last = null!;
        for (var one = 0; one <= ListShelf.Latest; one++)
            last = Kept(await change.Begin(recipe with { Id = null, Title = $"Number {one}" }, stop: Stop));

        await _room.Feature<AnnotateExercise>().Annotate(last, "for the rainy day", ["Isolde"], Stop);

        var all = (await List(new ShelfWords())).Groups[0];
        Assert.Equal((ListShelf.Latest, 1), (all.Rows.Count, all.More));
        Assert.Equal(ListShelf.Latest + 1, (await List(new ShelfWords { All = true })).Groups[0].Rows.Count);
        Assert.Equal(
            last.Key,
            Assert.Single((await List(new ShelfWords { Search = "rainy" })).Groups).Rows[0].First.Key
        );
        Assert.Equal(
            last.Key,
            Assert.Single((await List(Filtered("label", "Isolde"))).Groups).Rows[0].First.Key
        );
    }

    [Fact]
    public async Task A_row_that_cannot_be_read_says_so_and_hides_nothing()
    {
        await using (var db = await _room.Feature<Store>().Open(Stop))
        {
            db.Exercises.Add(
                new ExerciseRow
                {
                    Id = Guid.NewGuid(),
                    Recipe = "{",
                    Title = "Broken",
                    OnShelf = true,
                }
            );
            await db.SaveChangesAsync(Stop);
        }

        var shelf = await List(new ShelfWords());

        Assert.NotNull(shelf.Groups[0].Rows.Single(row => row.Title == "Broken").First.Figures.Fault);
        Assert.Equal(29, Library(shelf).Count);
    }

    [Theory]
    [InlineData("nonsense")]
    [InlineData("away:groups-of-five-up")]
    [InlineData("copy:no-such-exercise")]
    [InlineData(null)]
    public async Task A_button_that_is_not_there_does_nothing_and_says_so(string? act) =>
        Assert.False((await _room.Feature<ShelfActs>().Do(act, Stop)).TryGet(out _, out _));

    private Task<ShelfPage> List(ShelfWords words) => _room.Feature<ListShelf>().List(words, Stop);

    private static ShelfWords Filtered(string name, string key) =>
        new() { Filters = new Dictionary<string, string?> { [name] = key } };

    private static IReadOnlyList<ShelfRow> Library(ShelfPage shelf) =>
        shelf.Groups.Single(group => group.Heading == "The starting library").Rows;

    private static OpenedExercise Kept(ChangeAnswer answer) =>
        Assert.IsType<ChangeAnswer.Kept>(answer).Exercise;
}
