import { assert } from '../base/assert.ts';
import type { StateHash } from '../base/hash.ts';
import { BroadPhase } from './broadPhase.ts';
import { TouchFinder } from './firstTouch.ts';
import { LinearSegment } from './movingSegment.ts';
import type { TrackedCapsule } from './trackedCapsule.ts';

/** Beginning or end of an episode; `a` < `b` are surface numbers, (x, y) in metres where it began. */
export interface TouchEvent {
  readonly kind: 'began' | 'ended';
  readonly touch: number;
  readonly a: number;
  readonly b: number;
  readonly x: number;
  readonly y: number;
}

export interface TouchTrackerOptions {
  /** Groups are whole numbers from 0 to `groups` - 1. */
  readonly groups: number;
  /** Which groups may touch which; asked once per pair, the lower number first. A surface never touches itself. */
  readonly mayTouch: (groupA: number, groupB: number) => boolean;
  /** An episode begins at this gap anywhere on the path of the step; metres. */
  readonly beginGapM?: number;
  /** It ends when the gap at the end of a step is above this; metres. */
  readonly endGapM?: number;
}

/** Plain data; `episodes` lists [a, b, touch, x, y] of those under way, by pair. */
export interface TouchTrackerSnapshot {
  readonly nextTouch: number;
  readonly episodes: readonly (readonly [number, number, number, number, number])[];
}

interface Episode {
  touch: number;
  readonly a: number;
  readonly b: number;
  x: number;
  y: number;
}

/** Largest number of surfaces over a whole run. */
const SURFACES_MAX = 65536;

/**
 * Keeps the episodes of touch between surfaces, found on the exact paths of each step, so that nothing fast is missed. One episode
 * per pair of surfaces: it begins when the gap is small anywhere in the step and ends only when it is clearly open at the end of
 * one, so that it does not flicker; a touch-and-go within one step gives both. Events come sorted by pair, beginnings first.
 *
 * Outlines only: a capsule wholly inside a polygon given by its edges touches nothing until it comes within the gap of an edge,
 * from whichever side; one that began outside cannot have got there without a touch.
 */
export class TouchTracker {
  private readonly allowed: Uint8Array;
  private readonly groups: number;
  private readonly beginGapM: number;
  private readonly endGapM: number;
  private readonly broad = new BroadPhase();
  private readonly finder = new TouchFinder();
  private readonly one = new LinearSegment();
  private readonly other = new LinearSegment();
  private episodes = new Map<number, Episode>();
  private nextTouch = 1;

  constructor(options: TouchTrackerOptions) {
    this.groups = options.groups;
    this.beginGapM = options.beginGapM ?? 0.0005;
    this.endGapM = options.endGapM ?? 0.003;
    assert(this.endGapM >= this.beginGapM, 'an episode ends at a wider gap than it begins');
    this.allowed = new Uint8Array(options.groups * options.groups);
    for (let a = 0; a < options.groups; a++)
      for (let b = a; b < options.groups; b++)
        if (options.mayTouch(a, b)) this.allowed[a * options.groups + b] = this.allowed[b * options.groups + a] = 1;
  }

  /** Takes one step and gives its events. A surface without a capsule in this step touches nothing any more. */
  step(capsules: readonly TrackedCapsule[]): TouchEvent[] {
    const began: Episode[] = [];
    const ended: Episode[] = [];
    const kept = new Set<number>();
    this.broad.load(capsules, this.endGapM);
    this.broad.pairs((slotA, slotB) => {
      const { broad } = this;
      if (this.allowed[broad.group[slotA]! * this.groups + broad.group[slotB]!] === 0) return;
      const a = broad.surface[slotA]!;
      const b = broad.surface[slotB]!;
      const [low, high, lowSlot, highSlot] = a < b ? [a, b, slotA, slotB] : [b, a, slotB, slotA];
      const key = low * SURFACES_MAX + high;
      if (!this.episodes.has(key)) {
        if (!this.touches(capsules, lowSlot, highSlot)) return;
        const episode = { touch: 0, a: low, b: high, x: this.finder.x, y: this.finder.y };
        began.push(episode);
        this.episodes.set(key, episode);
      }
      if (this.stillNear(capsules, lowSlot, highSlot)) kept.add(key);
    });
    for (const [key, episode] of this.episodes) if (!kept.has(key)) ended.push(episode);
    return this.report(began, ended);
  }

  /** Episodes under way. */
  get count(): number {
    return this.episodes.size;
  }

  snapshot(): TouchTrackerSnapshot {
    const episodes = [...this.episodes.values()].sort(byPair).map((e) => [e.a, e.b, e.touch, e.x, e.y] as const);
    return { nextTouch: this.nextTouch, episodes };
  }

  restore(snapshot: TouchTrackerSnapshot): void {
    this.nextTouch = snapshot.nextTouch;
    this.episodes = new Map(snapshot.episodes.map(([a, b, touch, x, y]) => [a * SURFACES_MAX + b, { a, b, touch, x, y }]));
  }

  hashInto(hash: StateHash): void {
    hash.addInt(this.nextTouch);
    for (const e of [...this.episodes.values()].sort(byPair)) hash.addInt(e.a).addInt(e.b).addInt(e.touch);
  }

  private report(began: Episode[], ended: Episode[]): TouchEvent[] {
    const events: TouchEvent[] = [];
    for (const episode of began.sort(byPair)) {
      episode.touch = this.nextTouch++;
      events.push({ kind: 'began', ...episode });
    }
    for (const episode of ended.sort(byPair)) {
      this.episodes.delete(episode.a * SURFACES_MAX + episode.b);
      events.push({ kind: 'ended', ...episode });
    }
    return events;
  }

  /** Looks for the earliest touch of any of their capsules and leaves it in `finder`. */
  private touches(capsules: readonly TrackedCapsule[], slotA: number, slotB: number): boolean {
    let [time, x, y] = [2, 0, 0];
    this.eachNearPair(capsules, slotA, slotB, () => {
      if (this.finder.find(this.one, this.other, this.beginGapM) && this.finder.time < time) ({ time, x, y } = this.finder);
      return false;
    });
    Object.assign(this.finder, { time, x, y });
    return time <= 1;
  }

  private stillNear(capsules: readonly TrackedCapsule[], slotA: number, slotB: number): boolean {
    return this.eachNearPair(capsules, slotA, slotB, () => this.finder.gapAt(this.one, this.other, 1) <= this.endGapM);
  }

  /** Puts each pair of near capsules into `one` and `other` until `enough` says so; true when it did. */
  private eachNearPair(capsules: readonly TrackedCapsule[], slotA: number, slotB: number, enough: () => boolean): boolean {
    const { broad } = this;
    for (let a = broad.first[slotA]!; a >= 0; a = broad.next[a]!) {
      let loaded = false;
      for (let b = broad.first[slotB]!; b >= 0; b = broad.next[b]!) {
        if (!broad.capsulesNear(a, b)) continue;
        if (!loaded) load(capsules[a]!, this.one);
        loaded = true;
        load(capsules[b]!, this.other);
        if (enough()) return true;
      }
    }
    return false;
  }
}

const byPair = (p: Episode, q: Episode): number => p.a - q.a || p.b - q.b;

function load(c: TrackedCapsule, into: LinearSegment): void {
  const { begin, end } = into;
  begin[0] = c.ax;
  begin[1] = c.ay;
  begin[2] = c.bx;
  begin[3] = c.by;
  end[0] = c.Ax;
  end[1] = c.Ay;
  end[2] = c.Bx;
  end[3] = c.By;
  into.radius = c.r;
}
