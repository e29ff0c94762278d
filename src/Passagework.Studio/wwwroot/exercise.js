// What a browser must do for the exercise page: tell the note under the pointer, and the keys.
let desk = null;
let clean = [];

function listen(target, type, heard, options) {
  target.addEventListener(type, heard, options);
  clean.push(() => target.removeEventListener(type, heard, options));
}

function isTyping(target) {
  return target.closest("input, textarea, select, [contenteditable]") !== null;
}

// Left and right step a value; up and down go to its neighbour in the group; Enter opens the list.
function onAxisKey(event) {
  const control = event.target.closest("select[data-axis]");
  if (!control || event.altKey || event.ctrlKey || event.metaKey) return;
  const way = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
  if (way) {
    event.preventDefault();
    desk.invokeMethodAsync("Step", control.dataset.axis, way);
    return;
  }
  const to = { ArrowUp: -1, ArrowDown: 1 }[event.key];
  if (to) {
    event.preventDefault();
    const all = [...control.closest("li").querySelectorAll("[data-axis]")].filter((one) => one.checkVisibility());
    all[all.indexOf(control) + to]?.focus();
    return;
  }
  if (event.key === "Enter") {
    event.preventDefault();
    control.showPicker?.();
  }
}

function onScoreKey(event) {
  if (!event.target.closest("[data-score]") || isTyping(event.target) || event.ctrlKey || event.metaKey || event.altKey) return;
  const asked = { ArrowLeft: "before", ArrowRight: "after", Home: "first", End: "last" }[event.key];
  const act = { f: "finger", s: "stroke", o: "others" }[event.key.toLowerCase()];
  if (asked || act) {
    event.preventDefault();
    desk.invokeMethodAsync("ScoreKey", asked ?? act);
  }
}

// A short press on a note explains it; a longer way of the pointer is a loop, which play.js takes.
let pressed = null;
function onPress(event) {
  const note = event.target.closest?.("[data-note]");
  pressed = note && note.closest("[data-score]") ? { note: note.dataset.note, x: event.clientX } : null;
}

function onRelease(event) {
  const note = event.target.closest?.("[data-note]");
  if (pressed && note?.dataset.note === pressed.note && Math.abs(event.clientX - pressed.x) < 8)
    desk.invokeMethodAsync("ChooseNote", Number(pressed.note));
  pressed = null;
}

function onUndoKey(event) {
  if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z" || event.target.closest("input, textarea")) return;
  event.preventDefault();
  desk.invokeMethodAsync(event.shiftKey ? "RedoKey" : "UndoKey");
}

export function attach(reference) {
  desk = reference;
  listen(document, "keydown", onAxisKey);
  listen(document, "keydown", onScoreKey);
  listen(document, "keydown", onUndoKey);
  listen(document, "pointerdown", onPress);
  listen(document, "pointerup", onRelease);
}

export function moveTo(address) {
  history.replaceState(history.state, "", address);
  // The head is not live: its link to this page's content still names the address of before.
  document.querySelector("a.skip")?.setAttribute("href", `${address}#page`);
}

export function detach() {
  clean.forEach((undo) => undo());
  [desk, clean] = [null, []];
}
