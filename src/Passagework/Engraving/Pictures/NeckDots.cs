using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Engraving.Pictures;

/// <summary>Draws the places: roots square, others round; played ones filled and written in, others hollow.</summary>
internal sealed class NeckDots(
    NeckFrame frame,
    NeckNotes notes,
    Realization realization,
    FretboardOptions options
)
{
    private const double OutlineMm = 0.4;
    private const double LargestTextPt = 9.75;
    private const double SmallestTextPt = 7;
    private const double StepPt = 0.25;

    // Side of a square beside the width of a round dot, so that both look alike in size; chosen by eye.
    private const double SquareShare = 0.94;

    // How much of a dot's width its text may take, so that the corners of the text stay inside the circle.
    private const double TextShare = 0.8;

    private readonly Recipe _recipe = realization.Line.Recipe;

    public IEnumerable<Mark> Marks() =>
        [
            .. notes.Hollow.Select(place => Dot(place, played: false, note: null)),
            .. notes.Visits.SelectMany(Played),
        ];

    /// <summary>Whether the root lies there; never where the line names none.</summary>
    public bool IsRoot(Place place) =>
        _recipe.Notes is { } set && (Key(place) - set.Root.PitchClass) % 12 == 0;

    /// <summary>What is written in the dot of a note; empty where nothing is.</summary>
    private string TextOf(NeckVisit visit) =>
        options.Dots switch
        {
            DotText.Finger => visit.Tone.Finger.ToString(CultureInfo.InvariantCulture),
            DotText.Degree => PrintedSigns.Of(Degree(visit.Tone.Place)),
            DotText.Name => options.Style.Of(visit.Tone.Tone.Pitch.Name),
            DotText.Order => visit.Order.ToString(CultureInfo.InvariantCulture),
            _ => "",
        };

    private int Key(Place place) => _recipe.Instrument.MidiAt(place) - _recipe.Instrument.Capo;

    // A note outside the set has a plain name.
    private string Degree(Place place)
    {
        var key = Key(place);
        var above = (((key - _recipe.Notes!.Root.PitchClass) % 12) + 12) % 12;
        return _recipe.Notes.DegreeOf(key)?.ToString() ?? Plain[above];
    }

    private static readonly ImmutableArray<string> Plain =
    [
        "1",
        "b2",
        "2",
        "b3",
        "3",
        "4",
        "b5",
        "5",
        "b6",
        "6",
        "b7",
        "7",
    ];

    private IEnumerable<Mark> Played(NeckVisit visit)
    {
        var place = visit.Tone.Place;
        yield return Dot(place, played: true, visit.Note);
        var written = TextOf(visit);
        if (written.Length == 0)
        {
            yield break;
        }

        foreach (var mark in Written(written, frame.At(place), $"dot-text-{place}"))
        {
            yield return mark with
            {
                Note = visit.Note,
            };
        }
    }

    private Mark Dot(Place place, bool played, int? note)
    {
        var centre = frame.At(place);
        var filling = played ? Filling.Solid : Filling.Paper;
        var (id, kind) = ($"dot-{place}", played ? "dot-played" : "dot-hollow");
        if (!IsRoot(place))
        {
            return new CircleMark(centre, (frame.DotMm - OutlineMm) / 2)
            {
                Id = id,
                Kind = kind,
                Note = note,
                Filling = filling,
                OutlineMm = OutlineMm,
            };
        }

        var side = (SquareShare * frame.DotMm) - OutlineMm;
        return new PolygonMark(PolygonMark.RectangleAbout(centre, side, side))
        {
            Id = id,
            Kind = kind + "-root",
            Note = note,
            Filling = filling,
            OutlineMm = OutlineMm,
        };
    }

    private IEnumerable<Mark> Written(string words, Point centre, string id)
    {
        var room = TextShare * frame.DotMm;
        for (var size = LargestTextPt; ; size -= StepPt)
        {
            var style = TextStyle.InPoints(Face.SansBold, size, size) with { Ink = Ink.Paper };
            var set = InkLabel.Around(words, centre, style, id);
            if (set.Box.Width <= room || size <= SmallestTextPt)
            {
                return set.Marks.Select(mark => mark with { Kind = "dot-text" });
            }
        }
    }
}
