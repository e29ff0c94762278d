using CsCheck;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Hands.Variants;
using Passagework.Tests.Architecture;
using Passagework.Tests.Exercises.Ideas;

namespace Passagework.Tests.Hands.Variants;

public class RungsTests
{
    private static readonly GoldenFile Golden = new(
        "tests",
        "Passagework.Tests",
        "Hands",
        "Variants",
        "Golden"
    );

    [Fact]
    public void Ladders_of_the_library_are_as_they_were_read_by_an_eye() =>
        Golden.Holds(
            "library-rungs.txt",
            string.Concat(
                Library
                    .Families.Select(family => Library.OfFamily(family)[0])
                    .Select(exercise => $"{exercise.Id}\n{string.Concat(Of(exercise.Recipe).Select(Told))}")
            )
        );

    [Fact]
    public void Every_rung_is_clearly_slower_than_the_one_before_by_its_own_measure() =>
        RandomIdeas.All.Sample(
            recipe =>
            {
                if (
                    Measurer.Measure(recipe, Player.At(2))
                    is not Outcome<Measurement>.Done { Value: var measured }
                )
                {
                    return true;
                }

                var speeds = Rungs
                    .Of(measured)
                    .All.Select(rung => Measurer.Measure(rung.Recipe, Player.At(2)).OrThrow().Bpm)
                    .ToList();
                return speeds.Zip(speeds.Skip(1)).All(pair => pair.First >= pair.Second * (1 + Rungs.Margin));
            },
            iter: 60
        );

    [Fact]
    public void Rungs_are_in_order_and_the_exercise_itself_is_one() =>
        Assert.All(
            Library.All.Where((_, i) => i % 5 == 0),
            exercise =>
            {
                var kinds = Of(exercise.Recipe).Select(rung => rung.Kind).ToList();
                Assert.Equal(kinds.Distinct().Order(), kinds);
                Assert.Contains(RungKind.AsWritten, kinds);
            }
        );

    private static IEnumerable<Rung> Of(Recipe recipe) => Rungs.Of(recipe, Player.At(2)).OrThrow().All;

    private static string Told(Rung rung) =>
        FormattableString.Invariant($"  {rung.Kind} {rung.Top?.Bpm:0}: {rung.Words}\n");
}
