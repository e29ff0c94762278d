using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>What a teacher fixes about one note, and frees again; on ideas and written lines alike.</summary>
/// <example>
/// <c>NoteLocks.Set(recipe, new Lock(5, Finger: 4))</c>
/// </example>
public static class NoteLocks
{
    /// <summary>
    /// The recipe with a note's finger, string, position or stroke fixed, beside what was fixed about it before. Refused
    /// where there is no such note or value; whether a hand can play it is for measuring to say.
    /// </summary>
    public static Outcome<Recipe> Set(Recipe recipe, Lock part)
    {
        var before = Of(recipe, part.Note) ?? new Lock(part.Note);
        var both = new Lock(
            part.Note,
            part.Finger ?? before.Finger,
            part.String ?? before.String,
            part.Position ?? before.Position,
            part.Stroke ?? before.Stroke
        );
        var locked = With(recipe, [.. Others(recipe, part.Note).Append(both).OrderBy(held => held.Note)]);
        return LineBuilder.Build(locked).Then<Recipe>(_ => locked);
    }

    /// <summary>What is fixed about a note; null for nothing.</summary>
    public static Lock? Of(Recipe recipe, int note) =>
        recipe.Fretting.Locks.FirstOrDefault(held => held.Note == note);

    /// <summary>The recipe with everything about a note free again.</summary>
    public static Recipe Clear(Recipe recipe, int note) => With(recipe, [.. Others(recipe, note)]);

    /// <summary>The recipe with everything free.</summary>
    public static Recipe ClearAll(Recipe recipe) => With(recipe, []);

    private static IEnumerable<Lock> Others(Recipe recipe, int note) =>
        recipe.Fretting.Locks.Where(held => held.Note != note);

    private static Recipe With(Recipe recipe, ImmutableArray<Lock> locks) =>
        recipe with
        {
            Fretting = recipe.Fretting with { Locks = locks },
        };
}
