using System.Collections.Immutable;
using CsCheck;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Instrument;

public class LayoutPropertyTests
{
    private static readonly string[] Tunings =
    [
        .. Tuning.Names,
        "G4 C4 E4 A4",
        "C3 G3 D4 A4",
        "E2 A2 D3 G3 B3 E4 A4",
    ];

    private static readonly Gen<ScaleFormula> AnyScale = Gen.Int[0, Scales.All.Length - 1]
        .Select(number => Scales.All[number]);

    private static readonly Gen<NoteSet> AnySet = Gen.Int[0, 11]
        .Select(
            AnyScale,
            Gen.Int[1, 11].HashSet[1, 11],
            Gen.Bool,
            (root, scale, listed, named) =>
                named ? Named(root, scale.Name) : NoteSet.Listed(Root(root), [0, .. listed.Order()])
        );

    private static readonly Gen<Fretboard> AnyNeck = Gen.Int[0, Tunings.Length - 1]
        .Select(
            Gen.Int[12, 36],
            Gen.Int[0, 12],
            (tuning, frets, capo) => Necks.Tuned(Tunings[tuning], frets, capo)
        );

    private static readonly Gen<Layout> AnyLayout = Gen.OneOf(
        Gen.Int[1, 7].Select(Gen.Int[0, 20], (number, near) => (Layout)new Layout.Box(number, near)),
        Gen.Bool.Select(
            Gen.Int[1, 5],
            Gen.Int[0, 20],
            (high, number, near) => (Layout)new Layout.OneSide(high, number, near)
        ),
        Gen.Int[1, 5]
            .Select(Gen.Int[0, 20], (first, near) => (Layout)new Layout.Joined(first, first + 1, near)),
        Gen.Int[2, 4]
            .Select(
                Gen.Int[1, 8],
                Gen.Int[0, 12],
                (count, number, fret) => (Layout)new Layout.PerString(count, Place.At(number, fret))
            ),
        Gen.Int[1, 4]
            .Array[1, 3]
            .Select(
                Gen.Int[1, 8],
                Gen.Int[0, 12],
                (pattern, number, fret) => (Layout)new Layout.Diagonal([.. pattern], Place.At(number, fret))
            ),
        Gen.Int[1, 8]
            .Select(
                Gen.Int[0, 12],
                Gen.Int[0, 24],
                (number, from, to) => (Layout)new Layout.OneString(number, from, to)
            ),
        Gen.Int[1, 5]
            .Array[1, 4]
            .Select(Gen.Int[0, 12], (boxes, near) => (Layout)new Layout.Chain([3, 2, 1], [.. boxes], near)),
        Gen.Const((Layout)new Layout.OpenPosition())
    );

    [Fact]
    public void Every_note_of_a_layout_lies_in_the_set_and_on_the_neck() =>
        AnyLayout
            .Select(AnySet, AnyNeck)
            .Sample(
                (layout, notes, neck) =>
                {
                    if (!LayoutPlanner.Lay(layout, notes, neck).TryGet(out var path, out var fault))
                    {
                        return fault.ToString().Length > 0;
                    }

                    return path.Length > 0
                        && path.Places.All(place =>
                            neck.Has(place)
                            && notes.Contains(neck.Tuning.Open(place.String).Midi + place.Fret)
                        );
                },
                iter: 20_000
            );

    [Fact]
    public void Runs_climb_through_the_set_without_a_gap_where_the_strings_climb() =>
        AnyLayout
            .Select(AnySet, AnyNeck)
            .Where((layout, _, neck) => layout is Layout.PerString or Layout.Diagonal && Climbs(neck))
            .Sample(
                (layout, notes, neck) =>
                    !LayoutPlanner.Lay(layout, notes, neck).TryGet(out var path, out _)
                    || path.Places.Zip(path.Places.Skip(1))
                        .All(pair =>
                            neck.MidiAt(pair.Second) > neck.MidiAt(pair.First)
                            && !Enumerable
                                .Range(
                                    neck.MidiAt(pair.First) + 1,
                                    neck.MidiAt(pair.Second) - neck.MidiAt(pair.First) - 1
                                )
                                .Any(key => notes.Contains(key - neck.Capo))
                        ),
                iter: 5_000
            );

    [Fact]
    public void A_box_of_other_than_five_notes_holds_every_note_between_its_ends_once() =>
        Gen.Int[1, 7]
            .Select(Gen.Int[0, 12], AnySet, AnyNeck)
            .Where((_, _, notes, _) => notes.Semitones.Length != 5)
            .Sample(
                (number, near, notes, neck) =>
                {
                    if (
                        !LayoutPlanner
                            .Lay(new Layout.Box(number, near), notes, neck)
                            .TryGet(out var path, out _)
                    )
                    {
                        return true;
                    }

                    var keys = path.Places.Select(place => neck.MidiAt(place) - neck.Capo).ToList();
                    var all = Enumerable.Range(keys[0], keys[^1] - keys[0] + 1).Where(notes.Contains);
                    return all.SequenceEqual(keys);
                },
                iter: 5_000
            );

    [Fact]
    public void Moving_root_and_place_along_the_neck_moves_every_fret_alike() =>
        Gen.Int[0, 11]
            .Select(AnyScale, Gen.Int[1, 5], Gen.Int[4, 9], Gen.Int[1, 3])
            .Sample(
                (root, scale, number, near, up) =>
                {
                    var neck = Necks.Tuned("standard", frets: 36);
                    var here = LayoutPlanner.Lay(new Layout.Box(number, near), Named(root, scale.Name), neck);
                    var there = LayoutPlanner.Lay(
                        new Layout.Box(number, near + up),
                        Named((root + up) % 12, scale.Name),
                        neck
                    );
                    if (!here.TryGet(out var low, out _) || !there.TryGet(out var high, out _))
                    {
                        return number > scale.Semitones.Length;
                    }

                    // Near the nut the lower place may be missing; then the upper one is an octave away, or a note
                    // that would lie below the nut has gone to another string.
                    var moved = low.Places.Select(place => Place.At(place.String, place.Fret + up));
                    return low.Places.Any(place => place.Fret <= 2 || place.Fret > near + 7)
                        || moved.SequenceEqual(high.Places);
                },
                iter: 5_000
            );

    private static bool Climbs(Fretboard neck) =>
        Enumerable
            .Range(1, neck.Tuning.StringCount - 1)
            .All(number => neck.Tuning.Open(number).Midi > neck.Tuning.Open(number + 1).Midi);

    private static NoteSet Named(int root, string scale) =>
        NoteSet.TryNamed(Root(root), scale, out var set) ? set : throw new InvalidOperationException(scale);

    private static NoteName Root(int pitchClass) =>
        NoteName.TryParse("C C# D Eb E F F# G G# A Bb B".Split(' ')[pitchClass], out var name)
            ? name
            : throw new InvalidOperationException($"{pitchClass}");
}
