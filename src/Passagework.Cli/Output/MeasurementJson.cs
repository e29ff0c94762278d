using System.Text.Json.Nodes;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Cli.Output;

/// <summary>A measurement for machines.</summary>
internal static class MeasurementJson
{
    public static JsonObject Of(string exercise, string player, Measurement measured) =>
        new()
        {
            ["exercise"] = exercise,
            ["player"] = player,
            ["notes"] = new JsonArray([
                .. measured.Realization.Notes.Select(JsonNode (note, i) => Note(note, measured.Demands[i])),
            ]),
            ["picking"] = Picking(measured.Picking),
            ["fretting"] = Fretting(measured.Fretting),
            ["ceiling"] = Ceiling(measured),
            ["balance"] = Rounded.Figure(measured.Balance),
            ["evenLoad"] = Rounded.Figure(measured.EvenLoad),
            ["rhythm"] = Rhythm(measured.Fit),
        };

    /// <summary>What is played, without demands.</summary>
    public static JsonArray Notes(Realization realization) =>
        new([.. realization.Notes.Select(JsonNode (note) => Played(note))]);

    private static JsonObject Tone(PlayedTone tone) =>
        new()
        {
            ["string"] = tone.Place.String,
            ["fret"] = tone.Place.Fret,
            ["midi"] = tone.Tone.Midi,
            ["pitch"] = tone.Tone.Pitch.ToString(),
            ["finger"] = tone.Finger,
            ["stroke"] = RecipeWords.Strokes.Of(tone.Stroke),
        };

    private static JsonObject Played(PlayedNote played)
    {
        var note = played.Note;
        var json = new JsonObject
        {
            ["index"] = note.Index,
            ["string"] = played.Place.String,
            ["fret"] = played.Place.Fret,
            ["midi"] = note.Midi,
            ["pitch"] = note.Pitch.ToString(),
            ["onset"] = note.Onset.ToString(),
            ["duration"] = note.Duration.ToString(),
            ["group"] = note.Group,
            ["inGroup"] = note.InGroup,
            ["accent"] = note.Accent,
            ["finger"] = played.Finger,
            ["position"] = played.Position,
            ["stroke"] = RecipeWords.Strokes.Of(played.Stroke),
        };
        if (!played.With.IsEmpty)
        {
            json["with"] = new JsonArray([.. played.With.Select(JsonNode (tone) => Tone(tone))]);
        }

        return json;
    }

    private static JsonObject Note(PlayedNote played, MoveDemand demand)
    {
        var note = Played(played);
        note["frettingMs"] = Rounded.Milliseconds(demand.FrettingMs);
        note["pickingMs"] = Rounded.Milliseconds(demand.PickingMs);
        note["togetherMs"] = Rounded.Milliseconds(demand.TogetherMs);
        return note;
    }

    private static JsonObject Picking(PickingCounts counts) =>
        new()
        {
            ["sameString"] = counts.SameString,
            ["inside"] = counts.Inside,
            ["outside"] = counts.Outside,
            ["sweepSteps"] = counts.SweepSteps,
            ["against"] = counts.Against,
            ["skips"] = counts.Skips,
            ["insideSkips"] = counts.InsideSkips,
            ["outsideSkips"] = counts.OutsideSkips,
            ["reversals"] = counts.Reversals,
            ["afterDown"] = counts.AfterDown,
            ["afterUp"] = counts.AfterUp,
            ["groupStarts"] = counts.GroupStarts,
            ["flips"] = counts.Flips,
            ["strokes"] = counts.Strokes,
            ["slurs"] = counts.Slurs,
            ["hops"] = counts.Hops,
            ["travelSpacings"] = Rounded.Figure(counts.TravelSpacings),
            ["longestSweep"] = counts.LongestSweep,
            ["sameFingerAgain"] = counts.SameFingerAgain,
            ["backwardCrossings"] = counts.BackwardCrossings,
            ["oneStrokeForEachPlace"] = counts.OneStrokeForEachPlace,
        };

    private static JsonObject Fretting(FrettingCounts counts)
    {
        var shares = new JsonObject();
        for (var finger = 1; finger <= 4; finger++)
        {
            shares[finger.ToString(System.Globalization.CultureInfo.InvariantCulture)] = Rounded.Figure(
                counts.FingerShare[finger - 1]
            );
        }

        return new JsonObject
        {
            ["rolls"] = counts.Rolls,
            ["sameFingerMoves"] = counts.SameFingerMoves,
            ["shifts"] = counts.Shifts,
            ["fingerShare"] = shares,
            ["effectiveFingers"] = Rounded.Figure(counts.EffectiveFingers),
        };
    }

    private static JsonObject Ceiling(Measurement measured)
    {
        var ceiling = measured.Ceiling;
        var (limit, range) = (ceiling.LimitedBy, ceiling.Range);
        return new JsonObject
        {
            ["notesPerSecond"] = new JsonObject
            {
                ["fretting"] = Rounded.Figure(ceiling.Fretting),
                ["picking"] = Rounded.Figure(ceiling.Picking),
                ["together"] = Rounded.Figure(ceiling.Together),
            },
            ["least"] = Rounded.Figure(ceiling.Least),
            ["low"] = Rounded.Figure(range?.Low),
            ["high"] = Rounded.Figure(range?.High),
            ["bpm"] = Rounded.Figure(measured.Bpm),
            ["limitedBy"] = limit is { } hand ? Words.Of(hand) : null,
            ["limitedByShare"] = limit is { } limiting ? Rounded.Figure(range?.ShareOf(limiting)) : null,
            ["limitShares"] = new JsonObject
            {
                ["fretting"] = Rounded.Figure(range?.FrettingShare),
                ["picking"] = Rounded.Figure(range?.PickingShare),
                ["together"] = Rounded.Figure(range?.TogetherShare),
            },
            ["ratioToScale"] = Rounded.Figure(measured.RatioToScale),
        };
    }

    private static JsonObject Rhythm(GroupFit? fit) =>
        new()
        {
            ["beatsToRealign"] = fit?.BeatsToRealign,
            ["barsToRealign"] = fit?.BarsToRealign,
            ["feels"] = fit is null ? null : new JsonArray([.. fit.Feels.Select(Feel)]),
            ["comesOutEven"] = Rounded.Figure(fit?.ComesOutEven.ToDouble()),
            ["ambiguity"] = Rounded.Figure(fit?.Ambiguity?.ToDouble()),
            ["sentence"] = fit?.Sentence,
        };

    private static JsonNode Feel(GradedFeel graded) =>
        new JsonObject
        {
            ["notesPerBeat"] = graded.Feel.NotesPerBeat,
            ["swing"] = Rounded.Figure(graded.Feel.Swing.Share.ToDouble()),
            ["grade"] = (int)graded.Grade,
        };
}
