using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Hands.Explaining;

/// <summary>Plans an exercise with one note fixed to each of its other ways.</summary>
internal sealed class WaySearch(Measurement measured, int note)
{
    private static readonly ImmutableArray<Stroke> PickStrokes = [Stroke.Down, Stroke.Up];
    private static readonly ImmutableArray<Stroke> Plucks =
    [
        Stroke.Thumb,
        Stroke.Index,
        Stroke.Middle,
        Stroke.Ring,
    ];

    private readonly Recipe _recipe = measured.Realization.Line.Recipe;
    private readonly PlayedNote _played = measured.Realization.Notes[note];
    private readonly Lock? _held = NoteLocks.Of(measured.Realization.Line.Recipe, note);

    public OtherWays Search()
    {
        var fingerings = Best(Fingers().Concat(Strings()));
        var strokes = Best(Strokes());
        return new OtherWays
        {
            Bpm = measured.Bpm,
            Fingerings = fingerings,
            Strokes = strokes,
            WhyFinger = new WhyWords(
                measured.Bpm,
                FrettingWords.Finger(_played.Finger),
                _held?.Finger is not null
            ).Of(fingerings, "finger"),
            WhyStroke = new WhyWords(measured.Bpm, Named(_played.Stroke), _held?.Stroke is not null).Of(
                strokes,
                "stroke"
            ),
        };
    }

    // A chord's fingers hang together and are not exchanged one by one; an open string needs none.
    private IEnumerable<OtherWay> Fingers() =>
        _played.Finger == 0 || !_played.With.IsEmpty
            ? []
            : Enumerable
                .Range(1, 4)
                .Where(finger => finger != _played.Finger)
                .Select(finger => Way(new Lock(note, Finger: finger), FrettingWords.Finger(finger)));

    private IEnumerable<OtherWay> Strings() =>
        _played.With.IsEmpty
            ? _recipe
                .Instrument.PlacesOf(_played.Note.Midi)
                .Where(place => place.String != _played.Place.String)
                .Select(place => Way(new Lock(note, String: place.String), $"at {place}"))
            : [];

    // Strokes of the same kind of actor; and none, where the string was struck just before.
    private IEnumerable<OtherWay> Strokes()
    {
        var technique = _recipe.Picking.Technique;
        ImmutableArray<Stroke> all = technique switch
        {
            Technique.Fingers => Plucks,
            Technique.Hybrid => [.. PickStrokes, Stroke.Middle, Stroke.Ring],
            _ => PickStrokes,
        };
        if (note > 0 && measured.Realization.Notes[note - 1].Place.String == _played.Place.String)
        {
            all = all.Add(Stroke.None);
        }

        return all.Where(stroke => stroke != _played.Stroke)
            .Select(stroke => Way(new Lock(note, Stroke: stroke), Named(stroke)));
    }

    private OtherWay Way(Lock part, string words)
    {
        // A lock on another string frees what was fixed about the finger on this one.
        var free = part.String is null ? _recipe : NoteLocks.Clear(_recipe, note);
        var planned = NoteLocks
            .Set(free, part)
            .Then(LineBuilder.Build)
            .Then(line => Realizer.Plan(line, measured.Player));
        if (!planned.TryGet(out var line, out var fault))
        {
            return new OtherWay(part, words, null, fault.What);
        }

        var least = CeilingFinder.Plain(line.Demands, measured.Player.Parameters).Least;
        return new OtherWay(part, words, 60 * least / _recipe.Rhythm.NotesPerBeat, null);
    }

    private static ImmutableArray<OtherWay> Best(IEnumerable<OtherWay> ways) =>
        [
            .. ways.OrderBy(way => way.Impossible is not null)
                .ThenByDescending(way => way.Bpm ?? double.PositiveInfinity),
        ];

    private static string Named(Stroke stroke) =>
        stroke switch
        {
            Stroke.None => "no stroke",
            Stroke.Down => "down-stroke",
            Stroke.Up => "up-stroke",
            _ => PickingWords.Actor(stroke)["the ".Length..],
        };
}
