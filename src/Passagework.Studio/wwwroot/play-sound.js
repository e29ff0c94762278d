// One sound of the studio: its times, and its samples fetched piece by piece. It never changes.
import { Times } from "./play-times.js";

const PIECES_KEPT = 180;

/** The studio does not keep the sound any more. */
export class Gone extends Error {}

export class Sound {
  #pieces = new Map();
  #times;

  /** @param handle What the studio says about it: id, sampleRate, samples, repeatFrom, repeatTo, noteBars, notePlaces. */
  constructor(handle) {
    this.handle = handle;
    this.id = handle.id;
    this.rate = handle.sampleRate;
    this.samples = handle.samples;
    this.repeat = handle.repeatFrom === null ? null : { from: handle.repeatFrom, to: handle.repeatTo };
  }

  /** Where its notes, bars and beats are; there after load(). */
  times = null;

  async load() {
    this.#times ??= this.#fetch("times").then((answer) => answer.json());
    try {
      this.times ??= new Times(await this.#times);
    } catch (wrong) {
      this.#times = undefined;
      throw wrong;
    }
    return this;
  }

  /** Samples as a buffer of one channel. */
  piece(from, to) {
    const name = `${from}-${to}`;
    const kept = this.#pieces.get(name);
    if (kept) return kept;
    const made = this.#make(name, to - from).catch((wrong) => {
      this.#pieces.delete(name);
      throw wrong;
    });
    this.#pieces.set(name, made);
    if (this.#pieces.size > PIECES_KEPT) this.#pieces.delete(this.#pieces.keys().next().value);
    return made;
  }

  /** The sample at which a beat begins. */
  sampleAt(seconds) {
    return Math.round(seconds * this.rate);
  }

  async #make(name, count) {
    const samples = new Float32Array(await (await this.#fetch(name)).arrayBuffer());
    const buffer = new AudioBuffer({ length: count, sampleRate: this.rate });
    buffer.copyToChannel(samples, 0);
    return buffer;
  }

  async #fetch(what) {
    const answer = await fetch(`/sound/${this.id}/${what}`);
    if (answer.status === 404) throw new Gone(this.id);
    if (!answer.ok) throw new Error(`${answer.status} for ${what}`);
    return answer;
  }
}
