namespace Passagework.Cli.Tests;

/// <summary>Small MusicXML scores of one part.</summary>
internal static class Scores
{
    /// <summary>Four quarters.</summary>
    public const string Bar =
        "<measure number=\"1\">"
        + "<note><pitch><step>E</step><octave>4</octave></pitch><duration>1</duration></note>"
        + "<note><pitch><step>G</step><octave>4</octave></pitch><duration>1</duration></note>"
        + "<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>"
        + "<note><pitch><step>C</step><octave>5</octave></pitch><duration>1</duration></note>"
        + "</measure>";

    /// <summary>A bar for drums.</summary>
    public const string DrumsOnly =
        "<measure number=\"1\"><note><unpitched><display-step>E</display-step><display-octave>4</display-octave></unpitched>"
        + "<duration>4</duration></note></measure>";

    /// <summary>A silent bar.</summary>
    public const string RestsOnly =
        "<measure number=\"1\"><note><rest/><duration>4</duration></note></measure>";

    /// <summary>A bar of four voices.</summary>
    public const string FourVoices =
        "<measure number=\"1\">"
        + "<note><pitch><step>E</step><octave>5</octave></pitch><duration>2</duration><voice>1</voice></note>"
        + "<note><pitch><step>G</step><octave>5</octave></pitch><duration>2</duration><voice>1</voice></note>"
        + "<backup><duration>4</duration></backup>"
        + "<note><pitch><step>C</step><octave>5</octave></pitch><duration>4</duration><voice>2</voice></note>"
        + "<backup><duration>4</duration></backup>"
        + "<note><pitch><step>G</step><octave>4</octave></pitch><duration>4</duration><voice>3</voice></note>"
        + "<backup><duration>4</duration></backup>"
        + "<note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration><voice>4</voice></note>"
        + "</measure>";

    /// <summary>How a part begins: 4/4, a quarter to the division.</summary>
    public const string FirstMeasure =
        "<measure number=\"1\"><attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>";

    /// <summary>A score of these bars in 4/4, a quarter to the division.</summary>
    public static string Of(string measures) =>
        "<?xml version=\"1.0\"?><score-partwise version=\"4.0\"><part-list><score-part id=\"P1\">"
        + "<part-name>Guitar</part-name></score-part></part-list><part id=\"P1\">"
        + FirstMeasure
        + measures[(measures.IndexOf('>', StringComparison.Ordinal) + 1)..]
        + "</part></score-partwise>";
}
