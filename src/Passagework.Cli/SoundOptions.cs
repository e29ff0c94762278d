using System.CommandLine;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;
using Passagework.Theory;

namespace Passagework.Cli;

/// <summary>Options of sound: the instrument, what sounds with it, and how samples are written.</summary>
internal sealed class SoundOptions
{
    private const string RootWord = "root";

    private static readonly WordList<HeardGuitar> Guitars = new(
        "sound",
        ("clean", HeardGuitar.Clean),
        ("steel", HeardGuitar.Steel),
        ("nylon", HeardGuitar.Nylon),
        ("driven", HeardGuitar.Driven),
        ("none", HeardGuitar.None)
    );

    private static readonly WordList<ClickPattern> Clicks = new(
        "click",
        ("beats", ClickPattern.Beats),
        ("backbeat", ClickPattern.Backbeat),
        ("downbeat", ClickPattern.Downbeat),
        ("offbeat", ClickPattern.Offbeat),
        ("subdivision", ClickPattern.Subdivision),
        ("groups", ClickPattern.Groups),
        ("beats-and-groups", ClickPattern.BeatsAndGroups)
    );

    private static readonly WordList<SampleFormat> Formats = new(
        "number of bits",
        ("16", SampleFormat.Pcm16),
        ("24", SampleFormat.Pcm24),
        ("float", SampleFormat.Float32)
    );

    private static readonly WordList<SampleRate> Rates = new(
        "sample rate",
        ("44100", SampleRate.Disc),
        ("48000", SampleRate.Studio)
    );

    private readonly Option<string?> _sound = Arguments.Text(
        "--sound",
        "Sound: clean (the default), steel, nylon, driven, or none to play along.",
        "SOUND"
    );
    private readonly Option<string?> _click = Arguments.Text(
        "--click",
        "Sound: a click on beats, backbeat, downbeat, offbeat, subdivision, groups or beats-and-groups.",
        "CLICK"
    );
    private readonly Option<string?> _gap = Arguments.Text(
        "--click-gap",
        "Sound: bars clicked and bars silent in turn, such as 2/1.",
        "BARS"
    );
    private readonly Option<string?> _backing = Arguments.Text(
        "--backing",
        "Sound: drums, bass and chords, such as 'Am7 | D7'.",
        "CHORDS"
    );
    private readonly Option<string?> _groove = Arguments.Text(
        "--groove",
        "Sound: backing straight, shuffle, swung or 12/8; by metre and swing where not given.",
        "GROOVE"
    );
    private readonly Option<string?> _drone = Arguments.Text(
        "--drone",
        "Sound: a held note with its fifth, or root for that of the scale.",
        "NOTE"
    );
    private readonly Option<string?> _bits = Arguments.Text(
        "--bits",
        "Sound: 16 (the default), 24 or float.",
        "BITS"
    );
    private readonly Option<string?> _rate = Arguments.Text(
        "--rate",
        "Sound: 44100 (the default) or 48000.",
        "HERTZ"
    );
    private readonly Option<bool> _mono = new("--mono")
    {
        Description = "Sound: one channel in place of two.",
    };

    public SoundOptions(Command command)
    {
        foreach (
            var option in new Option[]
            {
                _sound,
                _click,
                _gap,
                _backing,
                _groove,
                _drone,
                _bits,
                _rate,
                _mono,
            }
        )
        {
            command.Options.Add(option);
        }
    }

    private enum HeardGuitar
    {
        Clean,
        Steel,
        Nylon,
        Driven,
        None,
    }

    private enum SampleRate
    {
        Disc,
        Studio,
    }

    /// <summary>Whether anything is asked for that can be heard in MIDI too.</summary>
    public bool AreGiven(ParseResult parsed) =>
        new[] { _sound, _click, _gap, _backing, _groove, _drone }.Any(option =>
            parsed.GetValue(option) is not null
        );

    /// <summary>The performance as a Standard MIDI File; a fault names the option.</summary>
    public Outcome<Answer> Midi(TimedPerformance performance, ParseResult parsed) =>
        PlanOf(performance.Line.Line.Recipe, parsed)
            .Then(plan => PerformanceMidi.Write(performance, plan))
            .Then<Answer>(bytes => Answer.Of(bytes));

    /// <summary>The performance as a sound file; a fault names the option.</summary>
    public Outcome<Answer> Wav(TimedPerformance performance, ParseResult parsed) =>
        PlanOf(performance.Line.Line.Recipe, parsed)
            .Then(plan => Arrangement.Of(performance, plan))
            .Then(arrangement => arrangement.Mix.Voices.IsEmpty ? Nothing : arrangement)
            .Then(arrangement =>
                Arguments
                    .Word(Formats, _bits, parsed)
                    .Then<Answer>(format => Answer.Of(to => Write(arrangement.Levelled(), format, to)))
            );

