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
  readonly x: number;
  readonly y: number;
  /** Step of the tracker in which its surfaces were last seen to be near; while both rest they are not looked at. */
  stamp: number;
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
  private readonly broad: BroadPhase;
  private readonly finder = new TouchFinder();
  private readonly one = new LinearSegment();
  private readonly other = new LinearSegment();
  private episodes = new Map<number, Episode>();
  private nextTouch = 1;
  private stamp = 0;

  constructor(options: TouchTrackerOptions) {
    this.groups = options.groups;
    this.beginGapM = options.beginGapM ?? 0.0005;
    this.endGapM = options.endGapM ?? 0.003;
    assert(this.endGapM >= this.beginGapM, 'an episode ends at a wider gap than it begins');
    this.broad = new BroadPhase(this.endGapM);
    this.allowed = new Uint8Array(options.groups * options.groups);
    for (let a = 0; a < options.groups; a++)
      for (let b = a; b < options.groups; b++)
        if (options.mayTouch(a, b)) this.allowed[a * options.groups + b] = this.allowed[b * options.groups + a] = 1;
  }

  /** Takes one step and gives its events. A surface without a capsule in this step touches nothing any more. */
  step(capsules: readonly TrackedCapsule[]): TouchEvent[] {
    const { broad } = this;
    const began: Episode[] = [];
    this.stamp++;
    broad.load(capsules);
    const numbers = broad.findPairs();
    for (let k = 0; k < numbers; k += 2) {
      const one = broad.pairs[k]!;
      const two = broad.pairs[k + 1]!;
      if (this.allowed[broad.group[one]! * this.groups + broad.group[two]!] === 0) continue;
      if (broad.surface[one]! < broad.surface[two]!) this.follow(capsules, one, two, began);
      else this.follow(capsules, two, one, began);
    }
    const ended: Episode[] = [];
    for (const episode of this.episodes.values()) if (episode.stamp !== this.stamp && !(broad.rests(episode.a) && broad.rests(episode.b))) ended.push(episode);
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
    this.broad.forget();
    this.nextTouch = snapshot.nextTouch;
    this.episodes = new Map(snapshot.episodes.map(([a, b, touch, x, y]) => [a * SURFACES_MAX + b, { a, b, touch, x, y, stamp: 0 }]));
  }

  hashInto(hash: StateHash): void {
    hash.addInt(this.nextTouch);
    for (const e of [...this.episodes.values()].sort(byPair)) hash.addInt(e.a).addInt(e.b).addInt(e.touch);
  }

  private report(began: Episode[], ended: Episode[]): TouchEvent[] {
    const events: TouchEvent[] = [];
    for (const episode of began.sort(byPair)) {
      episode.touch = this.nextTouch++;
      events.push(eventOf('began', episode));
    }
    for (const episode of ended.sort(byPair)) {
      this.episodes.delete(episode.a * SURFACES_MAX + episode.b);
      events.push(eventOf('ended', episode));
    }
    return events;
  }

  /** Begins or keeps the episode of two surfaces whose boxes meet, the one with the lower number first. */
  private follow(capsules: readonly TrackedCapsule[], slotA: number, slotB: number, began: Episode[]): void {
    const { broad, episodes } = this;
    const numbers = broad.findNear(slotA, slotB);
    if (numbers === 0) return;
    const a = broad.surface[slotA]!;
    const b = broad.surface[slotB]!;
    let episode = episodes.get(a * SURFACES_MAX + b);
    if (!episode) {
      const place = this.firstPlace(capsules, numbers);
      if (!place) return;
      episode = { touch: 0, a, b, ...place, stamp: 0 };
      began.push(episode);
      episodes.set(a * SURFACES_MAX + b, episode);
    }
    if (this.stillNear(capsules, numbers)) episode.stamp = this.stamp;
  }

  /** Where the earliest touch of the near capsules is, in metres, or null when there is none. */
  private firstPlace(capsules: readonly TrackedCapsule[], numbers: number): { x: number; y: number } | null {
    const { finder } = this;
    let earliest = 2;
    let place: { x: number; y: number } | null = null;
    for (let k = 0; k < numbers; k += 2) {
      this.load(capsules, k);
      if (!finder.find(this.one, this.other, this.beginGapM) || finder.time >= earliest) continue;
      earliest = finder.time;
      place = { x: finder.x, y: finder.y };
    }
    return place;
  }

  private stillNear(capsules: readonly TrackedCapsule[], numbers: number): boolean {
    for (let k = 0; k < numbers; k += 2) {
      this.load(capsules, k);
      if (this.finder.gapAt(this.one, this.other, 1) <= this.endGapM) return true;
    }
    return false;
  }

  private load(capsules: readonly TrackedCapsule[], k: number): void {
    fill(this.one, capsules[this.broad.near[k]!]!);
    fill(this.other, capsules[this.broad.near[k + 1]!]!);
  }
}

const eventOf = (kind: TouchEvent['kind'], { touch, a, b, x, y }: Episode): TouchEvent => ({ kind, touch, a, b, x, y });
const byPair = (p: Episode, q: Episode): number => p.a - q.a || p.b - q.b;

function fill(into: LinearSegment, c: TrackedCapsule): void {
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
