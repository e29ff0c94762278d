using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Choosing.Measures;

/// <summary>One way in which an exercise is played, measured on everything that needs no music.</summary>
public sealed record MeasuredForm
{
    /// <summary>What it asks of the player.</summary>
    public required Measurement Measured { get; init; }

    /// <summary>Its ceiling for a beginner's hands.</summary>
    public required Ceiling First { get; init; }

    /// <summary>Its ceiling for an expert's hands.</summary>
    public required Ceiling Last { get; init; }

    /// <summary>Even load on hands and fingers.</summary>
    public required Figure EvenLoad { get; init; }

    /// <summary>What is played.</summary>
    public Realization Realization => Measured.Realization;

    /// <summary>Room for speed that is left; missing where no hand is asked anything.</summary>
    public Figure StayingPower { get; private init; } = Figure.Missing;

    /// <summary>Measures one form for a player; refused when no hand can play it.</summary>
    public static Outcome<MeasuredForm> Of(Recipe recipe, PlayerLevels levels) =>
        LineBuilder.Build(recipe).Then(line => Of(line, levels));

    private static Outcome<MeasuredForm> Of(Line line, PlayerLevels levels) =>
        Realizer
            .Plan(line, levels.Player)
            .Then(planned =>
                CeilingFor(line, levels.First)
                    .Then(first =>
                        CeilingFor(line, levels.Last)
                            .Then<MeasuredForm>(last => Of(planned, levels.Player, (first, last)))
                    )
            );

    private static Outcome<Ceiling> CeilingFor(Line line, Player player) =>
        Realizer
            .Plan(line, player)
            .Then<Ceiling>(planned => CeilingFinder.Of(planned.Demands, player.Parameters));

    private static MeasuredForm Of(PlannedLine planned, Player player, (Ceiling First, Ceiling Last) ends)
    {
        var scale = ScaleReference.For(planned.Line.Recipe, player);
        var measured = Measurer.Of(planned, scale, player);
        var draws = EvenLoadDraws.Of(planned, player.Parameters.Draws, measured.Evenness);
        return new MeasuredForm
        {
            Measured = measured,
            First = ends.First,
            Last = ends.Last,
            EvenLoad = new Figure(measured.EvenLoad, [.. draws]),
            StayingPower = Staying(ends.First, ends.Last),
        };
    }

    private static Figure Staying(Ceiling first, Ceiling last) =>
        first is { Least: { } slow, Range: { } slowRange }
        && last is { Least: { } fast, Range: { } fastRange }
            ? new Figure(
                Measures.StayingPower.Of(slow, fast),
                [.. slowRange.Draws.Zip(fastRange.Draws, (v, w) => Measures.StayingPower.Of(v, w))]
            )
            : Figure.Missing;
}
