using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>A part of a Standard MIDI File.</summary>
/// <param name="Name">Name of its track.</param>
/// <param name="Channel">1 to 16; 10 are drums in General MIDI.</param>
/// <param name="Program">General MIDI program, 1 to 128; null for drums.</param>
/// <param name="Notes">Its notes, in any order.</param>
public sealed record MidiVoice(string Name, int Channel, int? Program, ImmutableArray<MidiVoiceNote> Notes);

/// <summary>A note as performed, swing included.</summary>
/// <param name="At">When it begins, as a fraction of a whole note after the first bar line, at least 0; rounded to a tick.</param>
/// <param name="End">When it ends.</param>
/// <param name="Key">MIDI key, 0 to 127.</param>
/// <param name="Velocity">1 to 127.</param>
public readonly record struct MidiVoiceNote(Fraction At, Fraction End, int Key, int Velocity);
