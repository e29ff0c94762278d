using System.Text;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>Reads a file or standard input whole, never more than is allowed.</summary>
internal static class InputFile
{
    /// <summary>The most bytes of an exercise, a player or a tab.</summary>
    public const int MostBytes = 1 << 20;

    /// <summary>The bytes of a file, or of standard input for <c>-</c>.</summary>
    public static Outcome<byte[]> Read(string name, Terminal terminal) =>
        Read(name, terminal, _ => MostBytes);

    /// <summary>The same with a limit that hangs on how the file begins.</summary>
    public static Outcome<byte[]> Read(string name, Terminal terminal, Func<byte[], int> mostBytes)
    {
        if (name != "-" && Directory.Exists(name))
        {
            return new Fault("is a folder", name, "a file");
        }

        if (name != "-" && !File.Exists(name))
        {
            return new Fault("there is no such file", name);
        }

        using var stream = name == "-" ? terminal.OpenInput() : File.OpenRead(name);
        var bytes = new MemoryStream();
        var buffer = new byte[81920];
        var most = int.MaxValue;
        int read;
        while ((read = stream.Read(buffer)) > 0)
        {
            most = bytes.Length == 0 ? mostBytes(buffer[..read]) : most;
            bytes.Write(buffer, 0, read);
            if (bytes.Length > most)
            {
                return new Fault(
                    "the file is too large",
                    name == "-" ? "" : name,
                    $"at most {most >> 20} MB"
                );
            }
        }

        return bytes.ToArray();
    }

    /// <summary>The text of a file in UTF-8.</summary>
    public static Outcome<string> ReadText(string name, Terminal terminal) =>
        Read(name, terminal).Then<string>(bytes => new UTF8Encoding(false).GetString(WithoutMark(bytes)));

    /// <summary>The bytes after a byte-order mark, where there is one.</summary>
    private static byte[] WithoutMark(byte[] bytes) => bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes[3..] : bytes;
}
