using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>A layout chosen by its kind alone: what the kind leaves open is filled in sensibly.</summary>
public static class LayoutChoice
{
    private const int OneStringFrets = 12;
    private const int UsualNear = 5;

    // A box is anchored on string 6, or on the last string where there are fewer.
    private const int HighestAnchor = 6;

    /// <summary>The kinds that can be chosen so; a list of places can't.</summary>
    public static ImmutableArray<string> Kinds { get; } =
    ["box", "per-string", "joined", "diagonal", "one-string", "string-pair", "chain", "one-side", "open"];

    /// <summary>
    /// The recipe laid out as that kind: three notes per string, a diagonal of two and three, boxes k and k + 1 joined,
    /// string 1 over an octave, strings 2 and 1, boxes 1 to 5 in a chain, the lower side. Box and fret are kept where
    /// the layout has them (of a run where it begins), else box 1 near fret 5; runs begin where that box begins.
    /// </summary>
    public static Outcome<Recipe> Take(Recipe recipe, string kind)
    {
        if (recipe.Notes is not { } notes || recipe.Layout is not { } layout)
        {
            return new Fault("a written line has no layout to change", "$.layout");
        }

        var (number, near) = BoxOf(layout, notes, recipe.Instrument);
        if (!Kinds.Contains(kind))
        {
            return new Fault($"unknown layout {Quote.Short(kind)}", Right: NearestWord.Hint(kind, Kinds));
        }

        if (kind is "per-string" or "diagonal")
        {
            return LayoutPlanner
                .Lay(new Layout.Box(number, near), notes, recipe.Instrument)
                .Then<Recipe>(box => recipe with { Layout = Run(kind, box.Places[0]) });
        }

        var most = notes.Semitones.Length;
        return recipe with
        {
            Layout = kind switch
            {
                "box" => new Layout.Box(number, near),
                "joined" => new Layout.Joined(number, (number % most) + 1, near),
                "one-string" => new Layout.OneString(
                    1,
                    near,
                    Math.Min(near + OneStringFrets, recipe.Instrument.PlayableFrets)
                ),
                "string-pair" => new Layout.StringPair([2, 1], [number], near),
                "chain" => new Layout.Chain([2, 1], [.. Enumerable.Range(1, Math.Min(5, most))], near),
                "one-side" => new Layout.OneSide(High: false, number, near),
                _ => new Layout.OpenPosition(),
            },
        };
    }

    /// <summary>The same layout with another box number; refused where the layout has none.</summary>
    public static Outcome<Recipe> WithBox(Recipe recipe, int number) =>
        recipe.Layout switch
        {
            Layout.Box box => recipe with { Layout = box with { Number = number } },
            Layout.OneSide side => recipe with { Layout = side with { Number = number } },
            Layout.StringPair pair => recipe with { Layout = pair with { Boxes = [number] } },
            Layout.Joined joined => recipe with
            {
                Layout = joined with
                {
                    First = number,
                    Second = (number % (recipe.Notes?.Semitones.Length ?? 5)) + 1,
                },
            },
            _ => new Fault("this layout has no box number", "$.layout", "choose the layout 'box' with it"),
        };

    /// <summary>The same layout near another fret; refused where the layout lies at given places.</summary>
    public static Outcome<Recipe> Near(Recipe recipe, int fret) =>
        recipe.Layout switch
        {
            Layout.Box box => recipe with { Layout = box with { Near = fret } },
            Layout.OneSide side => recipe with { Layout = side with { Near = fret } },
            Layout.Joined joined => recipe with { Layout = joined with { Near = fret } },
            Layout.StringPair pair => recipe with { Layout = pair with { Near = fret } },
            Layout.Chain chain => recipe with { Layout = chain with { Near = fret } },
            _ => new Fault(
                "this layout lies at given places, not near a fret",
                "$.layout",
                "choose the layout 'box' with it"
            ),
        };

    private static Layout Run(string kind, Place first) =>
        kind == "per-string" ? new Layout.PerString(3, first) : new Layout.Diagonal([2, 3], first);

    private static (int Number, int Near) BoxOf(Layout layout, NoteSet notes, Fretboard instrument) =>
        layout switch
        {
            Layout.Box box => (box.Number, box.Near),
            Layout.OneSide side => (side.Number, side.Near),
            Layout.Joined joined => (joined.First, joined.Near),
            Layout.StringPair pair => (pair.Boxes[0], pair.Near),
            Layout.Chain chain => (chain.Boxes[0], chain.Near),
            Layout.PerString run => BoxAt(run.From, notes, instrument),
            Layout.Diagonal run => BoxAt(run.From, notes, instrument),
            Layout.OneString one => (1, one.From),
            _ => (1, UsualNear),
        };

    // The box that begins where a run begins; a run that begins elsewhere leaves only its fret.
    private static (int Number, int Near) BoxAt(Place from, NoteSet notes, Fretboard instrument)
    {
        var anchor = Math.Min(instrument.Tuning.StringCount, HighestAnchor);
        var above = WholeNumbers.Modulo(
            instrument.MidiAt(from) - instrument.Capo - notes.Root.PitchClass,
            12
        );
        var index = from.String == anchor ? notes.Semitones.IndexOf(above) : 0;
        return (Math.Max(index, 0) + 1, from.Fret);
    }
}
