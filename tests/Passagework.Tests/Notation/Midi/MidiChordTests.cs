using Passagework.Notation;

namespace Passagework.Tests.Notation;

/// <summary>Notes that begin together in a MIDI file.</summary>
public sealed class MidiChordTests
{
    [Fact]
    public void Chords_are_kept_under_their_top_note()
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Notes(Chord)));

        Assert.Equal("E4+G3+C3 C4", MidiFiles.Pitches(import));
        Assert.Equal(0, import.NotesLeftOut);
    }

    [Fact]
    public void Of_chords_the_top_note_alone_is_kept_when_asked()
    {
        var import = MidiFiles.Read(
            MidiFiles.Track(MidiFiles.Notes(Chord)),
            new MidiReading { TopNotesOnly = true }
        );

        Assert.Equal("E4 C4", MidiFiles.Pitches(import));
        Assert.Equal(
            [new MidiLeftOut(55, "bar 1, beat 1"), new MidiLeftOut(48, "bar 1, beat 1")],
            import.LeftOut
        );
        Assert.Equal(2, import.NotesLeftOut);
        Assert.Equal(
            "2 notes that begin together with a higher one are left out",
            MidiFiles.Warnings(import)
        );
    }

    // A semitone apart, on two strings: further down the neck than a hand is wide.
    [Fact]
    public void A_tone_that_no_hand_holds_is_left_out()
    {
        var import = MidiFiles.Read(MidiFiles.Track(MidiFiles.Notes((42, 0, 480), (41, 0, 480))));

        Assert.Equal("F#2", MidiFiles.Pitches(import));
        Assert.Equal([new MidiLeftOut(41, "bar 1, beat 1")], import.LeftOut);
    }

    private static readonly (int, int, int)[] Chord =
    [
        (48, 0, 480),
        (55, 4, 480),
        (64, 2, 480),
        (60, 484, 470),
    ];
}
