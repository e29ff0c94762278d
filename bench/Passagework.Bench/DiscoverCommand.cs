using System.Diagnostics;
using System.Globalization;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Bench;

/// <summary><c>discover LENGTH [THREADS]</c>: one honest whole search, from nothing to the finds, with time and memory.</summary>
internal static class DiscoverCommand
{
    private const double Mega = 1 << 20;

    public static int Run(string[] args)
    {
        var length = Number(args, 0, 6);
        var threads = Number(args, 1, Environment.ProcessorCount);
        var watch = Stopwatch.StartNew();
        var player = Player.At(2);
        var question = new DiscoveryQuestion
        {
            Space = CellSpace.Usual(length),
            Player = player,
            Music = PieceCollection.BuiltIn(player, Technique.Alternate).OrThrow(),
            Threads = threads,
        };
        var prepared = watch.Elapsed.TotalSeconds;
        var result = Discoverer.Find(question).OrThrow();
        var process = Process.GetCurrentProcess();
        Console.WriteLine(
            $"{result.Visited:N0} of {result.Total:N0}, front {result.Front:N0}, alike {result.Equal:N0}"
        );
        Console.WriteLine(string.Join(", ", result.Removed.Select(pair => $"{pair.Key} {pair.Value:N0}")));
        Console.WriteLine(
            $"{prepared:F2} s to prepare, {watch.Elapsed.TotalSeconds:F2} s in all, {process.TotalProcessorTime.TotalSeconds:F2} s of processor, {threads} threads"
        );
        Console.WriteLine(
            $"peak {process.PeakWorkingSet64 / Mega:F0} MB, allocated {GC.GetTotalAllocatedBytes() / Mega:F0} MB"
        );
        foreach (var found in result.Found)
        {
            Console.WriteLine($"{found.Name} [{found.LibraryId}]");
            Console.WriteLine(
                "  " + string.Join(", ", found.Values.Select((value, k) => $"{found.Raw[k]:F4} ({value:F2})"))
            );
        }

        return 0;
    }

    private static int Number(string[] args, int at, int usual) =>
        at < args.Length ? int.Parse(args[at], CultureInfo.InvariantCulture) : usual;
}
