using System.Collections.Immutable;

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

    /// <summary>Chord symbols over the music.</summary>
    public ImmutableArray<ScoreChord> Chords { get; init; } = [];

    /// <summary>Strings bent, of a chord that of the highest tone.</summary>
    public ImmutableArray<ScoreBend> Bends { get; init; } = [];

    /// <summary>Bars that are played again, counted from 1.</summary>
    public ImmutableArray<ScoreRepeat> Repeats { get; init; } = [];

    /// <summary>Endings of repeats, by bars counted from 1; the text begins with the turns, such as <c>1.</c> or <c>1, 2</c>.</summary>
    public ImmutableArray<ScoreEnding> Endings { get; init; } = [];
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
