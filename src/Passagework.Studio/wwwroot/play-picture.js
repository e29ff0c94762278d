// One picture of the exercise: where its notes are, the line that moves over them, and the bars of the loop.

const NOTE = "[data-note]";
const PLACE = "[data-place]";

const div = (className) => Object.assign(document.createElement("div"), { className, hidden: true });

export class Picture {
  #container;
  #cursor = div("play-cursor");
  #loop = [];
  #notes = null;
  #systems = [];
  #watch;
  #shown = { note: -1, places: [] };

  /** @param container An element with data-follow; its notes carry data-note, places of a neck data-place. */
  constructor(container) {
    this.#container = container;
    this.#cursor.setAttribute("aria-hidden", "true");
    container.append(this.#cursor);
    this.#watch = new ResizeObserver(() => this.stale());
    this.#watch.observe(container);
  }

  get container() {
    return this.#container;
  }

  /** What is drawn may have moved. */
  stale() {
    this.#notes = null;
  }

  /** Puts the line between a note and the next one of its system. */
  show(note, share) {
    this.#measure();
    const here = this.#notes.get(note);
    this.#cursor.hidden = !here;
    if (!here) return;
    const after = this.#notes.get(note + 1);
    const target = after?.system === here.system ? after.x : Math.max(here.right, here.system.right);
    const x = here.x + share * (target - here.x);
    this.#cursor.style.transform = `translate(${x.toFixed(1)}px, ${here.system.top.toFixed(1)}px)`;
    this.#cursor.style.height = `${(here.system.bottom - here.system.top).toFixed(1)}px`;
    this.#cursor.dataset.at = note;
    if (this.#shown.note >= 0 && this.#notes.get(this.#shown.note)?.system !== here.system) this.#follow(here.system);
    this.#shown.note = note;
  }

  /** Marks places that sound. */
  sound(places) {
    for (const mark of this.#shown.places) mark.classList.remove("sounding");
    this.#shown.places = places.flatMap((place) => [
      ...this.#container.querySelectorAll(`${PLACE.slice(0, -1)}="${place}"]`),
    ]);
    for (const mark of this.#shown.places) mark.classList.add("sounding");
  }

  /** Shows nothing any more. */
  rest() {
    this.#cursor.hidden = true;
    this.#shown.note = -1;
    this.sound([]);
  }

  /** The note nearest to a point of the window; null beside the music. */
  noteAt(x, y) {
    this.#measure();
    const frame = this.#container.getBoundingClientRect();
    const [left, top] = [x - frame.left, y - frame.top];
    const system = this.#systems.find((one) => top >= one.top - 20 && top <= one.bottom + 20);
    if (!system) return null;
    const away = (note) => Math.abs(this.#notes.get(note).x - left);
    return system.notes.reduce((best, note) => (away(note) < away(best) ? note : best));
  }

  /** Draws the loop over notes for which it is asked; none for null. */
  loop(isIn, isBeingDrawn = false) {
    this.#measure();
    for (const one of this.#loop) one.remove();
    this.#loop = [];
    for (const system of isIn ? this.#systems : []) {
      const notes = system.notes.filter(isIn).map((note) => this.#notes.get(note));
      if (notes.length > 0) this.#loop.push(this.#band(system, notes, isBeingDrawn));
    }
    this.#container.append(...this.#loop);
  }

  dispose() {
    this.rest();
    this.loop(null);
    this.#watch.disconnect();
    this.#cursor.remove();
  }

  #band(system, notes, isBeingDrawn) {
    const band = div(isBeingDrawn ? "play-loop drawn" : "play-loop");
    const left = Math.min(...notes.map((note) => note.left));
    const right = Math.max(...notes.map((note) => note.right));
    band.hidden = false;
    band.setAttribute("aria-hidden", "true");
    Object.assign(band.style, {
      left: `${left}px`,
      top: `${system.top}px`,
      width: `${right - left}px`,
      height: `${system.bottom - system.top}px`,
    });
    return band;
  }

  // Of a note's marks the first is where it is written; all together say how high its system is.
  #measure() {
    if (this.#notes) return;
    const frame = this.#container.getBoundingClientRect();
    this.#notes = new Map();
    for (const mark of this.#container.querySelectorAll(NOTE)) {
      const box = mark.getBoundingClientRect();
      const [left, right] = [box.left - frame.left, box.right - frame.left];
      const [top, bottom] = [box.top - frame.top, box.bottom - frame.top];
      const known = this.#notes.get(Number(mark.dataset.note));
      const x = mark.dataset.x ? left + Number(mark.dataset.x) : (left + right) / 2;
      if (!known) this.#notes.set(Number(mark.dataset.note), { x, left, right, top, bottom });
      else Object.assign(known, { top: Math.min(known.top, top), bottom: Math.max(known.bottom, bottom) });
    }
    this.#arrange();
  }

  #arrange() {
    this.#systems = [];
    for (const [number, note] of [...this.#notes].sort(([a], [b]) => a - b)) {
      let system = this.#systems.at(-1);
      if (!system || note.x < system.x) {
        system = { notes: [], top: note.top, bottom: note.bottom, right: note.right };
        this.#systems.push(system);
      }
      system.notes.push(number);
      system.x = note.x;
      system.top = Math.min(system.top, note.top);
      system.bottom = Math.max(system.bottom, note.bottom);
      system.right = Math.max(system.right, note.right);
      note.system = system;
    }
  }

  // Only where the eye has followed so far: whoever looks elsewhere is left there.
  #follow(system) {
    const top = this.#container.getBoundingClientRect().top;
    const before = this.#notes.get(this.#shown.note)?.system;
    const isSeen = (one) => one && top + one.top >= 0 && top + one.bottom <= innerHeight - FOOT;
    if (!isSeen(before) || isSeen(system)) return;
    const behavior = matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth";
    scrollBy({ top: top + system.top - FOOT, behavior });
  }
}

/** Pixels at the lower edge of the window that the play line covers. */
const FOOT = 80;
