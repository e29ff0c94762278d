// Plays sounds without a gap: gives the browser their samples ahead of time, repeats them, lets one take over from
// another at a beat. All times are frames of the audio clock, so that nothing is rounded twice.
import { ALIKE, FADE, Segment, UNLIKE } from "./play-segment.js";
import { samePlace } from "./play-times.js";

const PIECE = 16384;
const AHEAD_S = 2.5;
const START_S = 0.06;
const ROOM_S = 0.09;
const LEAST_ROOM_S = 0.02;
const TICK_MS = 100;
const FADED_MS = 60;
const LOG_KEPT = 5000;

// Beyond these what the browser says about its latency cannot be (some say nothing, or what was before a pause).
const MOST_AHEAD_S = 0.03;
const MOST_LATENCY_S = 0.5;

/** Joins come so many samples before the beat, so that its stroke lies wholly in what follows: 12 ms. */
const BEFORE = 529;

export class Player {
  #context = null;
  #output = null;
  #segments = [];
  #sound = null;
  #wanted = null;
  #busy = false;
  #timer = 0;
  #run = 0;
  #told;

  /** What was given to the browser, for whoever looks into it. */
  log = [];

  /** @param told Is called with "started", "stopped" or an error. */
  constructor(told) {
    this.#told = told;
  }

  get context() {
    return this.#context;
  }

  get isPlaying() {
    return this.#segments.length > 0;
  }

  /** The sound that is played next, or now. */
  get sound() {
    return this.#wanted ?? this.#sound;
  }

  get segments() {
    return this.#segments;
  }

  /** Must be called where the user acts, or browsers stay silent. */
  wake(rate) {
    this.#context ??= new AudioContext({ sampleRate: rate, latencyHint: "interactive" });
    return this.#context.resume();
  }

