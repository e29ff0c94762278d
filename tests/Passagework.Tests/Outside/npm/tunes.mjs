// Lets the npm package "musicxml-io" write tunes as MusicXML. Standard input: a JSON list of ABC files, each with any
// number of tunes. The answer has for each tune the score, plain and (in base64) packed as .mxl.
import { webcrypto } from "node:crypto";
import { readFileSync } from "node:fs";
import { parseAbcTunes, serialize, serializeCompressed } from "musicxml-io";

// Node 18 has no global crypto; the package asks for it when it makes ids.
globalThis.crypto ??= webcrypto;

const written = (tune) => ({
  score: serialize(tune),
  packed: Buffer.from(serializeCompressed(tune)).toString("base64"),
});

console.log(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).flatMap(parseAbcTunes).map(written)));
