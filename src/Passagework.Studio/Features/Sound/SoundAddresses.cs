using System.Globalization;
using Passagework.Sound.Performance;

namespace Passagework.Studio.Features.Sound;

/// <summary>Where the browser fetches what it plays: <c>/sound/NAME/times</c> and <c>/sound/NAME/FIRST-END</c>.</summary>
internal static class SoundAddresses
{
    /// <summary>Most samples of one answer: four seconds.</summary>
    public const int MostSamples = 4 * SoundPlanner.SampleRate;

    /// <summary>Serves times as JSON and samples as 32-bit floating-point numbers, little-endian, one channel.</summary>
    public static void MapSound(this WebApplication app)
    {
        app.MapGet("/sound/{name}/times", Times);
        app.MapGet("/sound/{name}/{range}", Samples);
    }

    private static IResult Times(string name, SoundStore store) =>
        store.Find(name) is { } sound
            ? Results.Text(TimeMapJson.Of(sound.Times).ToJsonString(), "application/json")
            : Gone;

    private static IResult Samples(string name, string range, SoundStore store, HttpResponse response)
    {
        if (store.Find(name) is not { } sound)
        {
            return Gone;
        }

        if (
            !TryRead(range, out var first, out var end)
            || first >= end
            || end > sound.Samples
            || end - first > MostSamples
        )
        {
            return Results.Text(
                $"No such samples: FIRST-END within 0 to {sound.Samples}, at most {MostSamples} at once.",
                statusCode: StatusCodes.Status400BadRequest
            );
        }

        response.Headers.CacheControl = "no-store";
        return Results.Bytes(sound.Pcm(first, (int)(end - first)), "application/octet-stream");
    }

    private static IResult Gone =>
        Results.Text("This sound is not kept any more.", statusCode: StatusCodes.Status404NotFound);

    private static bool TryRead(string range, out long first, out long end)
    {
        var parts = range.Split('-');
        end = 0;
        return long.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out first)
            && parts.Length == 2
            && long.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out end);
    }
}
