using System.Diagnostics.CodeAnalysis;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Studio.Features.Settings;

/// <summary>What the page of the settings sends.</summary>
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
    public Theme Theme { get; set; }

    /// <summary>The settings with what was sent; a fault names the control.</summary>
    public Outcome<StudioSettings> Over(StudioSettings settings)
    {
        var (room, teacher) = (Room?.Trim() ?? "", Teacher?.Trim() ?? "");
        if (room.Length is 0 or > LongestName)
        {
            return new Fault("the room has no name that fits", "room", $"1 to {LongestName} letters");
        }

        if (teacher.Length > LongestName)
        {
            return new Fault("the teacher's name is too long", "teacher", $"at most {LongestName} letters");
        }

        if (!Enum.IsDefined(Theme))
        {
            return new Fault("there is no such theme", "paper and ink", "one of the three");
        }

        return PlayerJson
            .ReadLevel(Level ?? "")
            .Then<StudioSettings>(player =>
                settings with
                {
                    Room = room,
                    Teacher = teacher,
                    Level = player.Level,
                    Theme = Theme,
                }
            );
    }
}
