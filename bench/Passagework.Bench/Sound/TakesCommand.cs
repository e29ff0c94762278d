using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Sound.Mixing;
using Passagework.Sound.Takes;

namespace Passagework.Bench.Sound;

/// <summary><c>takes FOLDER [--seed N] [--count N]</c>: the named takes and some drawn ones as WAV with their truth.</summary>
internal static class TakesCommand
{
    private const string Usage = "takes FOLDER [--seed N] [--count N]";
    private const uint UsualCount = 10;
    private const uint MostCount = 10_000;

    /// <summary>0 when every take was written, 1 when one could not be made or written, 2 for wrong usage.</summary>
    public static int Run(string[] words)
    {
        if (!Read(words).TryGet(out var asked, out var fault))
        {
            Console.Error.WriteLine($"{fault}\n{Usage}");
            return 2;
        }

        try
        {
            return Write(asked);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"can't write to {asked.Folder}: {failed.Message}");
            return 1;
        }
    }

    private static int Write(Request asked)
    {
        Directory.CreateDirectory(asked.Folder);
        var drawn = Enumerable
            .Range(0, (int)asked.Count)
            .Select(i => TakePlans.Random(unchecked(asked.Seed + (uint)i)));
        var failed = 0;
        foreach (var idea in DemoTakes.All.Concat(drawn))
        {
            if (!Made(idea).TryGet(out var take, out var fault))
            {
                Console.Error.WriteLine($"{idea.Id}: {fault}");
                failed++;
                continue;
            }

            Save(Path.Combine(asked.Folder, idea.Id), idea, take);
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{idea.Id}: {take.Truth.Length} notes, {take.Samples.Length / (double)take.SampleRate:F1} s, {idea.About}"
                )
            );
        }

        return failed == 0 ? 0 : 1;
    }

    private static Outcome<Take> Made(TakeIdea idea) =>
        idea.Recipe()
            .Then(LineBuilder.Build)
            .Then(line => Realizer.Realize(line, Player.At(2)))
            .Then(played => TakeMaker.Make(played, idea.Plan, idea.Guitar, idea.Seed));

    private static void Save(string path, TakeIdea idea, Take take)
    {
        var files = TruthFiles.Of(idea, take);
        File.WriteAllText(path + ".truth.csv", files.Truth);
        File.WriteAllText(path + ".score.csv", files.Score);
        File.WriteAllText(path + ".json", files.Plan);
        using var sound = File.Create(path + ".wav");
        new WavFile(take.SampleRate, 1, SampleFormat.Pcm16).Write(
            sound,
            take.Samples.Length,
            (into, first) => take.Samples.AsSpan((int)first, into.Length).CopyTo(into)
        );
    }

    private static Outcome<Request> Read(string[] words)
    {
        if (words is not [var folder, .. var options] || folder.StartsWith("--", StringComparison.Ordinal))
        {
            return new Fault("no folder given", Right: "the folder to write to");
        }

        var asked = new Request(folder, 1, UsualCount);
        for (var i = 0; i < options.Length; i += 2)
        {
            var (option, value) = (options[i], i + 1 < options.Length ? options[i + 1] : "");
            var most = option == "--count" ? MostCount : uint.MaxValue;
            if (option is not ("--seed" or "--count"))
            {
                return new Fault($"unknown option {Quote.Short(option)}", Right: "--seed or --count");
            }

            if (
                !uint.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                || number > most
            )
            {
                return new Fault($"{Quote.Short(value)} is no number that fits", option, $"0 to {most}");
            }

            asked = option == "--seed" ? asked with { Seed = number } : asked with { Count = number };
        }

        return asked;
    }

    private sealed record Request(string Folder, uint Seed, uint Count);
}
