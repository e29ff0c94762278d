using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Bench;

/// <summary><c>anchors [FILE]</c>: the anchors of all criteria over every cell, printed as the data file that the engine embeds.</summary>
internal static class AnchorsCommand
{
    private const string How =
        "10th and 90th percentile of the raw measure, every length with equal weight; intermediate player, alternate picking";

    private const string Music = "; against the built-in repertoire";

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static int Run(string[] args)
    {
        var watch = Stopwatch.StartNew();
        var player = Player.At(2);
        var music = PieceCollection.BuiltIn(player, Technique.Alternate).OrThrow();
        var cells = new AnchorCells(new CellJudge(player, music), Technique.Alternate);
        var lengths = Enumerable
            .Range(CellSpace.Shortest, CellSpace.Longest - CellSpace.Shortest + 1)
            .ToList();
        var measured = lengths.ConvertAll(length => Measured(cells, length));
        var count = measured.Sum(values => values[0].Length);
        var words =
            $"all {count.ToString("N0", CultureInfo.InvariantCulture)} cells of 3 to 8 notes: box 1, A minor pentatonic, step 1, reach 3, repeats allowed, up and down, mean of both first strokes";
        var entries = new JsonArray();
        for (var criterion = 0; criterion < RawMeasures.Criteria.Length; criterion++)
        {
            var values = measured.ConvertAll(each => each[criterion]);
            entries.Add(Entry(RawMeasures.Criteria[criterion], values, words));
        }

        var page = new JsonObject
        {
            ["about"] =
                "Raw values between which a criterion counts from 0 to 1. Computed by: dotnet run -c Release --project bench/Passagework.Bench -- anchors",
            ["anchors"] = entries,
        };
        Write(page.ToJsonString(Indented) + "\n", args);
        Console.Error.WriteLine($"{count} cells in {watch.Elapsed.TotalSeconds:F1} s");
        return 0;
    }

    private static void Write(string text, string[] args)
    {
        if (args.Length > 0)
        {
            File.WriteAllText(args[0], text);
        }
        else
        {
            Console.Write(text);
        }
    }

    // The measures of every cell of a length; the two of the rhythm are the same for all.
    private static double[][] Measured(AnchorCells cells, int length)
    {
        var space = cells.Space(length);
        var parts = new double[(2 * space.Reach) + 1][][];
        Parallel.For(
            0,
            parts.Length,
            part => parts[part] = cells.Measure(length, AnchorCells.All(space, part - space.Reach))
        );
        var values = Enumerable
            .Range(0, parts[0].Length)
            .Select(criterion => parts.SelectMany(part => part[criterion]).ToArray())
            .ToList();
        var rhythm = CellRhythm.Of(space);
        values.Add([rhythm.Ambiguity ?? double.NaN]);
        values.Add([rhythm.ComesOutEven ?? double.NaN]);
        return [.. values];
    }

    private static JsonObject Entry(string criterion, List<double[]> values, string cells)
    {
        var (low, high) = AnchorCells.Percentiles(values);
        return new JsonObject
        {
            ["criterion"] = criterion,
            ["x0"] = Math.Round(low, 6),
            ["x1"] = Math.Round(high, 6),
            ["how"] = How + (criterion is "general-use" or "use-in-music" ? Music : ""),
            ["cells"] = cells,
            ["exact"] = true,
        };
    }
}
