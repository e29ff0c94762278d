namespace Passagework.Foundation;

/// <summary>Shows somebody's text inside a message of one line.</summary>
public static class Quote
{
    private const int Longest = 40;

    /// <summary>The text in quotes, cut after 40 characters, with control characters shown as a dot.</summary>
    public static string Short(string text)
    {
        var cut = text.Length > Longest ? text[..Longest] + "…" : text;
        return $"'{string.Concat(cut.Select(letter => char.IsControl(letter) ? '·' : letter))}'";
    }
}
