using System.Collections.Concurrent;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Studio.Features.Shelf;

/// <summary>Measures each exercise once for each level, and remembers a bounded number of answers.</summary>
internal sealed class ShelfMeasures
{
    // About the library at five levels and two thousand own ones.
    private const int MostKept = 2500;
    private readonly ConcurrentDictionary<(string Idea, double Level), ShelfFigures> _known = [];

    /// <summary>The figures of an idea.</summary>
    /// <param name="idea">What tells it from every other: its id in the library, or its text.</param>
    /// <param name="recipe">The idea.</param>
    /// <param name="player">For whom; a player at a level, with the hands of that level.</param>
    public ShelfFigures Of(string idea, Recipe recipe, Player player)
    {
        if (_known.TryGetValue((idea, player.Level), out var known))
        {
            return known;
        }

        var figures = Measurer.Measure(recipe, player).TryGet(out var measured, out var fault)
            ? ShelfFigures.Of(measured)
            : new ShelfFigures { Fault = fault.What };
        if (_known.Count >= MostKept)
            _known.Clear();

        return _known.GetOrAdd((idea, player.Level), figures);
    }
}
