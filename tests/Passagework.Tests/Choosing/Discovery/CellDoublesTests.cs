using System.Collections.Immutable;
using Passagework.Choosing.Discovery;
using Passagework.Instrument;

namespace Passagework.Tests.Choosing.Discovery;

public class CellDoublesTests
{
    // Paths that share places, visit places twice, are laid twice, or hold one cell only.
    public static TheoryData<string, int> Cases =>
        new()
        {
            { "6:5 6:8 5:5 5:7", 4 },
            { "6:5 6:8 5:5 5:7 6:5 6:8", 3 },
            { "6:5 6:8 6:5 6:8 5:5", 4 },
            { "6:5 5:5 6:8|6:5 5:5 6:8 4:5|6:5 5:5 6:8", 3 },
        };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Doubles_are_those_that_remembered_lines_find(string paths, int length)
    {
        var layouts = paths.Split('|').Select(LayoutOf).ToImmutableArray();
        var plan = Spaces.Plan(Spaces.Question(length, layouts));
        var doubles = new CellDoubles(plan.Variants, plan.Space);

        var seen = new HashSet<string>();
        var found = 0;
        foreach (var (number, line, _) in Spaces.All(plan))
        {
            var (variant, first, offsets) = plan.Numbers.Read(number);
            var isDouble = !seen.Add(line);
            found += isDouble ? 1 : 0;
            Assert.True(first > 0 || isDouble == doubles.Has(variant, offsets), line);
            Assert.Equal(number - first, plan.Numbers.Of(variant, offsets));
        }

        Assert.True(found > 0, "No double to find.");
    }

    private static Layout LayoutOf(string places) =>
        new Layout.Given([
            .. places.Split(' ').Select(text => Place.TryParse(text, out var place) ? place : default),
        ]);
}
