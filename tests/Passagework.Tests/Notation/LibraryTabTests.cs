using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Tests.Notation;

/// <summary>The whole starting library through its file and through text tab, in all keys and several tunings.</summary>
public class LibraryTabTests
{
    private static readonly IEnumerable<NoteName> Roots = Enumerable
        .Range(0, 12)
        .Select(pitch => RootNames.Usual(pitch, minor: true));

    // How many of the 82 exercises × 12 keys lie on the neck; the rest need places that the tuning does not have.
    [Theory]
    [InlineData("standard", 970)]
    [InlineData("drop D", 973)]
    [InlineData("open G", 934)]
    [InlineData("seven-string", 973)]
    [InlineData("bass", 751)]
    public void Exercise_comes_back_from_its_file_and_from_its_tab(string name, int expected)
    {
        var tuning = Tuning.TryParse(name, out var known) ? known : Tuning.Standard;
        var compared = 0;
        foreach (var exercise in Library.All)
        {
            foreach (var root in Roots)
            {
                if (Moved(exercise.Recipe, tuning, root) is { } recipe)
                {
                    compared++;
                    AssertSame($"{exercise.Id} in {root}, {name}", recipe);
                }
            }
        }

        Assert.Equal(expected, compared);
    }

    private static void AssertSame(string what, Recipe recipe)
    {
        Assert.Equal(recipe, RecipeJson.Read(RecipeJson.Write(recipe)).OrThrow());
        var played = Realizer.Realize(LineBuilder.Build(recipe).OrThrow(), Player.At(2)).OrThrow();

        var import = TextTab.Read(TextTab.Write(played)).OrThrow();
        var again = Realizer.Realize(LineBuilder.Build(import.Recipe).OrThrow(), Player.At(2)).OrThrow();

        Assert.Empty(import.Warnings);
        Assert.Equal(Text(what, played), Text(what, again));
    }

    private static Recipe? Moved(Recipe recipe, Tuning tuning, NoteName root) =>
        KeyChange
            .ToTuning(recipe, tuning)
            .Then(retuned => KeyChange.ToRoot(retuned, root))
            .Then(moved =>
                LineBuilder
                    .Build(moved)
                    .Then(line => Realizer.Realize(line, Player.At(2)))
                    .Then<Recipe>(_ => moved)
            )
            .TryGet(out var found, out _)
            ? found
            : null;

    private static string Text(string what, Realization played) =>
        what
        + "\n"
        + string.Join(
            '\n',
            played.Notes.Select(note =>
                FormattableString.Invariant(
                    $"{note.Place} {note.Note.Onset} {note.Note.Duration} {note.Finger} {note.Stroke} {note.Note.Accent} {note.Note.Group}"
                )
            )
        );
}
