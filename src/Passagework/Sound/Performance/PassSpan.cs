namespace Passagework.Sound.Performance;

/// <summary>One time through the bars, on the way from the first bar of the count-in to the end.</summary>
/// <param name="FirstBar">Bars before it, those of the count-in too.</param>
/// <param name="Bars">How many bars it has.</param>
/// <param name="LineBar">Bar of the line at which it begins, from 0.</param>
/// <param name="Tempo">Its tempo.</param>
public readonly record struct PassSpan(int FirstBar, int Bars, int LineBar, PassTempo Tempo);

/// <summary>One note of one time through, in seconds.</summary>
/// <param name="Note">Index of the note in the line.</param>
/// <param name="Pass">The time through, from 0.</param>
/// <param name="OnsetSeconds">When it sounds; the last string of a brushed chord.</param>
/// <param name="EndSeconds">When its written length is over, swing included.</param>
public readonly record struct TimedNote(int Note, int Pass, double OnsetSeconds, double EndSeconds);
