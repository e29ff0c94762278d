// Moves a line over the pictures of an exercise with what is heard, once a frame.
import { Picture } from "./play-picture.js";

const PICTURES = "[data-follow]";

export class Cursor {
  #player;
  #pictures = new Map();
  #watch;
  #frame = 0;
  #note = -1;
  #isStale = true;
  #steps = matchMedia("(prefers-reduced-motion: reduce)");

  constructor(player) {
    this.#player = player;
    this.#watch = new MutationObserver((changes) => {
      if (changes.some((change) => !this.#isOwn(change))) this.#isStale = true;
    });
    this.#watch.observe(document.body, { childList: true, subtree: true });
  }

  /** Index of the note that is heard; -1 for none. */
  get note() {
    return this.#note;
  }

  /** All pictures of the page. */
  get pictures() {
    if (this.#isStale) this.#find();
    return [...this.#pictures.values()];
  }

  start() {
    cancelAnimationFrame(this.#frame);
    const step = () => {
      this.#draw();
      this.#frame = requestAnimationFrame(step);
    };
    step();
  }

  stop() {
    cancelAnimationFrame(this.#frame);
    this.#note = -1;
    for (const picture of this.pictures) picture.rest();
  }

  dispose() {
    cancelAnimationFrame(this.#frame);
    this.#watch.disconnect();
    for (const picture of this.#pictures.values()) picture.dispose();
  }

  #draw() {
    const heard = this.#player.heard();
    if (!heard) return;
    const { times, repeat, rate, handle } = heard.sound;
    const at = Math.max(0, times.noteAt(heard.seconds));
    const note = times.notes[at];
    const until = times.notes[at + 1]?.onsetS ?? (repeat ? repeat.to / rate : note.endS);
    const share = Math.min(1, Math.max(0, (heard.seconds - note.onsetS) / (until - note.onsetS)));
    const hasChanged = note.index !== this.#note;
    this.#note = note.index;
    for (const picture of this.pictures) {
      picture.show(note.index, this.#steps.matches ? 0 : share);
      if (hasChanged) picture.sound(heard.seconds < note.onsetS ? [] : handle.notePlaces[note.index]);
    }
  }

  #find() {
    this.#isStale = false;
    const there = new Set(document.querySelectorAll(PICTURES));
    for (const [container, picture] of this.#pictures) {
      if (!there.has(container)) {
        picture.dispose();
        this.#pictures.delete(container);
      } else picture.stale();
    }
    for (const container of there) {
      if (!this.#pictures.has(container)) this.#pictures.set(container, new Picture(container));
    }
    document.dispatchEvent(new Event("play-pictures"));
  }

  #isOwn(change) {
    const nodes = [...change.addedNodes, ...change.removedNodes];
    return nodes.every((node) => node.classList?.contains("play-cursor") || node.classList?.contains("play-loop"));
  }
}
