using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Demo;

/// <summary>What comes with the first start: the invented Saltmarsh Guitar Room, written for this program.</summary>
internal static class DemoContent
{
    /// <summary>Name of the room.</summary>
    public const string Room = "Saltmarsh Guitar Room";

    /// <summary>Name of its teacher.</summary>
    public const string Teacher = "Hedda Quill";

    /// <summary>Her exercises, the latest last.</summary>
    public static IReadOnlyList<DemoExercise> Exercises { get; } =
    [
        new("thirds-begun", OnShelf: false, [], ""),
        new(
            "three-low-strings",
            OnShelf: true,
            ["Bram", "first weeks"],
            "Bram: three strings are plenty. Only when the third note of each group is no shorter, one string more."
        ),
        new(
            "three-and-a-rest",
            OnShelf: true,
            ["Tomas", "timing"],
            "Tomas: say the rest aloud. He starts the next group early because the hand is ready, not because the beat is."
        ),
        new(
            "sweeps-through-d-minor",
            OnShelf: true,
            ["Kofi", "sweeps"],
            "Kofi: the turn at the top comes early. Half the tempo, and the stroke waits on the string."
        ),
        new(
            "fives-at-fret-nine",
            OnShelf: true,
            ["Yuna", "reach"],
            "Yuna: from fret 9 to 12 is 16 mm less than from 5 to 8. Down the neck a fret a week, as long as it stays easy."
        ),
        new(
            "falling-fours-in-e-minor",
            OnShelf: true,
            ["Isolde", "Low Water"],
            "Isolde: for the run in bar 12. Four to the beat at 48 before it is four at 66."
        ),
    ];

    /// <summary>Her students' pieces, by file name, the latest last.</summary>
    public static IReadOnlyList<string> Pieces { get; } = ["two-gulls", "kiln-lane", "low-water"];

    /// <summary>The idea in one of the files.</summary>
    public static Recipe Read(string name)
    {
        using var stream =
            typeof(DemoContent).Assembly.GetManifestResourceStream($"Features/Demo/content/{name}.json")
            ?? throw new System.Diagnostics.UnreachableException($"There is no {name} in the demo.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return RecipeJson.Read(bytes.ToArray()).OrThrow() with { Id = null };
    }
}

/// <summary>An exercise of the demo.</summary>
/// <param name="Name">Name of its file.</param>
/// <param name="OnShelf">Whether it stands on the shelf, or was only begun.</param>
/// <param name="Labels">Labels.</param>
/// <param name="Notes">The teacher's remarks.</param>
internal sealed record DemoExercise(string Name, bool OnShelf, IReadOnlyList<string> Labels, string Notes);
