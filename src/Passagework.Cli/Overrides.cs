using System.CommandLine;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>Options that change an exercise on the way in: another key, layout, rhythm, technique or instrument.</summary>
internal sealed class Overrides
{
    private readonly List<(Option<string?> Option, Func<Recipe, string, Outcome<Recipe>> Change)> _changes =
    [];
    private readonly Option<string[]> _avoid = new("--avoid-finger")
    {
        Description = "A fretting finger, 1 to 4, not to be used; may be given again.",
        HelpName = "FINGER",
    };

    public Overrides(Command command)
    {
        // The order matters: the instrument and the scale first, then how it lies, then how it moves and is played.
        Add("--tuning", "A tuning by name, or notes from the lowest string.", "TUNING", RecipeChange.Tuning);
        Add("--capo", "Fret of the capo.", "FRET", RecipeChange.Capo);
        Add(
            "--scale-length",
            "Scale length in mm, or one for each string from string 1.",
            "MM",
            RecipeChange.ScaleLength
        );
        Add("--scale", "Scale or arpeggio, such as 'minor blues'.", "SCALE", RecipeChange.Scale);
        Add("--root", "Root note, such as C#.", "NOTE", RecipeChange.Root);
        Add(
            "--layout",
            "How the notes lie: " + string.Join(", ", LayoutChoice.Kinds) + ".",
            "KIND",
            RecipeChange.Layout
        );
        Add("--box", "Number of the box.", "NUMBER", RecipeChange.Box);
        Add("--near", "Fret that the layout lies nearest to.", "FRET", RecipeChange.Near);
        Add("--step", "Steps between cells, -7 to 7.", "STEPS", RecipeChange.Step);
        Add("--direction", "up, down, up-and-down or down-and-up.", "DIRECTION", RecipeChange.Direction);
        Add("--meter", "Metre, such as 4/4 or 12/8.", "METER", RecipeChange.Meter);
        Add("--notes-per-beat", "Notes a felt beat, 1 to 8.", "NOTES", RecipeChange.NotesPerBeat);
        Add(
            "--swing",
            "Share of the first of each pair, 0.5 to 0.75 or a fraction.",
            "SHARE",
            RecipeChange.Swing
        );
        Add("--technique", "Picking technique, such as economy.", "TECHNIQUE", RecipeChange.Technique);
        Add("--first", "First stroke: down, up or best.", "STROKE", RecipeChange.First);
        Add("--tempo", "Felt beats a minute.", "BPM", RecipeChange.Tempo);
        foreach (var (option, _) in _changes)
        {
            command.Options.Add(option);
        }

        command.Options.Add(_avoid);
    }

    /// <summary>The exercise with everything changed that was asked for; a fault names the option.</summary>
    public Outcome<Recipe> Apply(Recipe recipe, ParseResult parsed)
    {
        foreach (var (option, change) in _changes)
        {
            if (parsed.GetValue(option) is { } text)
            {
                if (!change(recipe, text).TryGet(out var changed, out var fault))
                {
                    return fault with { Where = option.Name };
                }

                recipe = changed;
            }
        }

        foreach (var finger in parsed.GetValue(_avoid) ?? [])
        {
            if (!RecipeChange.Avoid(recipe, finger).TryGet(out var changed, out var fault))
            {
                return fault with { Where = _avoid.Name };
            }

            recipe = changed;
        }

        return recipe;
    }

    private void Add(
        string name,
        string description,
        string value,
        Func<Recipe, string, Outcome<Recipe>> change
    ) => _changes.Add((Arguments.Text(name, description, value), change));
}
