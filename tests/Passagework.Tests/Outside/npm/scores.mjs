// Counts what an independent MusicXML reader, the npm package "musicxml-io", sees in scores. Standard input: a JSON list
// of scores. The answer has for each its parts.
import { webcrypto } from "node:crypto";
import { readFileSync } from "node:fs";
import { parse } from "musicxml-io";

// Node 18 has no global crypto; the package asks for it when it makes ids.
globalThis.crypto ??= webcrypto;

const technical = (notes, kind) =>
  notes
    .flatMap((note) => note.notations ?? [])
    .filter((sign) => sign.type === "technical" && sign.technical === kind)
    .map((sign) => sign[kind]);

// Heads with a pitch, chords and tied ones counted one by one, grace and cue notes apart.
const part = ({ measures }) => {
  const notes = measures.flatMap((measure) => measure.entries).filter((entry) => entry.type === "note");
  const full = notes.filter((note) => !note.grace && !note.cue);
  const heads = full.filter((note) => note.pitch);
  return {
    bars: measures.length,
    notes: heads.length,
    unpitched: full.filter((note) => note.unpitched).length,
    strings: technical(heads, "string"),
    frets: technical(heads, "fret"),
  };
};

const counts = (score) => parse(score).parts.map(part);

console.log(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(counts)));
