using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Instrument;

/// <summary>Note sets, instruments and paths in the short writing of the tests.</summary>
internal static class Necks
{
    public static NoteSet Notes(string root, string scale) =>
        NoteName.TryParse(root, out var name) && NoteSet.TryNamed(name, scale, out var set)
            ? set
            : throw new InvalidOperationException($"no set {root} {scale}");

    public static Fretboard Tuned(string tuning, int frets = 22, int capo = 0) =>
        Tuning.TryParse(tuning, out var parsed)
            ? new Fretboard
            {
                Tuning = parsed,
                Frets = frets,
                Capo = capo,
            }
            : throw new InvalidOperationException($"no tuning {tuning}");

    public static Place At(string place) =>
        Place.TryParse(place, out var parsed)
            ? parsed
            : throw new InvalidOperationException($"no place {place}");

    /// <summary>Such as <c>6:5 8 5:5 7</c>: the string is named where it changes.</summary>
    public static string Short(IEnumerable<Place> places)
    {
        var last = 0;
        var words = new List<string>();
        foreach (var place in places)
        {
            words.Add(place.String == last ? $"{place.Fret}" : place.ToString());
            last = place.String;
        }

        return string.Join(' ', words);
    }

    public static string Lay(Layout layout, NoteSet notes, Fretboard? fretboard = null) =>
        Short(LayoutPlanner.Lay(layout, notes, fretboard ?? Fretboard.Standard).OrThrow().Places);

    public static Fault Refuse(Layout layout, NoteSet notes, Fretboard? fretboard = null) =>
        LayoutPlanner.Lay(layout, notes, fretboard ?? Fretboard.Standard).TryGet(out var path, out var fault)
            ? throw new InvalidOperationException($"laid out as {path}")
            : fault;
}
