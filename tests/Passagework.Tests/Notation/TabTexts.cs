using Passagework.Notation;

namespace Passagework.Tests.Notation;

/// <summary>Small tabs for tests of reading, and what was read in short words.</summary>
internal static class TabTexts
{
    /// <summary>Six strings, all empty but the top one, which holds the given signs.</summary>
    public static string TopString(string signs) =>
        $"e|-{signs}-|\n"
        + string.Join('\n', "BGDAE".Select(label => $"{label}|-{new string('-', signs.Length)}-|"));

    /// <summary>Six strings from the top, all empty but those given.</summary>
    public static string Strings(params string[] signs) =>
        string.Join(
            '\n',
            "eBGDAE".Select(
                (label, i) => $"{label}|{(i < signs.Length ? signs[i] : new string('-', signs[0].Length))}|"
            )
        );

    public static TabImport Read(string text, TabReading? options = null) =>
        TextTab.Read(text, options).OrThrow();

    /// <summary>The fault as one line; "accepted" where there is none.</summary>
    public static string FaultOf(string text) =>
        TextTab.Read(text).TryGet(out _, out var fault) ? "accepted" : fault.ToString();

    /// <summary>Places in order, rests as r.</summary>
    public static string Places(TabImport import) =>
        string.Join(
            ' ',
            Written(import)
                .Select(entry =>
                    entry.IsRest
                        ? "r"
                        : string.Join('+', entry.With.Select(tone => tone.Place).Prepend(entry.Place))
                )
        );

    public static string Lengths(TabImport import) =>
        string.Join(' ', Written(import).Select(entry => (entry.IsRest ? "r" : "") + entry.Duration));

    public static string Slurs(TabImport import) =>
        string.Join(' ', Written(import).Select(entry => entry.Slur));

    public static string Warnings(TabImport import) => string.Join('\n', import.Warnings);

    public static string Kept(TabImport import) =>
        string.Join(
            '\n',
            import.Kept.Select(mark => $"{mark.Kind} '{mark.Text}' {mark.Line}:{mark.Column} {mark.Note}")
        );

    private static IEnumerable<Passagework.Exercises.WrittenEntry> Written(TabImport import) =>
        import.Recipe.Written?.Entries ?? [];
}
