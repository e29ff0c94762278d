using System.Text;

namespace Passagework.Cli;

/// <summary>Where a command reads and writes; tests put their own in its place.</summary>
internal sealed record Terminal(
    Func<Stream> OpenInput,
    Func<Stream> OpenOutput,
    TextWriter Out,
    TextWriter Error
)
{
    /// <summary>The streams of the process, in UTF-8 whatever the locale.</summary>
    public static Terminal OfProcess() =>
        new(
            Console.OpenStandardInput,
            Console.OpenStandardOutput,
            Writer(Console.OpenStandardOutput()),
            Writer(Console.OpenStandardError())
        );

    private static StreamWriter Writer(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false))
        {
            AutoFlush = false,
            NewLine = "\n",
        };
}
