using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands.Explaining;

/// <summary>Where an exercise tops out for one player.</summary>
/// <param name="Name">The level, or whose hands they are.</param>
/// <param name="Ceiling">The three ceilings in notes a second, with the range of the least.</param>
/// <param name="NotesPerBeat">Notes to the felt beat.</param>
public sealed record LevelRow(string Name, Ceiling Ceiling, int NotesPerBeat)
{
    /// <summary>The least in felt beats a minute; null where no hand is asked anything.</summary>
    public TopTempo? Top => TopTempo.Of(Ceiling, NotesPerBeat);
}

/// <summary>Where an exercise tops out, player by player.</summary>
/// <param name="Rows">In the order given.</param>
/// <param name="Change">Where the limiting hand changes from row to row, in a sentence; null where one hand limits all.</param>
public sealed record LevelTable(ImmutableArray<LevelRow> Rows, string? Change)
{
    /// <summary>The five levels, for hands like a player's.</summary>
    /// <param name="recipe">The exercise.</param>
    /// <param name="hands">Gives hand size, avoided fingers and clearing stroke; its level is left aside.</param>
    public static Outcome<LevelTable> Of(Recipe recipe, Player hands) =>
        Of(recipe, [.. Player.LevelNames.Select((name, level) => (name, hands.MovedTo(level)))]);

    /// <summary>Any players by name; the fault of the first who can't play it.</summary>
    public static Outcome<LevelTable> Of(
        Recipe recipe,
        IReadOnlyList<(string Name, Player Player)> players
    ) =>
        LineBuilder
            .Build(recipe)
            .Then<LevelTable>(line =>
            {
                // Each player's hands are planned for themselves; a page waits for all of them.
                var planned = new Outcome<LevelRow>[players.Count];
                Parallel.For(0, players.Count, i => planned[i] = RowOf(line, players[i]));
                var rows = ImmutableArray.CreateBuilder<LevelRow>(players.Count);
                foreach (var outcome in planned)
                {
                    if (!outcome.TryGet(out var row, out var fault))
                    {
                        return fault;
                    }

                    rows.Add(row);
                }

                return new LevelTable(rows.ToImmutable(), ChangeOf(rows));
            });

    private static Outcome<LevelRow> RowOf(Line line, (string Name, Player Player) one) =>
        Realizer
            .Plan(line, one.Player)
            .Then<LevelRow>(planned => new LevelRow(
                one.Name,
                CeilingFinder.Of(planned.Demands, one.Player.Parameters),
                line.Recipe.Rhythm.NotesPerBeat
            ));

    private static string? ChangeOf(IReadOnlyList<LevelRow> rows)
    {
        var limited = rows.Where(row => row.Ceiling.LimitedBy is not null).ToList();
        var parts = new List<string>();
        string? last = null;
        for (var i = 1; i < limited.Count; i++)
        {
            if (limited[i].Ceiling.LimitedBy != limited[i - 1].Ceiling.LimitedBy)
            {
                parts.Add($"from {limited[i].Name} on it is {Whose(limited[i])}");
                last ??= limited[i - 1].Name;
            }
        }

        return parts.Count == 0
            ? null
            : $"Up to {last} {Whose(limited[0])} sets the pace; {NumberWords.List(parts)}.";
    }

    private static string Whose(LevelRow row) =>
        row.Ceiling.LimitedBy switch
        {
            Limit.Fretting => "the fretting hand",
            Limit.Picking => "the picking hand",
            _ => "the meeting of both hands",
        };
}
