using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>What is played: a line with a fingering and a stroke plan.</summary>
/// <param name="Line">The line; <see cref="PlayedNote"/> holds the places, also those that the programme chose.</param>
/// <param name="Notes">One for each note of the line, in the same order.</param>
public sealed record Realization(Line Line, ImmutableArray<PlayedNote> Notes);

/// <summary>How one note is played.</summary>
/// <param name="Note">The note of the line.</param>
/// <param name="Place">String and fret.</param>
/// <param name="Finger">Fretting finger 1 to 4; 0 for an open string.</param>
/// <param name="Position">Fret of the first finger while the note sounds; 1 where nothing is fretted.</param>
/// <param name="Stroke">The picking hand's action.</param>
public sealed record PlayedNote(LineNote Note, Place Place, int Finger, int Position, Stroke Stroke);
