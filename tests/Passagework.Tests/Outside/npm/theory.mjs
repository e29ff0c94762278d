// Prints what the npm package "tonal" says of scales, chords, intervals and frequencies, as JSON.
import { Chord, Interval, Midi, Note, Scale } from "tonal";

const roots = ["C", "D", "E", "F", "G", "A", "B"].flatMap((letter) => [letter + "b", letter, letter + "#"]);
const scales = [
  "minor pentatonic",
  "major pentatonic",
  "minor blues",
  "major blues",
  "major",
  "dorian",
  "phrygian",
  "lydian",
  "mixolydian",
  "aeolian",
  "locrian",
  "harmonic minor",
  "melodic minor",
  "chromatic",
];
const chords = [
  "", "m", "dim", "aug", "5", "sus2", "sus4", "6", "m6", "7", "maj7", "m7", "mMaj7", "m7b5", "dim7", "7sus4",
  "9", "maj9", "m9", "add9", "7b9", "7#9", "13",
];

const spell = (names, get) =>
  Object.fromEntries(roots.map((root) => [root, Object.fromEntries(names.map((name) => [name, get(root, name)]))]));

const pitches = roots.flatMap((root) => [3, 4].map((octave) => root + octave));

console.log(
  JSON.stringify({
    scales: spell(scales, (root, name) => Scale.get(`${root} ${name}`).notes.join(" ")),
    chords: spell(chords, (root, name) => Chord.getChord(name, root).notes.join(" ")),
    midi: Object.fromEntries(pitches.map((pitch) => [pitch, Note.midi(pitch)])),
    intervals: Object.fromEntries(
      pitches.map((low) => [low, Object.fromEntries(pitches.map((high) => [high, Interval.distance(low, high)]))]),
    ),
    hertz: Array.from({ length: 128 }, (_, key) => Midi.midiToFreq(key)),
  }),
);