    private static Outcome<Arrangement> Nothing =>
        new Fault("nothing is left to be heard", "--sound", "a sound, a click, a backing or a drone");

    private static void Write(Arrangement arrangement, SampleFormat format, Stream to) =>
        new WavFile(arrangement.SampleRate, arrangement.Mix.Channels, format).Write(
            to,
            arrangement.Samples,
            arrangement.Mix.Render
        );

    private Outcome<SoundPlan> PlanOf(Recipe recipe, ParseResult parsed) =>
        Arguments
            .Word(Guitars, _sound, parsed)
            .Then(guitar =>
                Arguments
                    .Word(Rates, _rate, parsed)
                    .Then<SoundPlan>(rate => new SoundPlan
                    {
                        Guitar = Of(guitar),
                        SampleRate = rate == SampleRate.Disc ? 44_100 : 48_000,
                        Channels = parsed.GetValue(_mono) ? 1 : 2,
                    })
            )
            .Then(plan => WithClick(plan, parsed))
            .Then(plan => WithBacking(plan, recipe, parsed))
            .Then(plan => WithDrone(plan, recipe, parsed));

    private static GuitarSound? Of(HeardGuitar guitar) =>
        guitar switch
        {
            HeardGuitar.Clean => GuitarSound.CleanElectric,
            HeardGuitar.Steel => GuitarSound.SteelString,
            HeardGuitar.Nylon => GuitarSound.Nylon,
            HeardGuitar.Driven => GuitarSound.DrivenElectric,
            _ => null,
        };

    private Outcome<SoundPlan> WithClick(SoundPlan plan, ParseResult parsed)
    {
        if (parsed.GetValue(_click) is null)
        {
            return parsed.GetValue(_gap) is null
                ? plan
                : new Fault("no click to leave out", _gap.Name, "--click as well");
        }

        return Arguments
            .Word(Clicks, _click, parsed)
            .Then(pattern =>
                GapOf(parsed)
                    .Then<SoundPlan>(gap =>
                        plan with
                        {
                            Click = new ClickPlan
                            {
                                Pattern = pattern,
                                SoundingBars = gap.Sounding,
                                SilentBars = gap.Silent,
                            },
                        }
                    )
            );
    }

    private Outcome<(int Sounding, int Silent)> GapOf(ParseResult parsed)
    {
        if (parsed.GetValue(_gap) is not { } text)
        {
            return (1, 0);
        }

        var parts = text.Split('/');
        return
            parts.Length == 2
            && Arguments.IsWhole(parts[0], out var sounding)
            && Arguments.IsWhole(parts[1], out var silent)
            && sounding is >= 1 and <= 64
            && silent <= 64
            ? (sounding, silent)
            : new Fault($"{Quote.Short(text)} is no gap", _gap.Name, "bars clicked and silent, such as 2/1");
    }

    private Outcome<SoundPlan> WithBacking(SoundPlan plan, Recipe recipe, ParseResult parsed)
    {
        if (parsed.GetValue(_backing) is not { } text)
        {
            return parsed.GetValue(_groove) is null
                ? plan
                : new Fault("no chords to play", _groove.Name, "--backing as well");
        }

        if (!ChordProgression.Read(text).TryGet(out var chords, out var fault))
        {
            return fault with { Where = $"{_backing.Name} {fault.Where}" };
        }

        var rhythm = recipe.Rhythm;
        var usual = Grooves.Usual(rhythm.Meter, rhythm.Swing);
        return (
            parsed.GetValue(_groove) is null ? usual : Arguments.Word(Grooves.Words, _groove, parsed)
        ).Then(groove =>
            Grooves.Check(groove, rhythm.Meter) is { } wrong
                ? wrong with
                {
                    Where = _groove.Name,
                }
                : (Outcome<SoundPlan>)(plan with { Backing = new BandPlan(chords, groove) })
        );
    }

    private Outcome<SoundPlan> WithDrone(SoundPlan plan, Recipe recipe, ParseResult parsed)
    {
        if (parsed.GetValue(_drone) is not { } text)
        {
            return plan;
        }

        if (text == RootWord && recipe.Notes is { } notes)
        {
            return plan with { Drone = notes.Transposed(recipe.Instrument.Capo).Root };
        }

        return NoteName.TryParse(text, out var root)
            ? plan with
            {
                Drone = root,
            }
            : new Fault(
                $"{Quote.Short(text)} is no note",
                _drone.Name,
                "a note such as A or C#, or root for a scale's"
            );
    }
}