  /** Fetches how the sound begins, so that it can begin at once. */
  async ready() {
    const sound = this.sound;
    await Promise.all([sound?.load(), sound && this.#piece(sound, 0)]);
  }

  async start() {
    const sound = this.sound;
    this.#sound = sound;
    this.#wanted = null;
    this.#run++;
    await this.wake(sound.rate);
    await Promise.all([sound.load(), this.#piece(sound, 0)]);
    if (this.isPlaying || sound !== this.#sound) return;
    this.#output = new GainNode(this.#context);
    this.#output.connect(this.#context.destination);
    this.#append({ sound, from: 0, at: this.#now() + Math.round(START_S * sound.rate), join: null });
    this.#timer = setInterval(() => this.#tick(), TICK_MS);
    await this.#pump();
    this.#told("started");
  }

  stop() {
    if (!this.isPlaying) return;
    clearInterval(this.#timer);
    const now = this.#context.currentTime;
    this.#output.gain.setValueCurveAtTime(ALIKE.fall, now, FADE / this.#sound.rate);
    const [output, segments, run] = [this.#output, this.#segments, this.#run];
    setTimeout(() => {
      for (const segment of segments) segment.drop();
      output.disconnect();
      if (run === this.#run) this.#context?.suspend();
    }, FADED_MS);
    this.#segments = [];
    this.#sound = this.sound;
    this.#wanted = null;
    this.#told("stopped");
  }

  /** Plays another sound from now on: from its beginning, or from the same place if something is heard. */
  async change(next) {
    this.#wanted = next;
    if (!this.isPlaying) return;
    try {
      await next.load();
      while (next === this.#wanted && this.isPlaying && !(await this.#takeOver(next))) continue;
    } catch (wrong) {
      if (next === this.#wanted) this.#fail(wrong);
    }
  }

  /** What is heard at this moment: a sound and its second; null when nothing is. */
  heard() {
    if (!this.isPlaying) return null;
    const frame = this.#heardFrame();
    const segment = this.#segments.findLast((one) => one.at <= frame) ?? this.#segments[0];
    return { sound: segment.sound, seconds: segment.sampleAt(frame) / segment.sound.rate };
  }

  async close() {
    this.stop();
    await this.#context?.close();
    this.#context = null;
  }

  #now() {
    return Math.round(this.#context.currentTime * this.#context.sampleRate);
  }

  // What leaves the loudspeaker now was computed a little earlier.
  #heardFrame() {
    const { currentTime, outputLatency = 0, sampleRate } = this.#context;
    const { contextTime, performanceTime } = this.#context.getOutputTimestamp?.() ?? {};
    const said = contextTime + (performance.now() - performanceTime) / 1000;
    const isSaid = performanceTime > 0 && said <= currentTime + MOST_AHEAD_S && said > currentTime - MOST_LATENCY_S;
    return (isSaid ? said : currentTime - outputLatency) * sampleRate;
  }

  #append({ sound, from, at, join }) {
    const to = sound.repeat ? sound.repeat.to - BEFORE : sound.samples;
    this.#segments.push(new Segment(this.#output, { sound, from, at, to, join }));
  }

  #repeat(segment) {
    segment.giveWay(segment.end, ALIKE);
    this.#append({ sound: segment.sound, from: segment.sound.repeat.from - BEFORE, at: segment.end, join: ALIKE });
  }

  #tick() {
    const now = this.#now();
    while (this.#segments.length > 1 && this.#segments[1].at + FADE < now - this.#context.sampleRate) this.#segments.shift();
    const last = this.#segments.at(-1);
    if (!last.sound.repeat && last.end < this.#heardFrame()) this.stop();
    else this.#pump();
  }

  async #pump() {
    if (this.#busy) return;
    this.#busy = true;
    try {
      while (this.isPlaying && (await this.#advance())) continue;
    } catch (wrong) {
      this.#fail(wrong);
    } finally {
      this.#busy = false;
    }
  }

  // One piece more; false when there is enough.
  async #advance() {
    const segment = this.#segments.find((one) => one.next < one.needed) ?? this.#segments.at(-1);
    if (segment.scheduledEnd > this.#now() + AHEAD_S * segment.sound.rate) return false;
    if (segment.next >= segment.needed) {
      if (segment.sound.repeat) this.#repeat(segment);
      return segment.sound.repeat !== null;
    }
    const from = segment.next;
    const buffer = await this.#piece(segment.sound, from);
    if (this.#segments.includes(segment) && segment.next === from && from < segment.needed) this.#give(segment, buffer);
    return true;
  }

  #piece(sound, from) {
    const end = sound.repeat ? sound.repeat.to - BEFORE + FADE : sound.samples;
    return sound.piece(from, Math.min(from + PIECE, end));
  }

  #give(segment, buffer) {
    const isLate = segment.scheduledEnd < this.#now();
    const target = isLate ? this.#restart(segment) : segment;
    this.log.push({
      soundId: target.sound.id,
      contextTime: target.scheduledEnd / target.sound.rate,
      frame: target.scheduledEnd,
      sampleFrom: target.next,
      sampleTo: target.next + buffer.length,
      isLate,
    });
    if (this.log.length > LOG_KEPT) this.log.shift();
    target.add(buffer);
  }

  // Samples that come too late are heard later, rather than in the wrong place; whatever was to follow is asked for anew.
  #restart(segment) {
    const last = this.#segments.at(-1);
    const after = this.#segments.splice(this.#segments.indexOf(segment) + 1);
    for (const one of after) one.drop();
    const { sound, next: from } = segment;
    segment.close();
    this.#append({ sound, from, at: this.#now() + Math.round(LEAST_ROOM_S * sound.rate), join: UNLIKE });
    if (last.sound !== sound) this.change(last.sound);
    return this.#segments.at(-1);
  }

  // False when the samples came too late for the beat and another has to be found.
  async #takeOver(next) {
    const join = this.#nextJoin(next);
    if (join === null) return true;
    await this.#piece(next, join.from);
    if (next !== this.#wanted || !this.isPlaying) return true;
    if (join.at < this.#now() + LEAST_ROOM_S * next.rate) return false;
    const before = this.#segments.filter((one) => one.at < join.at);
    for (const segment of this.#segments.slice(before.length)) segment.drop();
    before.at(-1).giveWay(join.at, UNLIKE);
    this.#segments = before;
    this.#append({ sound: next, from: join.from, at: join.at, join: UNLIKE });
    this.log.push({ soundId: next.id, contextTime: join.at / next.rate, frame: join.at, joinsAt: join.from });
    this.#sound = next;
    this.#wanted = null;
    await this.#pump();
    return true;
  }

  // The next beat at which another sound can take over, and where it is there; null when the music is over before.
  #nextJoin(next) {
    const earliest = this.#now() + Math.round(ROOM_S * next.rate);
    for (let i = 0; i < this.#segments.length; i++) {
      const segment = this.#segments[i];
      if (segment.end >= earliest) {
        const join = this.#joinWithin(segment, earliest, next);
        if (join) return join;
        if (i === this.#segments.length - 1 && segment.sound.repeat) this.#repeat(segment);
      }
    }
    return null;
  }

  #joinWithin(segment, earliest, next) {
    const { sound } = segment;
    const first = Math.max(segment.sampleAt(earliest), segment.from + FADE);
    for (const beat of sound.times.beatsFrom((first + BEFORE) / sound.rate)) {
      const sample = sound.sampleAt(beat.seconds) - BEFORE;
      if (sample > segment.to + 1) return null;
      const place = samePlace(sound, beat, next);
      if ((next.handle.music === sound.handle.music && place.kept) || beat.beat === 0) {
        const from = next.sampleAt(next.times.secondsOf(place.bar, place.beat)) - BEFORE;
        return { at: segment.at + Math.min(sample, segment.to) - segment.from, from };
      }
    }
    return null;
  }

  #fail(wrong) {
    this.stop();
    this.#told(wrong);
  }
}
