namespace Passagework.Theory;

/// <summary>Names and degrees as they are printed.</summary>
internal static class PrintedSigns
{
    /// <summary>A note name or degree of ours with its signs as characters: Eb as E♭, bb7 as 𝄫7, C# as C♯.</summary>
    public static string Of(string name)
    {
        // The letter B is a capital, so that a small b is always a sign.
        return name.Replace("bb", "𝄫", StringComparison.Ordinal)
            .Replace("##", "𝄪", StringComparison.Ordinal)
            .Replace('b', '♭')
            .Replace('#', '♯');
    }
}
