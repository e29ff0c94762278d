using NAudio.Midi;
using Passagework.Exercises;
using Passagework.Tests.Notation;

namespace Passagework.Tests.Outside;

/// <summary>Our MIDI against a second independent reader, strict (NuGet package "NAudio.Midi", pinned).</summary>
public sealed class MidiLibraryTests
{
    [Fact]
    public void Every_exercise_is_read_by_the_outside_library_note_for_note()
    {
        foreach (var exercise in Library.All)
        {
            var played = MidiLines.Of(exercise.Recipe);
            using var stream = new MemoryStream(Passagework.Notation.Midi.Write(played));

            var file = new MidiFile(stream, strictChecking: true);

            var ticks = 4 * file.DeltaTicksPerQuarterNote;
            Assert.Equal((1, 2), (file.FileFormat, file.Tracks));
            Assert.Equal(
                played.Line.Notes.Select(note =>
                    $"{note.Midi} {note.Onset.ToDouble() * ticks:F6} {note.Duration.ToDouble() * ticks:F6}"
                ),
                file.Events[1]
                    .OfType<NoteOnEvent>()
                    .Where(note => note.Velocity > 0)
                    .Select(note =>
                        $"{note.NoteNumber} {(double)note.AbsoluteTime:F6} {(double)note.NoteLength:F6}"
                    )
            );
        }
    }
}
