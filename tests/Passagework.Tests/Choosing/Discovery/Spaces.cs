using System.Collections.Immutable;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Tests.Choosing.Measures;

namespace Passagework.Tests.Choosing.Discovery;

/// <summary>Small searches for the tests of discovery.</summary>
internal static class Spaces
{
    /// <summary>A question over some layouts of A minor pentatonic, for an intermediate player and the built-in pieces.</summary>
    public static DiscoveryQuestion Question(int length, params ImmutableArray<Layout> layouts) =>
        new()
        {
            Space = CellSpace.Usual(length) with { Layouts = layouts },
            Player = Player.At(2),
            Music = Music.BuiltIn,
        };

    /// <summary>The layout of A minor pentatonic of a kind.</summary>
    public static Layout OfKind(string kind) =>
        LayoutChoice.Take(Library.Find("straight-up").OrThrow().Recipe, kind).OrThrow().Layout!;

    /// <summary>The plan of a question.</summary>
    public static SearchPlan Plan(DiscoveryQuestion question)
    {
        var judge = new CellJudge(question.Player, question.Music);
        return new SearchPlan(question, CellVariant.AllOf(question.Space, judge).OrThrow(), null, default);
    }

    /// <summary>Every candidate in visiting order with what is played, its first stroke and what is measured; those too wide left out.</summary>
    public static List<(long Number, string Line, CellTake Take)> All(SearchPlan plan)
    {
        var found = new List<(long Number, string Line, CellTake Take)>();
        var all = plan.Variants.Length * plan.Numbers.Cells * plan.Numbers.Firsts;
        var measurers = Array.ConvertAll(plan.Variants, variant => variant.NewMeasurer());
        for (var number = 0L; number < all; number++)
        {
            var (variant, first, offsets) = plan.Numbers.Read(number);
            if (offsets.Max() - offsets.Min() < plan.Variants[variant].Path.Length)
            {
                Assert.True(measurers[variant].Measure(offsets));
                var line = $"{Places(plan, variant, offsets)} {first}";
                found.Add((number, line, measurers[variant].Takes[first]));
            }
        }

        return found;
    }

    private static string Places(SearchPlan plan, int variant, int[] offsets)
    {
        var recipe = plan.Space.RecipeOf(
            plan.Variants[variant].Layout,
            plan.Variants[variant].Direction,
            FirstStroke.Down,
            offsets
        );
        return string.Join(' ', LineBuilder.Build(recipe).OrThrow().Notes.Select(note => note.Place));
    }
}
