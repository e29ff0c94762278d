using System.Text;

namespace Passagework.Cli;

/// <summary>What a command gives back: text for people or machines, or the bytes of a file, made as they are written.</summary>
internal sealed record Answer(string? Text, Action<Stream> Content)
{
    public static Answer Of(string text) => new(text, to => to.Write(new UTF8Encoding(false).GetBytes(text)));

    public static Answer Of(byte[] bytes) => new(null, to => to.Write(bytes));

    public static Answer Of(Action<Stream> content) => new(null, content);

    /// <summary>Prints to standard output, or writes the file that was asked for.</summary>
    public void Write(string? file, Terminal terminal)
    {
        if (file is not null)
        {
            using var written = File.Create(file);
            Content(written);
        }
        else if (Text is not null)
        {
            terminal.Out.Write(Text);
        }
        else
        {
            using var output = terminal.OpenOutput();
            Content(output);
        }
    }
}
