using System.Text;
using Passagework.Cli;

namespace Passagework.Cli.Tests;

/// <summary>Runs the command in this process with its own streams, in a folder of its own.</summary>
internal sealed class Session : IDisposable
{
    /// <summary>What the last command wrote as bytes.</summary>
    public MemoryStream Bytes { get; private set; } = new();

    public string Folder { get; } = Directory.CreateTempSubdirectory("passagework-cli-").FullName;

    public (int Code, string Out, string Error) Run(params string[] args) => RunWith("", args);

    public (int Code, string Out, string Error) RunWith(string input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        Bytes = new MemoryStream();
        var terminal = new Terminal(
            () => new MemoryStream(Encoding.UTF8.GetBytes(input)),
            () => Bytes,
            output,
            error
        );
        var code = App.Run(args, terminal);
        return (code, output.ToString(), error.ToString());
    }

    public string Write(string name, string text)
    {
        var file = Path.Combine(Folder, name);
        File.WriteAllText(file, text);
        return file;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
