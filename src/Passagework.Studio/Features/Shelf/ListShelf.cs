using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Shelf;

/// <summary>Lists the shelf: own exercises, those begun, and the starting library by families.</summary>
internal sealed class ListShelf(ReadSettings settings, OwnExercises own, ShelfMeasures measures)
{
    /// <summary>Own ones that are listed when not all are asked for.</summary>
    public const int Latest = 40;

    /// <summary>The shelf for an address; what of it can't be read is said, and the rest counts.</summary>
    public async Task<ShelfPage> List(ShelfWords asked, CancellationToken stop = default)
    {
        var faults = new List<Fault>();
        var usual = (await settings.Read(stop)).Player;
        var player = LevelOf(asked.Level, usual, faults);
        var mine = await own.Read(player, stop);
        var filters = ShelfFilters
            .Of(mine.SelectMany(one => one.Exercise.Labels))
            .Select(filter => (Filter: filter, Chosen: ChosenOf(filter, asked, faults)))
            .ToList();
        var words = asked.Search?.Split(' ', StringSplitOptions.RemoveEmptyEntries) ?? [];
        bool Stays(ShelfExercise exercise) =>
            exercise.Holds(words) && filters.TrueForAll(filter => filter.Chosen?.Holds(exercise) != false);

        var most = asked.All ? int.MaxValue : Latest;
        ShelfGroup[] groups =
        [
            Group("Your own", mine.Where(one => one.OnShelf), Stays, most),
            Group("Begun, not yet on the shelf", mine.Where(one => !one.OnShelf), Stays, most),
            new("The starting library", [.. Families(player, Stays)]),
        ];
        return new ShelfPage
        {
            Player = player,
            Search = string.Join(' ', words),
            Filters = filters,
            Groups = [.. groups.Where(group => group.Rows.Count > 0)],
            ThrownAway = await own.ThrownAway(stop),
            Fault = faults.FirstOrDefault(),
        };
    }

    private static Player LevelOf(string? text, Player usual, List<Fault> faults)
    {
        if (string.IsNullOrEmpty(text))
        {
            return usual;
        }

        if (PlayerJson.ReadLevel(text).TryGet(out var player, out var fault))
        {
            return player;
        }

        faults.Add(fault);
        return usual;
    }

    private static ShelfChoice? ChosenOf(ShelfFilter filter, ShelfWords asked, List<Fault> faults)
    {
        if (filter.Find(asked.Filters.GetValueOrDefault(filter.Name)).TryGet(out var chosen, out var fault))
        {
            return chosen;
        }

        if (fault is not null)
            faults.Add(fault);

        return null;
    }

    private static ShelfGroup Group(
        string heading,
        IEnumerable<(ShelfExercise Exercise, bool OnShelf)> some,
        Func<ShelfExercise, bool> stays,
        int most
    )
    {
        var rows = some.Where(one => stays(one.Exercise))
            .Select(one => new ShelfRow(one.Exercise.Title, one.Exercise, []))
            .ToList();
        return new ShelfGroup(heading, [.. rows.Take(most)], Math.Max(0, rows.Count - most));
    }

    private IEnumerable<ShelfRow> Families(Player player, Func<ShelfExercise, bool> stays) =>
        Library
            .All.AsParallel()
            .AsOrdered()
            .Select(one => Measured(one, player))
            .AsSequential()
            .Where(stays)
            .GroupBy(exercise => exercise.Family)
            .Select(forms => RowOf(ShelfFilters.TitleOf(forms.Key), [.. forms]));

    private ShelfExercise Measured(LibraryExercise one, Player player) =>
        new()
        {
            Key = new ExerciseKey(one.Id),
            Title = ExerciseReading.TitleOf(one.Recipe),
            Recipe = one.Recipe,
            Figures = measures.Of(one.Id, one.Recipe, player),
            Family = one.Family,
        };

    private static ShelfRow RowOf(string family, IReadOnlyList<ShelfExercise> forms) =>
        forms.Count == 1
            ? new ShelfRow(forms[0].Title, forms[0], [])
            : new ShelfRow(
                family,
                forms[0],
                [.. forms.Select(form => new ShelfForm(form.Key, WordsOf(form.Title, family)))]
            );

    // "Groups of five, rising" among "Groups of five" is the rising one.
    private static string WordsOf(string title, string family) =>
        title.StartsWith(family + ", ", StringComparison.Ordinal) ? title[(family.Length + 2)..] : title;
}
