using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Which bars are written out after an opening, and how the line goes on between.</summary>
/// <param name="From">First bar, counted from 0.</param>
/// <param name="To">The bar after the last; the first where none are.</param>
/// <param name="Sentence">How to go on.</param>
internal sealed record TurnBars(int From, int To, string Sentence)
{
    /// <summary>The bars in which the line turns round; the last ones where it does not turn.</summary>
    /// <remarks>Never bars of the opening; none are left where the opening reaches so far.</remarks>
    /// <param name="line">The line.</param>
    /// <param name="opening">Bars printed before.</param>
    /// <param name="most">The most bars that are written out, 0 to 2.</param>
    public static TurnBars Of(Line line, int opening, int most)
    {
        var bars = BarCut.Count(line);
        if (line.Recipe.Written is not null)
        {
            return new TurnBars(
                bars,
                bars,
                $"This is {NumberWords.Bars(1, opening)} of {bars}; the rest is not printed here."
            );
        }

        var direction = line.Recipe.Movement.Direction;
        if (TurnOnset(line) is not { } onset)
        {
            var way = direction == Direction.Down ? "down" : "up";
            var from = Math.Max(opening, bars - most);
            return new TurnBars(
                from,
                bars,
                $"Go on {way} in the same way{Out(from, bars, "the end", bars)}."
            );
        }

        var bar = line.Recipe.Rhythm.Meter.Bar;
        var turn = (int)(onset / bar).Floor();
        // A turn on a bar line shows from the bar before it.
        var first = Math.Max(opening, (onset / bar).IsWhole ? turn - 1 : turn);
        var last = Math.Min(bars, Math.Min(Math.Max(turn + 1, first + 1), first + most));
        var (there, back) = direction == Direction.UpAndDown ? ("up", "down") : ("down", "up");
        return new TurnBars(
            first,
            last,
            $"Go on {there} in the same way{Out(first, last, "the turn", turn + 1)}. Then go back {back} in the same way, to the end of bar {bars}."
        );
    }

    private static string Out(int from, int to, string what, int bar) =>
        to > from
            ? $"; {what} is {NumberWords.Bars(from + 1, to)}, written out here"
            : $"; {what} is in bar {bar}";

    // The second half begins with the first note of the middle group; of several times through, the first.
    private static Fraction? TurnOnset(Line line)
    {
        var movement = line.Recipe.Movement;
        if (movement.Direction is Direction.Up or Direction.Down)
        {
            return null;
        }

        var groups = line.Notes.Max(note => note.Group ?? -1) + 1;
        var middle = groups / movement.Repeat / 2;
        return line.Notes.FirstOrDefault(note => note.Group == middle)?.Onset;
    }
}
