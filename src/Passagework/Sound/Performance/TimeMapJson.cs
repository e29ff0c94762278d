using System.Text.Json.Nodes;

namespace Passagework.Sound.Performance;

/// <summary>A time map as JSON; the fields are described in <c>docs/sound.md</c>.</summary>
public static class TimeMapJson
{
    private const int Decimals = 6;

    /// <summary>The times through, the notes and the bars with their beats.</summary>
    public static JsonObject Of(TimeMap times) =>
        new()
        {
            ["meter"] = times.Meter.ToString(),
            ["countInBars"] = times.CountInBars,
            ["passes"] = new JsonArray([.. times.Passes.Select(Pass)]),
            ["notes"] = new JsonArray([.. times.Notes.Select(Note)]),
            ["bars"] = new JsonArray([.. Enumerable.Range(0, times.Bars).Select(bar => Bar(times, bar))]),
            ["endS"] = Seconds(times.EndSeconds),
        };

    private static JsonObject Pass(PassSpan pass) =>
        new()
        {
            ["bar"] = pass.FirstBar,
            ["bars"] = pass.Bars,
            ["lineBar"] = pass.LineBar,
            ["fromBpm"] = Math.Round(pass.Tempo.From.BeatsPerMinute, Decimals),
            ["toBpm"] = Math.Round(pass.Tempo.To.BeatsPerMinute, Decimals),
        };

    private static JsonObject Note(TimedNote note) =>
        new()
        {
            ["index"] = note.Note,
            ["pass"] = note.Pass,
            ["onsetS"] = Seconds(note.OnsetSeconds),
            ["endS"] = Seconds(note.EndSeconds),
        };

    private static JsonObject Bar(TimeMap times, int bar)
    {
        var beats = times.Meter.BeatsPerBar;
        return new JsonObject
        {
            ["startS"] = Seconds(times.BarSeconds(bar)),
            ["beatsS"] = new JsonArray([
                .. times
                    .BeatSeconds.AsSpan()
                    .Slice(bar * beats, beats)
                    .ToArray()
                    .Select(beat => Seconds(beat)),
            ]),
        };
    }

    private static JsonNode Seconds(double seconds) => Math.Round(seconds, Decimals);
}
