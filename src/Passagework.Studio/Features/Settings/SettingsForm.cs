using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Studio.Features.Settings;

/// <summary>What the page of the settings sends; a field that was not sent changes nothing.</summary>
[SuppressMessage("Design", "CA1515", Justification = "Filled by the framework.")]
public sealed class SettingsForm
{
    /// <summary>The longest name of a room or a teacher.</summary>
    public const int LongestName = 60;

    /// <summary>Name of the room.</summary>
    public string? Room { get; set; }

    /// <summary>Name of the teacher.</summary>
    public string? Teacher { get; set; }

    /// <summary>Name of a level, or a number from 0 to 4.</summary>
    public string? Level { get; set; }

    /// <summary>The theme.</summary>
    public string? Theme { get; set; }

    /// <summary>Number of the box that begins on the root.</summary>
    public string? Boxes { get; set; }

    /// <summary>How notes are named.</summary>
    public string? Notes { get; set; }

    /// <summary>How beats are counted.</summary>
    public string? Counting { get; set; }

    /// <summary>Where plans start, of 100.</summary>
    public string? PlanStart { get; set; }

    /// <summary>Where plans aim, of 100.</summary>
    public string? PlanGoal { get; set; }

    /// <summary>Technique of new exercises.</summary>
    public string? Technique { get; set; }

    /// <summary>First stroke of new exercises.</summary>
    public string? First { get; set; }

    /// <summary>Sound of the play line.</summary>
    public string? Guitar { get; set; }

    /// <summary>The settings with what was sent; a fault names the control.</summary>
    public Outcome<StudioSettings> Over(StudioSettings settings) =>
        Named(settings).Then(Called).Then(Planned).Then(Begun);

    private Outcome<StudioSettings> Named(StudioSettings settings)
    {
        var (room, teacher) = (Room?.Trim() ?? settings.Room, Teacher?.Trim() ?? settings.Teacher);
        if (room.Length is 0 or > LongestName)
        {
            return new Fault("the room has no name that fits", "room", $"1 to {LongestName} letters");
        }

        if (teacher.Length > LongestName)
        {
            return new Fault("the teacher's name is too long", "teacher", $"at most {LongestName} letters");
        }

        return Chosen(Theme, settings.Theme, "paper and ink")
            .Then<StudioSettings>(theme => settings with { Room = room, Teacher = teacher, Theme = theme });
    }

    private Outcome<StudioSettings> Called(StudioSettings settings) =>
        Whole(Boxes, settings.Style.Boxes.NumberOfRootBox, (1, SettingsWords.MostBoxes), "box on the root")
            .Then(box =>
                Chosen(Notes, settings.Style.Notes, "names of notes")
                    .Then(notes =>
                        Chosen(Counting, settings.Style.Counting, "counting")
                            .Then<StudioSettings>(counting =>
                                settings with
                                {
                                    Style = settings.Style with
                                    {
                                        Boxes = BoxNumbering.WithRootBox(box),
                                        Notes = notes,
                                        Counting = counting,
                                    },
                                }
                            )
                    )
            );

    private Outcome<StudioSettings> Planned(StudioSettings settings)
    {
        var (least, most, was) = (PlanShares.Least, PlanShares.Most, settings.Style.Plan);
        return Whole(PlanStart, was.Start, (least, most), "start of a plan")
            .Then(start =>
                Whole(PlanGoal, was.Goal, (least, most), "goal of a plan")
                    .Then(goal => PlanShares.Of(start, goal))
            )
            .Then<StudioSettings>(plan => settings with { Style = settings.Style with { Plan = plan } });
    }

    private Outcome<StudioSettings> Begun(StudioSettings settings) =>
        (Level is null ? settings.Player : PlayerJson.ReadLevel(Level)).Then(player =>
            Chosen(Technique, settings.Technique, "technique")
                .Then(technique =>
                    Chosen(First, settings.First, "first stroke")
                        .Then(first =>
                            Chosen(Guitar, settings.Guitar, "sound")
                                .Then<StudioSettings>(guitar =>
                                    settings with
                                    {
                                        Level = player.Level,
                                        Technique = technique,
                                        First = first,
                                        Guitar = guitar,
                                    }
                                )
                        )
                )
        );

    private static Outcome<T> Chosen<T>(string? sent, T now, string where)
        where T : struct, Enum
    {
        if (sent is null)
        {
            return now;
        }

        return Enum.TryParse<T>(sent, out var value) && Enum.IsDefined(value)
            ? value
            : new Fault("there is no such choice", where, "one of the list");
    }

    private static Outcome<int> Whole(string? sent, int now, (int Least, int Most) limits, string where)
    {
        if (sent is null)
        {
            return now;
        }

        return
            int.TryParse(sent, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number >= limits.Least
            && number <= limits.Most
            ? number
            : new Fault(
                "the number is out of range",
                where,
                FormattableString.Invariant($"a whole number from {limits.Least} to {limits.Most}")
            );
    }
}
