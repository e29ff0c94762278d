namespace Passagework.Notation;

/// <summary>How MusicXML is written.</summary>
public sealed record MusicXmlWriting
{
    /// <summary>Which staves the part has.</summary>
    public ScoreStaves Staves { get; init; } = ScoreStaves.StaffAndTab;

    /// <summary>Whether the fretting fingers are written.</summary>
    public bool Fingers { get; init; } = true;

    /// <summary>Whether the picking hand's strokes are written.</summary>
    public bool Strokes { get; init; } = true;

    /// <summary>Whether group numbers are written, as groupings of musical analysis that are not printed.</summary>
    public bool Groups { get; init; } = true;
}

/// <summary>The staves of a part.</summary>
public enum ScoreStaves
{
    /// <summary>Notation above tab.</summary>
    StaffAndTab,

    /// <summary>Notation, with string and fret at each note.</summary>
    StaffOnly,

    /// <summary>Tab with stems.</summary>
    TabOnly,
}
