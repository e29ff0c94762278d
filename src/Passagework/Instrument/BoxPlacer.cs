using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>Finds where a box lies and which spots belong to it.</summary>
internal static class BoxPlacer
{
    private const int NotesPerString = 2;
    private const int FiveNotes = 5;

    /// <summary>
    /// The box whose first note on the anchor string lies nearest to a fret (a tie goes to the lower), passing over
    /// places where part of it would fall below the nut.
    /// </summary>
    public static Outcome<LaidBox> Nearest(ScaleOnNeck scale, int number, int near, string field)
    {
        if (CheckNumber(scale, number, field) is { } wrongNumber)
        {
            return wrongNumber;
        }

        if (near < 0 || near > scale.Frets)
        {
            return new Fault($"no box can lie near fret {near}", ".near", scale.NeckEnd);
        }

        var usable = Starts(scale, number)
            .Select(fret => LayAt(scale, number, fret))
            .Where(FitsAboveNut)
            .ToList();
        if (usable.Count == 0)
        {
            return new Fault("this box has notes below the nut wherever it lies", field, "use fewer strings");
        }

        var onNeck = usable.Where(box => box.Start <= scale.Frets);
        return onNeck.MinBy(box => (Math.Abs(box.Start - near), box.Start)) ?? usable[0];
    }

    /// <summary>The boxes of a list, the first nearest to a fret, each next one at the next place up the neck.</summary>
    public static Outcome<List<LaidBox>> Upward(ScaleOnNeck scale, ReadOnlySpan<int> numbers, int near)
    {
        var boxes = new List<LaidBox>();
        for (var index = 0; index < numbers.Length; index++)
        {
            var field = $".boxes[{index}]";
            var laid =
                boxes.Count == 0
                    ? Nearest(scale, numbers[index], near, field)
                    : Next(scale, numbers[index], boxes[^1].Start, field);
            if (!laid.TryGet(out var box, out var fault))
            {
                return fault;
            }

            boxes.Add(box);
        }

        return boxes;
    }

    private static Outcome<LaidBox> Next(ScaleOnNeck scale, int number, int after, string field)
    {
        if (CheckNumber(scale, number, field) is { } wrongNumber)
        {
            return wrongNumber;
        }

        var distance = scale.PitchClassOf(number) - scale.Open(scale.AnchorString) - after;
        return LayAt(scale, number, after + 1 + WholeNumbers.Modulo(distance - 1, 12));
    }

    private static Fault? CheckNumber(ScaleOnNeck scale, int number, string field) =>
        number >= 1 && number <= scale.NoteCount
            ? null
            : new Fault(
                $"there is no box {number} of {scale.Name}",
                field,
                $"a box begins on each of its notes: 1 to {scale.NoteCount}"
            );

    /// <summary>Frets of the anchor string where the k-th note lies, two octaves beyond the last fret too.</summary>
    private static IEnumerable<int> Starts(ScaleOnNeck scale, int number)
    {
        var lowest = WholeNumbers.Modulo(scale.PitchClassOf(number) - scale.Open(scale.AnchorString), 12);
        for (var fret = lowest; fret <= scale.Frets + 24; fret += 12)
        {
            yield return fret;
        }
    }

    private static LaidBox LayAt(ScaleOnNeck scale, int number, int fret)
    {
        if (scale.NoteCount != FiveNotes)
        {
            return new LaidBox(number, fret, WindowBox.Lay(scale, fret));
        }

        var anchor = new Spot(scale.AnchorString, fret);
        List<Spot> spots =
        [
            .. StringWalk.Descend(scale, anchor, NotesPerString),
            .. StringWalk.Climb(scale, anchor, [NotesPerString]),
        ];
        return new LaidBox(number, fret, spots);
    }

    private static bool FitsAboveNut(LaidBox box) => box.Spots.TrueForAll(spot => spot.Fret >= 0);
}

/// <summary>A box at its place.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Start">Fret of its first note on the anchor string.</param>
/// <param name="Spots">Its notes in order.</param>
internal sealed record LaidBox(int Number, int Start, List<Spot> Spots);
