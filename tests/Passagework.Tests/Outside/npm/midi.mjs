// Reads MIDI files with the npm package "midi-file" and prints what is in them as JSON. Standard input: a JSON list of
// files, each a path below this folder or bytes in hexadecimal.
import { readFileSync } from "node:fs";
import midi from "midi-file";

const bytesOf = (file) => (file.startsWith("node_modules/") ? readFileSync(file) : Buffer.from(file, "hex"));

// [key, start, end, velocity, channel] of every note, in ticks; an end belongs to the first note still sounding.
const notesOf = (events) => {
  const notes = [];
  const sounding = new Map();
  let tick = 0;
  for (const event of events) {
    tick += event.deltaTime;
    const slot = `${event.channel} ${event.noteNumber}`;
    if (event.type === "noteOn") {
      const note = [event.noteNumber, tick, -1, event.velocity, event.channel];
      notes.push(note);
      sounding.set(slot, [...(sounding.get(slot) ?? []), note]);
    } else if (event.type === "noteOff") {
      const note = sounding.get(slot)?.shift();
      if (note) note[2] = tick;
    }
  }
  return notes;
};

const metaOf = (tracks, type) => tracks.flat().find((event) => event.type === type) ?? null;

const files = JSON.parse(readFileSync(0, "utf8"));
console.log(
  JSON.stringify(
    files.map((file) => {
      const { header, tracks } = midi.parseMidi(bytesOf(file));
      return {
        format: header.format,
        division: header.ticksPerBeat,
        tempo: metaOf(tracks, "setTempo")?.microsecondsPerBeat ?? 0,
        beats: metaOf(tracks, "timeSignature")?.numerator ?? 0,
        unit: metaOf(tracks, "timeSignature")?.denominator ?? 0,
        names: tracks.map((events) => events.find((event) => event.type === "trackName")?.text ?? ""),
        notes: tracks.map(notesOf),
      };
    }),
  ),
);
