using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>A chord symbol.</summary>
/// <param name="Onset">Where it begins, as a fraction of a whole note after the first bar line.</param>
/// <param name="Chord">The chord.</param>
public sealed record ScoreChord(Fraction Onset, Chord Chord);

/// <summary>Bars that are played again.</summary>
/// <param name="First">Number of the first.</param>
/// <param name="Last">Number of the last.</param>
public sealed record ScoreRepeat(int First, int Last);

/// <summary>An ending: bars played in some of the turns.</summary>
/// <param name="First">Number of the first.</param>
/// <param name="Last">Number of the last.</param>
/// <param name="Text">Such as <c>1.</c></param>
public sealed record ScoreEnding(int First, int Last, string Text);

/// <summary>A string bent after its note is struck; of a chord that of the highest tone.</summary>
/// <param name="Note">Index of the note.</param>
/// <param name="HalfSteps">How far the pitch rises: halves from a half to 4; 2 is a whole step.</param>
/// <param name="Release">Whether it is let down again before the next note.</param>
public sealed record ScoreBend(int Note, Fraction HalfSteps, bool Release = false);
