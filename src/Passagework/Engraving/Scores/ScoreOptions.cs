using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Engraving.Scores;

/// <summary>How a score is engraved and what is written in it.</summary>
public sealed record ScoreOptions
{
    /// <summary>Width of a system in millimetres.</summary>
    public double WidthMm { get; init; } = 180;

    /// <summary>Height of five staff lines in millimetres; everything else follows from it.</summary>
    public double StaffMm { get; init; } = 7.0;

    /// <summary>How large words and figures stand beside the staff.</summary>
    public ScoreLetters Letters { get; init; } = ScoreLetters.Paper;

    /// <summary>
    /// Most written time on one system, as a fraction of a whole note; longer bars are cut at their beats, a single beat or
    /// note stays whole. Null for as much as fits.
    /// </summary>
    public Fraction? LongestSystem { get; init; }

    /// <summary>
    /// What columns stand on whole multiples of, in millimetres from the start of a line: the dots of a screen. 0 for wherever
    /// they fall.
    /// </summary>
    public double GridMm { get; init; }

    /// <summary>Which staves a system has.</summary>
    public ScoreLayout Layout { get; init; } = ScoreLayout.StaffAndTab;

    /// <summary>Whether fretting fingers stand beside the notes, under tab alone.</summary>
    public bool Fingers { get; init; } = true;

    /// <summary>Whether string numbers stand in circles where the string changes.</summary>
    public bool Strings { get; init; }

    /// <summary>Which strokes of the picking hand are written; p i m a are written unless this is none.</summary>
    public ShownStrokes Strokes { get; init; } = ShownStrokes.WhereNotObvious;

    /// <summary>Whether brackets with letters show the groups.</summary>
    public bool Groups { get; init; } = true;

    /// <summary>Where the counting stands under the music.</summary>
    public CountedBars Counting { get; init; } = CountedBars.First;

    /// <summary>What is said when counting.</summary>
    public CountSyllables Syllables { get; init; } = CountSyllables.Common;

    /// <summary>Whether Roman numerals tell the position at the start and at every shift.</summary>
    public bool Positions { get; init; } = true;

    /// <summary>Chord symbols.</summary>
    public ImmutableArray<ScoreChord> Chords { get; init; } = [];

    /// <summary>Words above the music.</summary>
    public ImmutableArray<ScoreWords> Words { get; init; } = [];

    /// <summary>Felt beats a minute in the tempo mark; null takes the recipe's, and writes none where it has none.</summary>
    public double? StartBpm { get; init; }

    /// <summary>The tempo aimed for, written behind an arrow; null for none.</summary>
    public double? GoalBpm { get; init; }

    /// <summary>Repeats, by bar as numbered.</summary>
    public ImmutableArray<ScoreRepeat> Repeats { get; init; } = [];

    /// <summary>Endings of repeats, by bar as numbered.</summary>
    public ImmutableArray<ScoreEnding> Endings { get; init; } = [];

    /// <summary>Whether each system but the first begins with the number of its bar.</summary>
    public bool BarNumbers { get; init; } = true;

    /// <summary>
    /// Whether a line that begins in the second half of a bar is written as a pick-up, without the rests before it; the
    /// bar after it is then bar 1.
    /// </summary>
    public bool PickUp { get; init; } = true;

    /// <summary>Whether the music begins here; the first system of a later part has no metre.</summary>
    public bool Begins { get; init; } = true;

    /// <summary>Whether the music ends here; a part before the end closes with a plain bar line.</summary>
    public bool Ends { get; init; } = true;

    /// <summary>
    /// Whether a last system may be as short as it comes out, so that those before it are full; else bars are shared
    /// out evenly.
    /// </summary>
    public bool ShortLast { get; init; }

    /// <summary>Notes whose string is bent, at most once each.</summary>
    public ImmutableArray<ScoreBend> Bends { get; init; } = [];

    /// <summary>Indexes of the notes held with vibrato.</summary>
    public ImmutableArray<int> Vibratos { get; init; } = [];
}

/// <summary>Which staves a system has.</summary>
public enum ScoreLayout
{
    /// <summary>Notation above tab, their notes in line.</summary>
    StaffAndTab,

    /// <summary>Notation.</summary>
    Staff,

    /// <summary>Tab without note values.</summary>
    Tab,

    /// <summary>Tab with stems and beams below; a half note has half a stem, a whole note none.</summary>
    TabWithRhythm,
}

/// <summary>Which strokes of the picking hand are written.</summary>
public enum ShownStrokes
{
    /// <summary>The first, at every change of string, and where a direction is repeated.</summary>
    WhereNotObvious,

    /// <summary>All.</summary>
    All,

    /// <summary>None.</summary>
    None,
}

/// <summary>Where the counting stands.</summary>
public enum CountedBars
{
    /// <summary>Under the first bar, with a pick-up before it.</summary>
    First,

    /// <summary>Under all bars.</summary>
    All,

    /// <summary>Nowhere.</summary>
    None,
}

/// <summary>Words above the music.</summary>
/// <param name="Onset">Where they begin, as a fraction of a whole note after the first bar line.</param>
/// <param name="Text">One line.</param>
public sealed record ScoreWords(Fraction Onset, string Text);
