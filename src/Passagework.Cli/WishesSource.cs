using System.CommandLine;
using Passagework.Choosing;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>What a teacher wants, from a weights file.</summary>
internal static class WishesSource
{
    /// <summary>The option that names it.</summary>
    public static Option<string?> Option() =>
        Arguments.Text("--weights", "A file that says how much each criterion matters.", "FILE");

    /// <summary>The file's wishes; the usual ones without a file.</summary>
    public static Outcome<Wishes> Find(string? file, Terminal terminal)
    {
        if (file is null)
        {
            return Wishes.Usual;
        }

        return InputFile.ReadText(file, terminal).Then(WishesJson.Read);
    }
}
