// The play line of a page: its button and keys, what is heard, and what moves with it.
import { Cursor } from "./play-cursor.js";
import { LoopDrag } from "./play-loop.js";
import { Player } from "./play-player.js";
import { Gone, Sound } from "./play-sound.js";

const TYPED_IN = "input, select, textarea, button, a, summary, [contenteditable], [role=slider], [role=menu], dialog";

/**
 * Makes a play line play.
 * @param section The play line; it carries data-playing while something is heard.
 * @param page The component: Renew(), LoopChosen(first, last), LoopEdge(isStart, bar), Trouble(kind).
 */
export function attach(section, page) {
  return new PlayLine(section, page);
}

class PlayLine {
  #section;
  #page;
  #player;
  #cursor;
  #drag;
  #bar = 0;
  #stop = new AbortController();

  constructor(section, page) {
    this.#section = section;
    this.#page = page;
    this.#player = new Player((what) => this.#told(what));
    this.#cursor = new Cursor(this.#player);
    this.#drag = new LoopDrag(
      this.#cursor,
      () => this.#player.sound,
      (first, last) => page.invokeMethodAsync("LoopChosen", first, last),
    );
    const options = { signal: this.#stop.signal };
    const button = section.querySelector("[data-play]");
    button.addEventListener("click", () => this.toggle(), options);
    // Whoever comes near the button will press it; what fails here is said then.
    for (const near of ["pointerenter", "focus"]) {
      button.addEventListener(near, () => globalThis.AudioContext && this.#player.ready().catch(() => {}), options);
    }
    document.addEventListener("keydown", (event) => this.#key(event), options);
    globalThis.passageworkPlay = { player: this.#player, log: this.#player.log, cursor: this.#cursor };
  }

  /** What is played from now on. */
  set(handle) {
    this.#player.change(new Sound(handle));
    this.#drag.show();
  }

  async toggle() {
    if (this.#player.isPlaying) {
      this.#barHeard();
      this.#player.stop();
      return;
    }
    if (!this.#player.sound) return;
    if (!globalThis.AudioContext) {
      this.#page.invokeMethodAsync("Trouble", "no-audio");
      return;
    }
    try {
      await this.#player.start();
    } catch (wrong) {
      await this.#again(wrong);
    }
  }

  async dispose() {
    this.#stop.abort();
    this.#drag.dispose();
    await this.#player.close();
    this.#cursor.dispose();
  }

  // The studio forgets sounds that nobody played for long; it makes them anew.
  async #again(wrong) {
    try {
      if (!(wrong instanceof Gone)) throw wrong;
      const handle = await this.#page.invokeMethodAsync("Renew");
      this.#player.change(new Sound(handle));
      await this.#player.start();
    } catch (still) {
      this.#told(still);
    }
  }

  #told(what) {
    if (what === "started") {
      this.#section.dataset.playing = "true";
      this.#cursor.start();
      this.#page.invokeMethodAsync("Started");
    } else if (what === "stopped") {
      delete this.#section.dataset.playing;
      this.#cursor.stop();
    } else {
      console.warn(what);
      this.#page.invokeMethodAsync("Trouble", "lost");
    }
  }

  #key(event) {
    if (event.ctrlKey || event.altKey || event.metaKey || event.target.closest?.(TYPED_IN)) return;
    if (event.key === " " && !event.repeat) {
      event.preventDefault();
      this.toggle();
    } else if ((event.key === "[" || event.key === "]") && this.#player.sound) {
      this.#page.invokeMethodAsync("LoopEdge", event.key === "[", this.#barHeard());
    }
  }

  // Where nothing is heard the bar that was heard last.
  #barHeard() {
    const heard = this.#player.heard();
    if (heard) this.#bar = heard.sound.times.lineBarAt(heard.seconds);
    return this.#bar;
  }
}
