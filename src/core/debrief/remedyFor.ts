import type { RemedyId } from '../commands/command.ts';
import type { Surface } from '../ledger/surface.ts';
import { indexOf } from './logIndex.ts';
import type { RunLog } from './runLog.ts';
import { wholeOf } from './surfaceWords.ts';

/** A remedy with what it takes away or covers, by things with their generation. */
export interface RemedyChoice {
  readonly remedy: RemedyId;
  readonly things: readonly string[];
  /** "Left glove changed". */
  readonly words: string;
}

/** The remedy that answers a spoiled surface, as it could be done at that step; null where there is none (the kit table). */
export function remedyFor(log: RunLog, surface: Surface, step: number): RemedyChoice | null {
  const words = (done: string): string => {
    const text = `${wholeOf(surface).prose.replace(/^the /, '')} ${done}`;
    return text.charAt(0).toUpperCase() + text.slice(1);
  };
  const { thing } = surface;
  switch (surface.kind) {
    case 'glove':
      return { remedy: 'changeGlove', things: [thing], words: words('changed') };
    case 'sleeve':
    case 'gownFront':
    case 'knitCuff':
    case 'wrapper':
      return { remedy: 'changeGownAndGloves', things: [thing, ...thingsThere(log, 'glove', step)], words: 'Gown and gloves changed' };
    case 'sheath':
    case 'probeSheath':
      return { remedy: 'newSheath', things: [thing], words: 'Sheath replaced' };
    case 'item':
    case 'needle':
      return { remedy: 'replaceItem', things: [thing], words: words('replaced') };
    case 'drapeTop':
    case 'cover':
      return { remedy: 'coverDrape', things: [thing], words: words('covered') };
    case 'site':
    case 'preparedSkin':
      return { remedy: 'prepAndDrape', things: [thing, ...thingsThere(log, 'drapeTop', step)], words: 'Site prepared and draped again' };
    default:
      return null;
  }
}

/** Things of a kind that were in the room once that step was done. */
function thingsThere(log: RunLog, kind: Surface['kind'], step: number): string[] {
  const { surfaces, history, retired } = indexOf(log);
  const there = [...surfaces.values()].filter(({ id, kind: own }) => own === kind && history.markAt(id, step) !== undefined && (retired.get(id) ?? Infinity) > step);
  return [...new Set(there.map(({ thing }) => thing))];
}
