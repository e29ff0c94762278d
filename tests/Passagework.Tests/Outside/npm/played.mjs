// What a second independent MusicXML reader, the npm package "musicvis-lib", hears in scores. Standard input: a JSON list
// of scores. The answer has for each its parts: bars as played (repeats written out), and the notes in the order of the
// file, tied ones as one, as [MIDI key, start in seconds, string, fret]. Grace notes are apart.
import { readFileSync } from "node:fs";
import { DOMParser } from "linkedom";
// By its path: the package as a whole needs a browser, its reader only a document. Of d3 it needs d3-array alone.
import { preprocessMusicXmlData } from "./node_modules/musicvis-lib/src/fileFormats/MusicXmlParser.js";

// It warns of each note that it can't read (quarter tones) and passes over it.
console.warn = () => {};

const part = ({ noteObjs, measureLinePositions, xmlNoteIndices }, elements) => ({
  bars: measureLinePositions.length,
  notes: noteObjs
    .filter((_, i) => !elements[xmlNoteIndices[i][0]].querySelector("grace"))
    .map(({ pitch, start, string, fret }) => [pitch, start, string ?? null, fret ?? null]),
});

const heard = (score) => {
  const page = new DOMParser().parseFromString(score, "text/xml");
  const { parts } = preprocessMusicXmlData(page);
  const pages = [...page.querySelectorAll("part")];
  return parts.map((read, i) => part(read, pages[i].querySelectorAll("note")));
};

console.log(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(heard)));
