using System.Globalization;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Outside;

/// <summary>What the programs of Debian's aubio-tools hear in samples at <see cref="Plucks.Rate"/>.</summary>
internal static class Aubio
{
    /// <summary>The numbers of each line that a program writes.</summary>
    public static double[][] Said(string program, float[] samples, string[] words)
    {
        var path = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.wav");
        WavFile.Write(path, samples, Plucks.Rate);
        try
        {
            return
            [
                .. OutsideProgram
                    .Run(program, ["-i", path, .. words])
                    .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                    .Select(line =>
                        line.Split(' ')
                            .Select(word => double.Parse(word, CultureInfo.InvariantCulture))
                            .ToArray()
                    ),
            ];
        }
        finally
        {
            File.Delete(path);
        }
    }
}
