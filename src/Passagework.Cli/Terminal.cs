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

    /// <summary>Says on standard error what was cut or left out.</summary>
    /// <param name="remarks">One line each.</param>
    /// <param name="name">What they belong to; empty where there is only one thing.</param>
    public void Note(IEnumerable<string> remarks, string name = "")
    {
        foreach (var remark in remarks)
        {
            Error.WriteLine(name.Length == 0 ? $"note: {remark}" : $"note: {name}: {remark}");
        }
    }

    private static StreamWriter Writer(Stream stream) =>
        new(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false))
        {
            AutoFlush = false,
            NewLine = "\n",
        };
}
