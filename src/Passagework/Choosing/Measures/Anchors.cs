using System.Collections.Immutable;
using System.Text.Json;

namespace Passagework.Choosing.Measures;

/// <summary>The anchors of all criteria: fixed, so that a value does not hang on which candidates are compared.</summary>
/// <remarks>
/// The shipped ones are computed by <c>bench -- anchors</c> and kept in a data file, each with how it was got. Those of general use
/// and use in music hold for the built-in repertoire; another repertoire gets its own.
/// </remarks>
public sealed class Anchors
{
    private static readonly Lazy<Anchors> Shipped = new(Load);
    private readonly ImmutableDictionary<string, Anchor> _known;

    private Anchors(ImmutableDictionary<string, Anchor> known) => _known = known;

    /// <summary>The shipped ones, against the built-in repertoire.</summary>
    public static Anchors BuiltIn => Shipped.Value;

    /// <summary>All of them, in the order of their ids.</summary>
    public ImmutableArray<Anchor> All =>
        [.. _known.Values.OrderBy(anchor => anchor.Criterion, StringComparer.Ordinal)];

    /// <summary>The anchor of a criterion; null where it has none.</summary>
    public Anchor? Of(string criterion) => _known.GetValueOrDefault(criterion);

    /// <summary>The same with some of them replaced.</summary>
    public Anchors With(params ReadOnlySpan<Anchor> others)
    {
        var known = _known;
        foreach (var anchor in others)
        {
            known = known.SetItem(anchor.Criterion, anchor);
        }

        return new Anchors(known);
    }

    private static Anchors Load()
    {
        using var stream =
            typeof(Anchors).Assembly.GetManifestResourceStream("Choosing/Measures/anchors.json")
            ?? throw new System.Diagnostics.UnreachableException("The anchors are embedded.");
        using var document = JsonDocument.Parse(stream);
        return new Anchors(
            document
                .RootElement.GetProperty("anchors")
                .EnumerateArray()
                .Select(Read)
                .ToImmutableDictionary(anchor => anchor.Criterion)
        );
    }

    private static Anchor Read(JsonElement entry) =>
        new(
            Text(entry, "criterion"),
            entry.GetProperty("x0").GetDouble(),
            entry.GetProperty("x1").GetDouble(),
            Text(entry, "how"),
            Text(entry, "cells"),
            entry.GetProperty("exact").GetBoolean()
        );

    private static string Text(JsonElement entry, string name) =>
        entry.GetProperty(name).GetString()
        ?? throw new System.Diagnostics.UnreachableException("Every word of the anchors is text.");
}
