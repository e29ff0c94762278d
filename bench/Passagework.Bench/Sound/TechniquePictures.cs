using System.Collections.Immutable;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;
using SkiaSharp;

namespace Passagework.Bench.Sound;

/// <summary>A picture and a WAV file of every technique: what the model does, for eyes and ears.</summary>
internal static class TechniquePictures
{
    private const int Window = 2048;
    private const int Hop = 256;
    private const int Rows = 420;
    private const int Columns = 4;
    private const double Highest = 9000;

    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        Console.WriteLine(
            "Pictures left to right, row by row: " + string.Join(", ", Techniques().Select(t => t.Name))
        );
        foreach (var sound in Enum.GetValues<GuitarSound>())
        {
            var pictures = new List<SKBitmap>();
            foreach (var (name, events) in Techniques())
            {
                var samples = Plucks.Render(sound, 2.2, events.AsSpan());
                WavFile.Write(System.IO.Path.Combine(folder, $"{sound}-{name}.wav"), samples, Plucks.Rate);
                pictures.Add(Draw(samples));
            }

            WriteSheet(pictures, System.IO.Path.Combine(folder, $"{sound}.png"));
        }
    }

    private static void WriteSheet(List<SKBitmap> pictures, string path)
    {
        var (width, height) = (pictures[0].Width + 8, pictures[0].Height + 8);
        using var sheet = new SKBitmap(Columns * width, (pictures.Count + Columns - 1) / Columns * height);
        using var canvas = new SKCanvas(sheet);
        canvas.Clear(SKColors.White);
        for (var i = 0; i < pictures.Count; i++)
        {
            canvas.DrawBitmap(
                pictures[i],
                i % Columns * width,
                i / Columns * height,
                SKSamplingOptions.Default
            );
            pictures[i].Dispose();
        }

        using var data = sheet.Encode(SKEncodedImageFormat.Png, 90);
        File.WriteAllBytes(path, data.ToArray());
    }

    private static IEnumerable<(string Name, ImmutableArray<StringEvent> Events)> Techniques()
    {
        var low = Plucks.Pluck(5, 5, 0.1, 0.9);
        var next = Plucks.Pluck(5, 7, 0.9, 1.7);
        yield return ("down-up", [low, next with { Action = StringAction.Up, Key = low.Key }]);
        yield return (
            "thumb-finger",
            [
                low with
                {
                    Action = StringAction.Thumb,
                },
                next with
                {
                    Action = StringAction.Finger,
                    Key = low.Key,
                },
            ]
        );
        yield return ("hammer", [low, next with { Action = StringAction.HammerOn }]);
        yield return (
            "pull",
            [low with { Key = next.Key }, next with { Action = StringAction.PullOff, Key = low.Key }]
        );
        yield return ("slide", [low, next with { Action = StringAction.Slide, Key = low.Key + 5 }]);
        yield return (
            "bend",
            [Plucks.Pluck(2, 8, 0.1) with { Bend = [(0.3, 0), (0.6, 2), (1.3, 2), (1.6, 0)] }]
        );
        yield return ("vibrato", [Plucks.Pluck(2, 8, 0.1) with { Vibrato = (5.5, 0.6) }]);
        yield return ("palm", [low with { PalmMuted = true }, next with { PalmMuted = true }]);
        yield return (
            "dead-rake",
            [
                low with
                {
                    Action = StringAction.Dead,
                },
                .. Enumerable.Range(0, 4).Select(i => Rake(6 - i, 1 + (0.035 * i))),
                Plucks.Pluck(2, 8, 1.14, 2),
            ]
        );
        yield return (
            "lift-roll",
            [low with { EndSeconds = 0.5 }, next with { EndSeconds = 1.3, Release = RingOver.Roll }]
        );
        yield return (
            "let-ring",
            [.. Enumerable.Range(0, 6).Select(i => Plucks.Pluck(6 - i, Chord[i], 0.1 + (0.12 * i)))]
        );
    }

    private static readonly ImmutableArray<int> Chord = [0, 2, 2, 1, 0, 0];

    private static StringEvent Rake(int s, double seconds) =>
        Plucks.Pluck(s, 7, seconds, seconds + 0.1) with
        {
            Action = StringAction.Rake,
        };

    private static SKBitmap Draw(ReadOnlySpan<float> samples)
    {
        var bitmap = new SKBitmap((samples.Length - Window) / Hop, Rows + 80);
        for (var x = 0; x < bitmap.Width; x++)
        {
            var magnitudes = Spectrum.Of(samples.Slice(x * Hop, Window));
            for (var y = 0; y < Rows; y++)
            {
                var hertz = Highest * (Rows - y) / Rows;
                var level = Tone.Decibels(magnitudes[(int)(hertz * Window / Plucks.Rate)] / Window * 4);
                bitmap.SetPixel(x, y, Heat((level + 100) / 85));
            }

            var height = (int)(78 * Math.Min(1, Tone.Peak(samples.Slice(x * Hop, Hop))));
            for (var y = 0; y < 80; y++)
            {
                bitmap.SetPixel(x, Rows + y, 80 - y <= height ? SKColors.SteelBlue : SKColors.White);
            }
        }

        return bitmap;
    }

    private static SKColor Heat(double share)
    {
        var x = Math.Clamp(share, 0, 1);
        var red = (byte)(255 * Math.Clamp(3 * x, 0, 1));
        var green = (byte)(255 * Math.Clamp((3 * x) - 1, 0, 1));
        return new(red, green, (byte)(255 * Math.Clamp((3 * x) - 2, 0, 1)));
    }
}
