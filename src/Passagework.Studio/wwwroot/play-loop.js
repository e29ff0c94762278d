// Chooses bars to be repeated: by dragging over the score; a short press is left to the page.

const LEAST_PX = 10;

export class LoopDrag {
  #cursor;
  #sound;
  #chosen;
  #from = null;
  #bars = null;
  #click = new AbortController();
  #stop = new AbortController();

  /**
   * @param cursor Knows the pictures.
   * @param sound Gives the sound whose bars are meant.
   * @param chosen Is told the first and the last bar, from 0.
   */
  constructor(cursor, sound, chosen) {
    this.#cursor = cursor;
    this.#sound = sound;
    this.#chosen = chosen;
    const options = { signal: this.#stop.signal };
    document.addEventListener("pointerdown", (event) => this.#press(event), options);
    document.addEventListener("pointermove", (event) => this.#move(event), options);
    document.addEventListener("pointerup", (event) => this.#release(event), options);
    document.addEventListener("pointercancel", () => this.#end(), options);
    document.addEventListener("play-pictures", () => this.show(), options);
  }

  /** Draws the bars that are repeated, unless they are all. */
  show() {
    const handle = this.#sound()?.handle;
    const isPart = handle && handle.firstBar !== null;
    for (const picture of this.#cursor.pictures) {
      picture.loop(isPart ? (note) => this.#isIn(note, [handle.firstBar, handle.lastBar]) : null);
    }
  }

  dispose() {
    this.#click.abort();
    this.#stop.abort();
  }

  #isIn(note, [first, last]) {
    const bar = this.#sound().handle.noteBars[note];
    return bar >= first && bar <= last;
  }

  #press(event) {
    this.#click.abort();
    const container = event.target.closest?.("svg")?.closest("[data-follow]");
    const picture = this.#cursor.pictures.find((one) => one.container === container);
    if (event.button !== 0 || !picture || !this.#sound()) return;
    const note = picture.noteAt(event.clientX, event.clientY);
    if (note !== null) this.#from = { picture, note, x: event.clientX, y: event.clientY };
  }

  #move(event) {
    if (!this.#from) return;
    const { picture, note, x, y } = this.#from;
    if (!this.#bars && Math.hypot(event.clientX - x, event.clientY - y) < LEAST_PX) return;
    event.preventDefault();
    this.#letGo();
    const other = picture.noteAt(event.clientX, event.clientY) ?? note;
    const { noteBars } = this.#sound().handle;
    this.#bars = [noteBars[note], noteBars[other]].sort((a, b) => a - b);
    picture.loop((one) => this.#isIn(one, this.#bars), true);
  }

  // A finger leaves the focus where it was; to a field that has it the page would jump when the selection goes.
  #letGo() {
    if (document.activeElement?.matches("input, textarea")) document.activeElement.blur();
    getSelection()?.removeAllRanges();
  }

  #release() {
    const bars = this.#bars;
    this.#end();
    if (!bars) return;
    // The press ends in a click, which would choose a note.
    this.#click = new AbortController();
    const swallow = { capture: true, once: true, signal: this.#click.signal };
    document.addEventListener("click", (click) => click.stopPropagation(), swallow);
    this.#chosen(Math.max(0, bars[0]), Math.max(0, bars[1]));
  }

  #end() {
    this.#from = null;
    this.#bars = null;
    this.show();
  }
}
