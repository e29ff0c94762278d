using System.Text;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Importing;

/// <summary>Somebody's file, or text that was pasted.</summary>
/// <param name="FileName">Its name without folders; empty for pasted text.</param>
/// <param name="Bytes">What is in it.</param>
public sealed record Upload(string FileName, byte[] Bytes)
{
    /// <summary>The largest file that is taken, in bytes.</summary>
    public const int MostBytes = 50 << 20;

    /// <summary>The most characters of pasted text.</summary>
    public const int MostCharacters = 1 << 20;

    private const int LongestName = 100;

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
            : new Upload("", Encoding.UTF8.GetBytes(text));
    }

    private static async Task<Outcome<Upload>> Of(IFormFile file, CancellationToken stop)
    {
        var name = NameOf(file.FileName);
        if (file.Length > MostBytes)
        {
            return new Fault("the file is too large", name, "at most 50 MB");
        }

        await using var bytes = new MemoryStream((int)file.Length);
        await file.CopyToAsync(bytes, stop);
        return new Upload(name, bytes.ToArray());
    }

    // A name is only ever shown; what is no part of it, or would break a line, goes.
    private static string NameOf(string name)
    {
        var last = name[(name.LastIndexOfAny(['/', '\\']) + 1)..];
        return new string([.. last.Where(letter => !char.IsControl(letter)).Take(LongestName)]);
    }
}
