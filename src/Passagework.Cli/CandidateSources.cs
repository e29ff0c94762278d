using System.Collections.Immutable;
using System.CommandLine;
using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>Exercises and families as they are named on the command line, to choose from.</summary>
internal static class CandidateSources
{
    /// <summary>Every family, or those that are named; changed as asked.</summary>
    public static Outcome<ImmutableArray<CandidateSource>> Find(
        IReadOnlyList<string> names,
        Terminal terminal,
        Overrides overrides,
        ParseResult parsed
    )
    {
        var found = ImmutableArray.CreateBuilder<CandidateSource>();
        foreach (var name in names.Count == 0 ? Library.Families : [.. names])
        {
            var source = Find(name, terminal)
                .Then(one => one.Changed(recipe => overrides.Apply(recipe, parsed)));
            if (source.TryGet(out var candidate, out var fault))
            {
                found.Add(candidate);
            }
            else if (names.Count > 0)
            {
                return fault;
            }
        }

        return found.Count == 0
            ? new Fault("none of the library can be changed this way", Right: "other options")
            : found.ToImmutable();
    }

    /// <summary>A family, an exercise of the library or a file.</summary>
    public static Outcome<CandidateSource> Find(string name, Terminal terminal) =>
        Library.Families.Contains(name)
            ? CandidateSource.OfFamily(name)
            : ExerciseSource
                .Find(name, terminal)
                .Then<CandidateSource>(found => CandidateSource.OfForm(found.Name, found.Recipe));
}
