using Passagework.Engraving.Scores;
using Passagework.Foundation;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>One column of a score.</summary>
public sealed class ColumnTests
{
    [Fact]
    public void Neighbouring_heads_stand_on_both_sides_of_the_stem()
    {
        var column = new Column
        {
            Written = new Passagework.Notation.ScoreNote
            {
                Onset = default,
                Length = Fraction.One,
                Value = default,
            },
            Heads = [.. new[] { -4, -3, -2, 2 }.Select(position => new Head(default, position, default))],
            Bar = 0,
            Name = "chord",
        };

        column.Up = true;
        Assert.Equal([0, 1.06, 0, 0], column.Shifts(0.59), (a, b) => Math.Abs(a - b) < 1e-9);
        column.Up = false;
        Assert.Equal([0, -1.06, 0, 0], column.Shifts(0.59), (a, b) => Math.Abs(a - b) < 1e-9);
    }
}
