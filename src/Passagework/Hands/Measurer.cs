using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Hands;

/// <summary>Measures an exercise for a player.</summary>
/// <example>
/// <c>Measurer.Measure(recipe, Player.At(2))</c>
/// </example>
public static class Measurer
{
    /// <summary>
    /// Line, fingering, strokes, demands, ceilings, balance and fit against the beat. Refused when the recipe can't be
    /// laid out or no hand can play it.
    /// </summary>
    public static Outcome<Measurement> Measure(Recipe recipe, Player player) =>
        LineBuilder.Build(recipe).Then(line => Measure(line, player));

    /// <summary>The same for a line that is already built.</summary>
    public static Outcome<Measurement> Measure(Line line, Player player) =>
        Realizer
            .Plan(line, player)
            .Then<Measurement>(planned => Of(planned, ScaleReference.For(line.Recipe, player), player));

    /// <summary>The same for a line with both hands planned.</summary>
    internal static Measurement Of(PlannedLine planned, ScaleReference scale, Player player)
    {
        var basis = player.Parameters.Basis;
        var demands = planned.Demands;
        var fretting = demands.Fretting.Milliseconds(basis);
        var picking = demands.Picking.Milliseconds(basis);
        var ceiling = CeilingFinder.Of(demands, player.Parameters);
        var recipe = planned.Line.Recipe;
        return new Measurement(planned)
        {
            Player = player,
            Realization = planned.Realization,
            Demands = Moves(demands, basis, fretting, picking),
            Picking = PickingCounts.Of(planned, Geometry.Of(recipe.Instrument).PickingSpacingMm),
            Fretting = FrettingCounts.Of(planned.Fingering),
            Ceiling = ceiling,
            Balance = Balance.Of(fretting, picking),
            ScaleFingers = scale.EffectiveFingers,
            RatioToScale = ceiling.Least / scale.LeastCeiling,
            Fit = GroupFit.Of(LineGroups.Of(planned.Line), recipe.Rhythm.Meter, recipe.Rhythm.NotesPerBeat),
        };
    }

    private static ImmutableArray<MoveDemand> Moves(
        LineDemands demands,
        double[] basis,
        double[] fretting,
        double[] picking
    )
    {
        var together = demands.Together.Milliseconds(basis);
        var (frettingAssumed, pickingAssumed) = (
            demands.Fretting.AreAssumed(basis),
            demands.Picking.AreAssumed(basis)
        );
        var moves = ImmutableArray.CreateBuilder<MoveDemand>(fretting.Length + 1);
        moves.Add(default);
        for (var k = 0; k < fretting.Length; k++)
        {
            moves.Add(
                new MoveDemand(fretting[k], picking[k], together[k])
                {
                    FrettingIsAssumed = fretting[k] > 0 && frettingAssumed[k],
                    PickingIsAssumed = picking[k] > 0 && pickingAssumed[k],
                }
            );
        }

        return moves.MoveToImmutable();
    }
}
