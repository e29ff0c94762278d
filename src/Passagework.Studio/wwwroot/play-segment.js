// A stretch of one sound at its place on the clock of the browser's audio, both counted in samples.

/** Samples of a join in which one stretch fades into the next: 10 ms. */
export const FADE = 441;

const STEPS = 65;
const curve = (shape) => Float32Array.from({ length: STEPS }, (_, i) => shape(i / (STEPS - 1)));

/** For two stretches that are alike sample by sample, such as the end of a loop and its beginning. */
export const ALIKE = { rise: curve((x) => x), fall: curve((x) => 1 - x) };

/** For two stretches whose waves do not meet: their powers add up to one. */
export const UNLIKE = {
  rise: curve((x) => Math.sin((x * Math.PI) / 2)),
  fall: curve((x) => Math.cos((x * Math.PI) / 2)),
};

export class Segment {
  #context;
  #gain;
  #sources = [];
  #isClosed = false;

  /**
   * @param output What it sounds through.
   * @param from First sample of the sound.
   * @param at The frame of the audio clock at which that one is heard.
   * @param to The sample at which the next stretch takes over, or the end of the sound.
   * @param join How it rises; null when it begins out of silence.
   */
  constructor(output, { sound, from, at, to, join }) {
    this.#context = output.context;
    this.#gain = new GainNode(this.#context, { gain: join ? 0 : 1 });
    this.#gain.connect(output);
    this.sound = sound;
    this.from = from;
    this.at = at;
    this.to = to;
    this.next = from;
    if (join) this.#gain.gain.setValueCurveAtTime(join.rise, this.#time(at), FADE / sound.rate);
  }

  /** The frame at which it is over. */
  get end() {
    return this.at + this.to - this.from;
  }

  /** The sample after the last one that it needs, its fall included. */
  get needed() {
    return this.#isClosed ? this.next : Math.min(this.to + FADE, this.sound.samples);
  }

  /** The frame up to which it is given to the browser. */
  get scheduledEnd() {
    return this.at + this.next - this.from;
  }

  /** The sample that is heard at a frame. */
  sampleAt(frame) {
    return this.from + frame - this.at;
  }

  /** Gives the browser the samples that follow those it has. */
  add(buffer) {
    const source = new AudioBufferSourceNode(this.#context, { buffer });
    source.connect(this.#gain);
    source.onended = () => {
      source.disconnect();
      this.#sources = this.#sources.filter((other) => other !== source);
      if (this.#sources.length === 0 && this.next >= this.needed) this.#gain.disconnect();
    };
    source.start(this.#time(this.scheduledEnd));
    this.#sources.push(source);
    this.next += buffer.length;
  }

  /** Lets another stretch take over at a frame. */
  giveWay(frame, join) {
    this.to = this.sampleAt(frame);
    const time = this.#time(frame);
    this.#gain.gain.cancelScheduledValues(time);
    this.#gain.gain.setValueCurveAtTime(join.fall, time, FADE / this.sound.rate);
    for (const source of this.#sources) source.stop(time + FADE / this.sound.rate);
  }

  /** Ends with what the browser has. */
  close() {
    this.to = this.next;
    this.#isClosed = true;
  }

  /** Ends at once. */
  drop() {
    this.close();
    for (const source of this.#sources) source.stop();
    this.#gain.disconnect();
  }

  #time(frame) {
    return frame / this.sound.rate;
  }
}
