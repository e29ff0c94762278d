using System.CommandLine;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Sound.Performance;

namespace Passagework.Cli;

/// <summary>Options that say how often, how fast and in which manner an exercise is heard.</summary>
internal sealed class TimeOptions
{
    private const double UsualBpm = 80;

    private static readonly WordList<TempoWay> Ways = new(
        "way",
        ("ladder", TempoWay.Ladder),
        ("in-turn", TempoWay.InTurn),
        ("gradual", TempoWay.Gradual)
    );

    private static readonly WordList<PlayingManner> Manners = new(
        "manner",
        ("plain", PlayingManner.Plain),
        ("palm-muted", PlayingManner.PalmMuted),
        ("staccato", PlayingManner.Staccato),
        ("let-ring", PlayingManner.LetRing)
    );

    private readonly Option<string?> _repeat = Arguments.Text(
        "--repeat",
        "Sound, MIDI: how often, 1 to 500.",
        "TIMES"
    );
    private readonly Option<string?> _from = Arguments.Text(
        "--from-tempo",
        "Sound, MIDI: the tempo to begin with; --tempo is the goal.",
        "BPM"
    );
    private readonly Option<string?> _way = Arguments.Text(
        "--tempo-way",
        "Sound, MIDI: from one to the other in a ladder (the default), in-turn or gradual.",
        "WAY"
    );
    private readonly Option<string?> _bars = Arguments.Text(
        "--bars",
        "Sound, MIDI: only these bars, such as 3-4.",
        "BARS"
    );
    private readonly Option<string?> _countIn = Arguments.Text(
        "--count-in",
        "Sound, MIDI: bars before the first note, 0 to 8.",
        "BARS"
    );
    private readonly Option<string?> _manner = Arguments.Text(
        "--manner",
        "Sound: plain (the default), palm-muted, staccato or let-ring.",
        "MANNER"
    );

    public TimeOptions(Command command)
    {
        foreach (var option in new[] { _repeat, _from, _way, _bars, _countIn, _manner })
        {
            command.Options.Add(option);
        }
    }

    private enum TempoWay
    {
        Ladder,
        InTurn,
        Gradual,
    }

    /// <summary>Whether anything was asked that changes when notes are played.</summary>
    public bool AreGiven(ParseResult parsed) =>
        new[] { _repeat, _from, _way, _bars, _countIn }.Any(option => parsed.GetValue(option) is not null);

    /// <summary>The performance that was asked for; a fault names the option.</summary>
    public Outcome<TimedPerformance> Perform(Realization realization, ParseResult parsed) =>
        TempoOf(realization.Line.Recipe.Rhythm, parsed)
            .Then(tempo =>
                Arguments
                    .Word(Manners, _manner, parsed)
                    .Then(manner =>
                        Whole(_countIn, parsed, 0, PerformancePlan.MostCountIn)
                            .Then<PerformancePlan>(countIn => new PerformancePlan
                            {
                                Tempo = tempo,
                                Manner = manner,
                                CountInBars = countIn,
                            })
                    )
            )
            .Then(plan => BarsOf(parsed).Then<PerformancePlan>(bars => plan with { Bars = bars.Range }))
            .Then(plan => Named(Performer.Perform(realization, plan)));

    private Outcome<TimedPerformance> Named(Outcome<TimedPerformance> performed) =>
        performed is Outcome<TimedPerformance>.Refused { Fault: { Where: "bars" } fault }
            ? fault with
            {
                Where = _bars.Name,
            }
            : performed;

    private Outcome<TempoPlan> TempoOf(RhythmPlan rhythm, ParseResult parsed)
    {
        if (!TempoOf(rhythm.TempoBpm ?? UsualBpm, "--tempo").TryGet(out var goal, out var fault))
        {
            return fault;
        }

        return Whole(_repeat, parsed, 1, TempoPlan.MostPasses)
            .Then(times =>
            {
                if (parsed.GetValue(_from) is not { } text)
                {
                    return parsed.GetValue(_way) is null
                        ? TempoPlan.Steady(goal, times)
                        : new Fault("no tempo to begin with", _way.Name, "--from-tempo as well");
                }

                return Number(text, _from.Name)
                    .Then(bpm => TempoOf(bpm, _from.Name))
                    .Then(start =>
                        Arguments.Word(Ways, _way, parsed).Then(way => Planned(way, start, goal, times))
                    );
            });
    }

    private static Outcome<TempoPlan> Planned(TempoWay way, Tempo start, Tempo goal, int times) =>
        way switch
        {
            TempoWay.Ladder => TempoPlan.Ladder(start, goal, times),
            TempoWay.InTurn => TempoPlan.Alternating(start, goal, times),
            _ => TempoPlan.Gradual(start, goal, times),
        };

    private static Outcome<Tempo> TempoOf(double bpm, string where) =>
        bpm >= 10 && Tempo.TryOf(bpm, out var tempo)
            ? tempo
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{bpm} is no tempo"),
                where,
                "10 to 1000 beats a minute"
            );

    private static Outcome<double> Number(string text, string where) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : new Fault($"{Quote.Short(text)} is no tempo", where, "10 to 1000 beats a minute");

    private static Outcome<int> Whole(Option<string?> option, ParseResult parsed, int least, int most) =>
        Arguments.Whole(option, parsed, (least, most), least, "can't be used");

    private Outcome<ChosenBars> BarsOf(ParseResult parsed)
    {
        if (parsed.GetValue(_bars) is not { } text)
        {
            return new ChosenBars(null);
        }

        var ends = text.Split('-');
        return
            ends.Length is 1 or 2
            && Arguments.IsWhole(ends[0], out var first)
            && Arguments.IsWhole(ends[^1], out var last)
            && first >= 1
            && last >= first
            ? new ChosenBars(new BarRange(first - 1, last - first + 1))
            : new Fault($"{Quote.Short(text)} are no bars", _bars.Name, "a bar or two, such as 3-4");
    }

    private sealed record ChosenBars(BarRange? Range);
}
