using System.Collections.Immutable;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Studio.Features.Choosing;

/// <summary>What kind of new exercises are looked for, in the words of files.</summary>
/// <param name="Length">Notes of the figure, 3 to 8.</param>
/// <param name="Boxes">Where it may lie, or where its runs begin: boxes of the scale, counted from the root.</param>
/// <param name="Count">How many are wanted.</param>
public sealed record SearchWish(int Length, ImmutableArray<int> Boxes, int Count)
{
    private const int MostBoxes = 7;

    /// <summary>The root.</summary>
    public string Root { get; init; } = "A";

    /// <summary>The scale.</summary>
    public string Scale { get; init; } = "minor pentatonic";

    /// <summary>How the notes lie: box, per-string, joined or diagonal.</summary>
    public string Kind { get; init; } = "box";

    /// <summary>The fret that the boxes lie nearest to.</summary>
    public int Near { get; init; } = 5;

    /// <summary>The tuning.</summary>
    public string Tuning { get; init; } = "standard";

    /// <summary>Five notes anywhere in the A minor pentatonic.</summary>
    public static SearchWish Usual { get; } = new(5, [1, 2, 3, 4, 5], 5);

    /// <summary>How many boxes there are to choose from: one on each note, as many as a search takes.</summary>
    public int BoxesOfScale =>
        Notes.TryGet(out var notes, out _) ? Math.Min(MostBoxes, notes.Semitones.Length) : 0;

    /// <summary>The same in another scale: boxes that it has not are left out.</summary>
    public SearchWish In(string scale)
    {
        var other = this with { Scale = scale };
        var left = other.Boxes.RemoveAll(box => box > other.BoxesOfScale);
        return other with
        {
            Boxes = left.IsEmpty ? [.. Enumerable.Range(1, Math.Min(5, other.BoxesOfScale))] : left,
        };
    }

    /// <summary>The candidates; refused where a part cannot be read or the notes cannot lie so.</summary>
    internal Outcome<CellSpace> Space(Technique technique) =>
        Notes
            .Then(notes =>
                Instrument
                    .Tuning.Read(Tuning)
                    .Then(tuning => Layouts(notes, Fretboard.Standard with { Tuning = tuning }))
                    .Then<CellSpace>(laid =>
                        CellSpace.Usual(Length) with
                        {
                            Notes = notes,
                            Instrument = laid.On,
                            Layouts = laid.Layouts,
                            Picking = new PickingPlan { Technique = technique },
                        }
                    )
            )
            .Then(space => space.Check() is { } fault ? fault : (Outcome<CellSpace>)space);

    /// <summary>Content equality.</summary>
    public bool Equals(SearchWish? other) =>
        other is not null
        && (Length, Count, Root, Scale, Kind, Near, Tuning)
            == (other.Length, other.Count, other.Root, other.Scale, other.Kind, other.Near, other.Tuning)
        && Boxes.SequenceEqual(other.Boxes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Length, Count, Root, Scale, Kind, Near);

    private Outcome<NoteSet> Notes =>
        NoteName.TryParse(Root, out var root) && NoteSet.TryNamed(root, Scale, out var notes)
            ? notes
            : new Fault("there is no such scale", "the scale", "a root and one of the list");

    private Outcome<(Fretboard On, ImmutableArray<Layout> Layouts)> Layouts(NoteSet notes, Fretboard on)
    {
        var layouts = ImmutableArray.CreateBuilder<Layout>(Boxes.Length);
        foreach (var box in Boxes)
        {
            var recipe = new Recipe
            {
                Notes = notes,
                Instrument = on,
                Layout = new Layout.Box(box, Near),
            };
            var laid = LayoutChoice
                .Take(recipe, Kind)
                .Then(taken => LayoutPlanner.Lay(taken.Layout!, notes, on).Then<Layout>(_ => taken.Layout!));
            if (!laid.TryGet(out var layout, out var fault))
            {
                return fault with { Where = "the search" };
            }

            layouts.Add(layout);
        }

        return (on, [.. layouts.Distinct()]);
    }
}
