using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Something to choose, before it is measured.</summary>
/// <param name="Id">Its name in files and on the command line.</param>
/// <param name="Title">What people call it.</param>
/// <param name="Family">The family whose forms count as one; its own id where there is none.</param>
/// <param name="Forms">The ways of playing it that are measured; the figures are their means.</param>
public sealed record CandidateSource(string Id, string Title, string Family, ImmutableArray<Recipe> Forms)
{
    /// <summary>What it is called inside a sentence: a title of our own without its capital, any other in quotes.</summary>
    public string Mention =>
        Library.OfFamily(Family).IsEmpty ? $"'{Title}'" : char.ToLowerInvariant(Title[0]) + Title[1..];

    private const string UsualForm = "up-and-down";

    /// <summary>
    /// A family of the library: its up-and-down form (all its forms where it has none), each with a down-stroke and with an
    /// up-stroke first, under one technique.
    /// </summary>
    public static Outcome<CandidateSource> OfFamily(string family, Technique technique = Technique.Alternate)
    {
        var forms = Library.OfFamily(family);
        if (forms.IsEmpty)
        {
            return new Fault(
                $"no family {Quote.Short(family)} in the library",
                Right: NearestWord.Hint(family, Library.Families)
            );
        }

        var usual = forms.Where(form => form.Form == UsualForm).ToImmutableArray();
        var measured = usual.IsEmpty ? forms : usual;
        return new CandidateSource(
            family,
            TitleOf(family, measured),
            family,
            [.. measured.SelectMany(form => BothStrokes(form.Recipe, technique))]
        );
    }

    /// <summary>One exercise as it is, under the technique asked for, with the first stroke it is written with.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="recipe">The idea.</param>
    /// <param name="technique">The one technique of all that are compared.</param>
    public static CandidateSource OfForm(
        string id,
        Recipe recipe,
        Technique technique = Technique.Alternate
    ) =>
        new(
            id,
            string.IsNullOrWhiteSpace(recipe.Title) ? id : recipe.Title,
            Library.All.FirstOrDefault(known => known.Id == id)?.Family ?? id,
            [With(recipe, technique, recipe.Picking.First)]
        );

    /// <summary>The same with every form changed, such as to another key; refused when one can't be.</summary>
    public Outcome<CandidateSource> Changed(Func<Recipe, Outcome<Recipe>> change)
    {
        var forms = ImmutableArray.CreateBuilder<Recipe>(Forms.Length);
        foreach (var form in Forms)
        {
            if (!change(form).TryGet(out var changed, out var fault))
            {
                return fault;
            }

            if (!forms.Contains(changed))
            {
                forms.Add(changed);
            }
        }

        return this with
        {
            Forms = forms.ToImmutable(),
        };
    }

    private static IEnumerable<Recipe> BothStrokes(Recipe recipe, Technique technique) =>
        [With(recipe, technique, FirstStroke.Down), With(recipe, technique, FirstStroke.Up)];

    // Strokes fixed note by note stay only where nothing else is asked of the picking hand.
    private static Recipe With(Recipe recipe, Technique technique, FirstStroke first)
    {
        var plan = recipe.Picking with { Technique = technique, First = first };
        return plan == recipe.Picking ? recipe : RecipeChange.Picked(recipe, plan);
    }

    // "Groups of five, up and down" is the family "Groups of five".
    private static string TitleOf(string family, ImmutableArray<LibraryExercise> forms)
    {
        var title = forms[0].Recipe.Title ?? "";
        var comma = title.IndexOf(',', StringComparison.Ordinal);
        var isShared =
            comma > 0
            && forms.All(form =>
                form.Recipe.Title?.StartsWith(title[..comma], StringComparison.Ordinal) == true
            );
        return isShared ? title[..comma] : NumberWords.Sentence(family.Replace('-', ' '));
    }
}
