using System.Collections.Immutable;
using Passagework.Engraving.Fonts;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Engraves an exercise as staff and tab.</summary>
/// <example>
/// <c>ScoreEngraver.Engrave(realization, new ScoreOptions { WidthMm = 180 })</c>
/// </example>
public static class ScoreEngraver
{
    /// <summary>
    /// Writes what is played in bars and note values, spaces it, breaks it into systems, justifies and draws them.
    /// </summary>
    /// <returns>The systems, or what cannot be written.</returns>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static Outcome<Score> Engrave(Realization realization, ScoreOptions options) =>
        (OptionRules.Check(options) ?? OptionRules.CheckNotes(options, realization.Notes.Length)) is { } fault
            ? fault
            : WrittenScore
                .Of(realization, options)
                .Then(written =>
                    OptionRules.CheckBars(
                        options,
                        written.NumberOf(0),
                        written.NumberOf(written.Bars.Length - 1)
                    )
                        is { } wrong
                        ? wrong
                        : Engrave(realization, written, options)
                );

    private static Outcome<Score> Engrave(Realization realization, WrittenScore written, ScoreOptions options)
    {
        var instrument = realization.Line.Recipe.Instrument;
        var meter = realization.Line.Recipe.Rhythm.Meter;
        var sizes = new Sizes(options.StaffMm, instrument.Tuning.StringCount, options.Letters);
        var ink = new ColumnInk(options, sizes);
        var bass = ScoreClef.IsBass(instrument.Tuning);
        var planner = new SystemPlanner(
            ink,
            new BarEdges(options, written),
            new PrefixWriter(options, sizes, written.Key, meter, bass),
            options,
            meter
        );
        var piece = new ScorePiece(realization, written, options, sizes, ink);
        return planner
            .Plan(ColumnWriter.Write(realization, written, options))
            .Then<Score>(plans => new Score(Drawn(new Queue<SystemPlan>(plans), piece), sizes.SpaceMm));
    }

    // A plan is forgotten when it is drawn, so that a long piece does not hold all of them besides all its marks.
    private static ImmutableArray<ScoreSystem> Drawn(Queue<SystemPlan> plans, ScorePiece piece)
    {
        var systems = ImmutableArray.CreateBuilder<ScoreSystem>(plans.Count);
        while (plans.TryDequeue(out var plan))
        {
            systems.Add(SystemWriter.Write(plan, piece));
        }

        return systems.MoveToImmutable();
    }
}
