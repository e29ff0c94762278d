using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Hands;

/// <summary>Lines for the tests of both hands: even sixteenths from places, groups between bars.</summary>
internal static class Lines
{
    public const string BoxUp = "6:5 6:8 5:5 5:7 4:5 4:7 3:5 3:7 2:5 2:8 1:5 1:8";

    public const string BoxUpAndDown = BoxUp + " 1:5 2:8 2:5 3:7 3:5 4:7 4:5 5:7 5:5 6:8 6:5";

    public const string ThreePerString =
        "6:5 6:7 6:8 5:5 5:7 5:8 4:5 4:7 4:9 3:5 3:7 3:9 2:6 2:8 2:10 1:7 1:8 1:10";

    /// <summary>A line of places separated by spaces; | separates groups, h or p before a place slurs to it.</summary>
    public static Line Of(string places, Recipe? recipe = null)
    {
        recipe ??= new Recipe();
        var notes = ImmutableArray.CreateBuilder<LineNote>();
        var (group, inGroup) = (0, 0);
        foreach (var word in places.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word == "|")
            {
                (group, inGroup) = (group + 1, 0);
                continue;
            }

            var slurred = word[0] is 'h' or 'p';
            var place = PlaceOf(slurred ? word[1..] : word);
            var midi = recipe.Instrument.MidiAt(place);
            notes.Add(
                new LineNote
                {
                    Index = notes.Count,
                    Place = place,
                    Midi = midi,
                    Pitch = PitchOf(midi),
                    Onset = recipe.Rhythm.Pulse * Fraction.Of(notes.Count),
                    Duration = recipe.Rhythm.Pulse,
                    Group = group,
                    InGroup = inGroup,
                    Accent = inGroup == 0,
                    Slur = slurred ? Slur.Slurred : Slur.None,
                }
            );
            inGroup++;
        }

        return new Line(recipe, notes.ToImmutable(), [], recipe.Rhythm.Pulse * Fraction.Of(notes.Count));
    }

    /// <summary>A cell of neighbouring notes moved up box 1 by single steps.</summary>
    public static string Groups(params int[] offsets)
    {
        var path = BoxUp.Split(' ');
        var span = offsets.Max();
        var cells = Enumerable
            .Range(0, path.Length - span)
            .Select(start => string.Join(' ', offsets.Select(offset => path[start + offset])));
        return string.Join(" | ", cells);
    }

    /// <summary>The mirror of a line of box 1: every path index i becomes 11 − i.</summary>
    public static string Mirror(string places)
    {
        var path = BoxUp.Split(' ');
        return string.Join(
            ' ',
            places.Split(' ').Select(word => word == "|" ? word : path[11 - Array.IndexOf(path, word)])
        );
    }

    public static Recipe With(
        Technique technique,
        FirstStroke first = FirstStroke.Down,
        FingerOrder fingers = FingerOrder.Pima
    ) =>
        new()
        {
            Picking = new PickingPlan
            {
                Technique = technique,
                First = first,
                Fingers = fingers,
            },
        };

    public static Place PlaceOf(string text) =>
        Place.TryParse(text, out var place) ? place : throw new FormatException(text);

    private static SpelledPitch PitchOf(int midi) =>
        SpelledPitch.At(RootNames.Usual(midi, minor: true), midi);
}
