using System.Text;

namespace Passagework.Studio.Features.Exporting;

/// <summary>File names that every system takes.</summary>
internal static class FileName
{
    private const int Longest = 80;
    private const string Nameless = "exercise";

    /// <summary>The letters and digits of a title in lower case, all else as single hyphens.</summary>
    public static string Of(string title)
    {
        var name = new StringBuilder();
        foreach (var letter in title.Normalize(NormalizationForm.FormC).ToLowerInvariant())
        {
            if (char.IsLetterOrDigit(letter))
                name.Append(letter);
            else if (name.Length > 0 && name[^1] != '-')
                name.Append('-');
        }

        var text = name.ToString(0, Math.Min(name.Length, Longest)).Trim('-');
        return text.Length == 0 ? Nameless : text;
    }
}
