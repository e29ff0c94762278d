using System.Diagnostics;
using System.Globalization;

namespace Passagework.Bench.Fuzz;

/// <summary><c>fuzz TARGET [--count N] [--seed S]</c>: spoiled inputs for a reader, with the figures at the end.</summary>
internal static class FuzzCommand
{
    private const int UsualCount = 200_000;
    private const int UsualSeed = 1;
    private static readonly TimeSpan Hang = TimeSpan.FromSeconds(20);
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(200);

    /// <summary>0 when nothing crashed, hung or was slow; 1 when something did; 2 for wrong usage.</summary>
    public static int Run(string[] arguments)
    {
        var name = arguments.Length > 0 ? arguments[0] : "";
        var target = FuzzTarget.All.FirstOrDefault(known => known.Name == name);
        var count = NumberAfter("--count", arguments, UsualCount);
        var seed = NumberAfter("--seed", arguments, UsualSeed);
        if (target is null || count is null || seed is null)
        {
            var names = string.Join('|', FuzzTarget.All.Select(known => known.Name));
            Console.Error.WriteLine($"fuzz {names} [--count N] [--seed S]");
            return 2;
        }

        return Run(target, count.Value, seed.Value);
    }

    private static int Run(FuzzTarget target, int count, int seed)
    {
        var run = new FuzzRun(target);
        var begun = Stopwatch.GetTimestamp();
        var worker = new Thread(() => run.Go(new Mutator(target, seed), count)) { IsBackground = true };
        worker.Start();
        while (!worker.Join(Look))
        {
            if (run.InHand is { } input && Stopwatch.GetElapsedTime(input.Begun) > Hang)
            {
                run.Failures.Add((input.Text, "hangs"));
                Report(target, run, Stopwatch.GetElapsedTime(begun));
                return 1;
            }
        }

        Report(target, run, Stopwatch.GetElapsedTime(begun));
        return run.Failures.Count == 0 ? 0 : 1;
    }

    private static void Report(FuzzTarget target, FuzzRun run, TimeSpan took)
    {
        foreach (var (text, what) in run.Failures)
        {
            Console.WriteLine($"--- {what}\n{target.Shown(text)}\n---");
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{target.Name}: {run.Read} inputs, {run.Accepted} accepted, {run.Read - run.Accepted - run.Crashes} refused, {run.Crashes} crashes, {run.SlowInputs} slower than {FuzzRun.Slow.TotalMilliseconds} ms, slowest {run.Slowest.TotalMilliseconds:F1} ms, {took.TotalSeconds:F1} s"
            )
        );
    }

    private static int? NumberAfter(string option, string[] arguments, int usual)
    {
        var at = Array.IndexOf(arguments, option);
        if (at < 0)
        {
            return usual;
        }

        var written = at + 1 < arguments.Length ? arguments[at + 1] : "";
        return int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
    }
}
