using System.Text;

namespace Passagework.Cli;

/// <summary>Prints to standard output, or writes the file that was asked for.</summary>
internal static class OutputTarget
{
    public static void Write(string text, string? file, Terminal terminal)
    {
        if (file is null)
        {
            terminal.Out.Write(text);
        }
        else
        {
            File.WriteAllText(file, text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }
    }
}
