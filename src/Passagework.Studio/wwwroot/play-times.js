// The music of a sound in its seconds: notes, bars and beats, as the studio's time map says.

/** The place of the last thing in an ordered list that has begun; -1 before the first. */
export function lastBegun(count, hasBegun) {
  let before = -1;
  let beyond = count;
  while (beyond - before > 1) {
    const middle = (before + beyond) >> 1;
    if (hasBegun(middle)) before = middle;
    else beyond = middle;
  }
  return before;
}

export class Times {
  /** @param map The time map: countInBars, passes, notes, bars, endS. Bars count from the first of the count-in. */
  constructor(map) {
    this.notes = map.notes;
    this.passes = map.passes;
    this.bars = map.bars;
    this.countInBars = map.countInBars;
    this.endS = map.endS;
    this.beats = map.bars.flatMap((bar, number) => bar.beatsS.map((seconds, beat) => ({ seconds, bar: number, beat })));
  }

  /** Place among the notes of the one that began last; -1 before the first. */
  noteAt(seconds) {
    return lastBegun(this.notes.length, (i) => this.notes[i].onsetS <= seconds);
  }

  /** Bar, from the first of the count-in. */
  barAt(seconds) {
    return Math.max(0, lastBegun(this.bars.length, (i) => this.bars[i].startS <= seconds));
  }

  /** Bar of the line, from 0; that of the first note in the count-in. */
  lineBarAt(seconds) {
    const bar = Math.max(this.barAt(seconds), this.countInBars);
    const pass = this.passes[this.passAt(bar)];
    return pass.lineBar + bar - pass.bar;
  }

  /** The time through that a bar belongs to; 0 in the count-in. */
  passAt(bar) {
    return Math.max(0, lastBegun(this.passes.length, (i) => this.passes[i].bar <= bar));
  }

  /** Beats from a second on, in order. */
  beatsFrom(seconds) {
    return this.beats.slice(lastBegun(this.beats.length, (i) => this.beats[i].seconds < seconds) + 1);
  }

  secondsOf(bar, beat) {
    return this.bars[bar].beatsS[beat];
  }
}

/** A place after the repeated bars is where they begin again. */
function withinRepeat(times, repeats, place) {
  const { passes } = times;
  const last = passes[passes.length - 1];
  return repeats && place.bar >= last.bar ? { ...place, bar: place.bar - last.bar + passes[1].bar } : place;
}

/**
 * Where a place of one sound is in another.
 * @returns Bar and beat there, and whether it is the same beat of the line; if not, it is where the bars there begin.
 */
export function samePlace(old, place, next) {
  const from = old.times;
  const to = next.times;
  if (place.bar < from.countInBars) {
    const left = from.countInBars - place.bar;
    const kept = left <= to.countInBars && place.beat < to.bars[0].beatsS.length;
    return kept ? { bar: to.countInBars - left, beat: place.beat, kept } : { bar: to.countInBars, beat: 0, kept };
  }
  const within = withinRepeat(from, old.repeat !== null, place);
  const number = from.passAt(within.bar);
  const lineBar = from.passes[number].lineBar + within.bar - from.passes[number].bar;
  const fallback = next.repeat ? 1 : 0;
  const pass = to.passes[number < to.passes.length - fallback ? number : fallback];
  const kept =
    lineBar >= pass.lineBar && lineBar < pass.lineBar + pass.bars && within.beat < to.bars[pass.bar].beatsS.length;
  return kept ? { bar: pass.bar + lineBar - pass.lineBar, beat: within.beat, kept } : { bar: pass.bar, beat: 0, kept };
}
