using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>What was read from a MusicXML file.</summary>
/// <param name="Recipe">The line written note by note; fingers, strokes and lone string numbers are locks.</param>
/// <param name="Parts">All parts of the file with their voices.</param>
/// <param name="Part">Id of the part that was read.</param>
/// <param name="Voice">The voice that was read.</param>
/// <param name="LeftOut">What the line does not hold or what had to be decided, each kind once.</param>
public sealed record MusicXmlImport(
    Recipe Recipe,
    ImmutableArray<ScorePart> Parts,
    string Part,
    string Voice,
    ImmutableArray<MusicXmlRemark> LeftOut
);

/// <summary>One part of a score.</summary>
/// <param name="Id">As the file identifies it.</param>
/// <param name="Name">For people; may be empty.</param>
/// <param name="Bars">Bars.</param>
/// <param name="Unpitched">Notes without pitch, in no voice below.</param>
/// <param name="Voices">Its voices in order of appearance.</param>
public sealed record ScorePart(
    string Id,
    string Name,
    int Bars,
    int Unpitched,
    ImmutableArray<ScoreVoice> Voices
);

/// <summary>One voice of a part; notation and tab are told apart.</summary>
/// <param name="Name">As the file names it.</param>
/// <param name="IsTab">Whether it stands on a tab staff.</param>
/// <param name="Notes">Heads with a pitch, chords and tied ones counted one by one, without grace notes.</param>
/// <param name="WithPlace">How many of them say string and fret.</param>
public sealed record ScoreVoice(string Name, bool IsTab, int Notes, int WithPlace);

/// <summary>A kind of thing that was left out or decided.</summary>
/// <param name="Text">What, as a phrase without a full stop.</param>
/// <param name="FirstAt">Bar and beat where it first stands.</param>
/// <param name="Count">How often.</param>
public sealed record MusicXmlRemark(string Text, string FirstAt, int Count)
{
    /// <summary>Such as <c>bar 3, beat 2: grace note left out (4 times)</c>.</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{FirstAt}: {Text}{(Count == 1 ? "" : $" ({Count} times)")}"
        );
}
