using System.Globalization;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Studio.Features.Settings;

/// <summary>Settings as text by name, as the database keeps them; what is missing or cannot be read has its usual value.</summary>
internal static class SettingsText
{
    /// <summary>Every setting with its text.</summary>
    public static IEnumerable<(string Name, string Value)> Written(StudioSettings settings) =>
        [
            (nameof(settings.Room), settings.Room),
            (nameof(settings.Teacher), settings.Teacher),
            (nameof(settings.Level), settings.Level.ToString(CultureInfo.InvariantCulture)),
            (nameof(settings.Theme), settings.Theme.ToString()),
            (nameof(settings.Style.Boxes), Text(settings.Style.Boxes.NumberOfRootBox)),
            (nameof(settings.Style.Notes), settings.Style.Notes.ToString()),
            (nameof(settings.Style.Counting), settings.Style.Counting.ToString()),
            (PlanStart, Text(settings.Style.Plan.Start)),
            (PlanGoal, Text(settings.Style.Plan.Goal)),
            (nameof(settings.Technique), settings.Technique.ToString()),
            (nameof(settings.First), settings.First.ToString()),
            (nameof(settings.Guitar), settings.Guitar.ToString()),
            (nameof(settings.IsNewcomer), settings.IsNewcomer.ToString()),
            (nameof(settings.DemoWasInstalled), settings.DemoWasInstalled.ToString()),
        ];

    /// <summary>The settings of the texts.</summary>
    public static StudioSettings Read(Func<string, string?> saved)
    {
        var usual = new StudioSettings();
        return new StudioSettings
        {
            Room = saved(nameof(usual.Room)) ?? usual.Room,
            Teacher = saved(nameof(usual.Teacher)) ?? usual.Teacher,
            Level = Level(saved(nameof(usual.Level))) ?? usual.Level,
            Theme = Word(saved(nameof(usual.Theme)), usual.Theme),
            Style = StyleOf(saved),
            Technique = Word(saved(nameof(usual.Technique)), usual.Technique),
            First = Word(saved(nameof(usual.First)), usual.First),
            Guitar = Word(saved(nameof(usual.Guitar)), usual.Guitar),
            IsNewcomer = Flag(saved(nameof(usual.IsNewcomer)), usual.IsNewcomer),
            DemoWasInstalled = Flag(saved(nameof(usual.DemoWasInstalled)), usual.DemoWasInstalled),
        };
    }

    private const string PlanStart = "PlanStart";
    private const string PlanGoal = "PlanGoal";

    private static RoomStyle StyleOf(Func<string, string?> saved)
    {
        var usual = default(RoomStyle);
        var boxes = Whole(saved(nameof(usual.Boxes))) ?? usual.Boxes.NumberOfRootBox;
        var plan = PlanShares.Of(
            Whole(saved(PlanStart)) ?? usual.Plan.Start,
            Whole(saved(PlanGoal)) ?? usual.Plan.Goal
        );
        return new RoomStyle
        {
            Boxes = BoxNumbering.WithRootBox(Math.Clamp(boxes, 1, SettingsWords.MostBoxes)),
            Notes = Word(saved(nameof(usual.Notes)), usual.Notes),
            Counting = Word(saved(nameof(usual.Counting)), usual.Counting),
            Plan = plan.TryGet(out var shares, out _) ? shares : usual.Plan,
        };
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static int? Whole(string? text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    private static double? Level(string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var level)
        && level is >= 0 and <= 4
            ? level
            : null;

    private static T Word<T>(string? text, T usual)
        where T : struct, Enum => Enum.TryParse<T>(text, out var word) && Enum.IsDefined(word) ? word : usual;

    private static bool Flag(string? text, bool usual) => bool.TryParse(text, out var flag) ? flag : usual;
}
