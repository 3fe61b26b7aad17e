import { objectOf } from '../ledger/ledgerState.ts';
import type { Mark } from '../ledger/Ledger.ts';
import type { Surface } from '../ledger/surface.ts';
import type { Followable, Followed, FollowedTouch, StateInterval } from './followTypes.ts';
import { indexOf, surfaceOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import { wholeOf } from './surfaceWords.ts';

/** Everything that can be followed: things that must be sterile or prepared, in the order in which they came into the room. */
export function followables(log: RunLog): Followable[] {
  const { surfaces, touches, ledger } = indexOf(log);
  const found = new Map<string, { words: string; touches: number; spoiled: boolean }>();
  for (const surface of surfaces.values()) {
    if (surface.role === 'none') continue;
    const whole = wholeOf(surface);
    const entry = found.get(wholeObject(surface)) ?? { words: whole.words, touches: 0, spoiled: false };
    entry.spoiled ||= ledger.isSpoiled(surface.id);
    found.set(wholeObject(surface), entry);
  }
  for (const { a, b } of touches) {
    const objects = new Set([a, b].map((id) => wholeObject(surfaces.get(id)!)));
    for (const object of objects) {
      const entry = found.get(object);
      if (entry) entry.touches++;
    }
  }
  return [...found].map(([object, entry]) => ({ object, ...entry }));
}

/** A whole without its generation: `glove.left`, `gown:left`, `sheath:probe`. */
function wholeObject(surface: Surface): string {
  const { id } = wholeOf(surface);
  const piece = id.indexOf(':');
  return piece < 0 ? objectOf(id) : `${objectOf(id)}${id.slice(piece)}`;
}

/** Follows one surface by its id, or everything of a thing through all its generations by its `object`. */
export function follow(log: RunLog, what: { readonly surface: string } | { readonly object: string }): Followed {
  const { surfaces, touches, history } = indexOf(log);
  const parts = 'surface' in what ? [surfaceOf(log, what.surface)] : [...surfaces.values()].filter((surface) => surface.role !== 'none' && wholeObject(surface) === what.object);
  const own = new Set(parts.map(({ id }) => id));
  const followed = touches.filter(({ a, b }) => own.has(a) !== own.has(b)).map((touch): FollowedTouch => {
    const [surface, other] = own.has(touch.a) ? [touch.a, touch.b] : [touch.b, touch.a];
    const after = history.markAt(surface, touch.fromStep)!;
    return {
      touch: touch.touch, fromStep: touch.fromStep, toStep: touch.toStep, surface, surfaceWords: surfaceOf(log, surface).words, other,
      otherWords: surfaceOf(log, other).words, x: touch.x, y: touch.y, before: history.markAt(surface, touch.fromStep - 1) ?? after, after, spoils: touch.spoils,
    };
  });
  const words = parts.length === 0 ? '' : 'surface' in what ? parts[0]!.words : wholeOf(parts[0]!).words;
  return { words, touches: followed, intervals: intervalsOf(log, parts) };
}

/** The graver mark counts for a whole thing. */
const GRAVITY: readonly Mark[] = ['sterile', 'prepared', 'unsterile', 'became'];
const graver = (p: Mark, q: Mark): Mark => (GRAVITY.indexOf(q) > GRAVITY.indexOf(p) ? q : p);

/**
 * A surface counts while it is there. A thing counts as unsterile by place (a margin, off the field) only when all its parts do, since
 * the rest of it is used on.
 */
function intervalsOf(log: RunLog, parts: readonly Surface[]): StateInterval[] {
  const { history, retired } = indexOf(log);
  const end = log.steps;
  const steps = new Set<number>();
  for (const { id } of parts) {
    for (const { step } of history.historyOf(id)) steps.add(step);
    const gone = retired.get(id);
    if (gone !== undefined) steps.add(gone);
  }
  const intervals: StateInterval[] = [];
  const inOrder = [...steps].sort((p, q) => p - q);
  inOrder.forEach((fromStep, k) => {
    const marks = parts.flatMap(({ id }) => ((retired.get(id) ?? Infinity) <= fromStep ? [] : (history.markAt(id, fromStep) ?? [])));
    if (marks.length === 0) return;
    const better = marks.filter((mark) => mark !== 'unsterile');
    const mark = (better.length > 0 ? better : marks).reduce(graver);
    const toStep = inOrder[k + 1] ?? end;
    const last = intervals[intervals.length - 1];
    if (last?.mark === mark && last.toStep === fromStep) intervals[intervals.length - 1] = { ...last, toStep };
    else intervals.push({ fromStep, toStep, mark });
  });
  return intervals;
}
