using System.Text;

namespace Passagework.Cli;

/// <summary>What a command gives back: text for people or machines, or the bytes of a file.</summary>
internal sealed record Answer(string? Text, byte[] Bytes)
{
    public static Answer Of(string text) => new(text, []);

    public static Answer Of(byte[] bytes) => new(null, bytes);

    /// <summary>Prints to standard output, or writes the file that was asked for.</summary>
    public void Write(string? file, Terminal terminal)
    {
        if (file is not null)
        {
            File.WriteAllBytes(file, Text is null ? Bytes : new UTF8Encoding(false).GetBytes(Text));
        }
        else if (Text is not null)
        {
            terminal.Out.Write(Text);
        }
        else
        {
            using var output = terminal.OpenOutput();
            output.Write(Bytes);
        }
    }
}
