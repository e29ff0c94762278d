using System.Text;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Studio.Features.Importing;

/// <summary>Somebody's file, or text that was pasted.</summary>
/// <param name="FileName">Its name without folders; empty for pasted text.</param>
/// <param name="Bytes">What is in it.</param>
public sealed record Upload(string FileName, byte[] Bytes)
{
    /// <summary>The largest request that is looked at, in bytes: more than any file that is read.</summary>
    public const int MostSent = 32 << 20;

    private const int LongestName = 100;
    private const int Beginning = 512;

    /// <summary>The largest file that is taken, in bytes; of most kinds less is.</summary>
    public static int MostBytes => MusicFile.MostOfAll;

    /// <summary>What is sent where even more was sent than is looked at.</summary>
    public static Fault FarTooLarge =>
        new("what was sent is far too large to be music", Right: $"at most {MostBytes >> 20} MB");

    /// <summary>Its name without the ending; empty for pasted text.</summary>
    public string Title => Path.GetFileNameWithoutExtension(FileName);

    /// <summary>What a form brought: a file, else pasted text.</summary>
    public static async Task<Outcome<Upload>> Of(IFormFile? file, string? text, CancellationToken stop)
    {
        if (file is { Length: > 0 })
        {
            return await Of(file, stop);
        }

        return string.IsNullOrWhiteSpace(text)
            ? new Fault("there is nothing to read", Right: "a line pasted above, or a file")
            : Fitting(new Upload("", Encoding.UTF8.GetBytes(text)));
    }

    private static async Task<Outcome<Upload>> Of(IFormFile file, CancellationToken stop)
    {
        var name = NameOf(file.FileName);
        await using var content = file.OpenReadStream();
        // What is too large for what it begins as is not read any further.
        var beginning = new byte[Math.Min(Beginning, file.Length)];
        await content.ReadExactlyAsync(beginning, stop);
        if (MusicFile.TooLarge(MusicFile.KindOf(beginning), file.Length) is { } fault)
        {
            return fault with { Where = name };
        }

        var bytes = new byte[file.Length];
        beginning.CopyTo(bytes, 0);
        await content.ReadExactlyAsync(bytes.AsMemory(beginning.Length), stop);
        return new Upload(name, bytes);
    }

    private static Outcome<Upload> Fitting(Upload text) =>
        MusicFile.TooLarge(MusicFile.KindOf(text.Bytes), text.Bytes.Length) is { } fault
            ? fault with
            {
                Where = "pasted text",
            }
            : text;

    // A name is only ever shown; what is no part of it, or would break a line, goes.
    private static string NameOf(string name)
    {
        var last = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
        return new string([.. last.Where(letter => !char.IsControl(letter)).Take(LongestName)]);
    }
}
