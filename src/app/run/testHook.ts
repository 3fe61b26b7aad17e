import { SIDES, type Side } from '../../core/base/side.ts';
import { THING_SHAPES } from '../../core/room/itemShapes.ts';
import type { AssistantDoing, RoomPicture } from '../../core/room/picture.ts';
import type { RunResult } from '../../core/run/result.ts';
import type { LiveRun } from './LiveRun.ts';
import type { StagePort } from './stagePort.ts';

interface ScreenPoint {
  readonly x: number;
  readonly y: number;
  readonly screenX: number;
  readonly screenY: number;
}

/** What browser tests may ask and do; in place only with `?test` in the address. */
export interface TrainerHook {
  stepCount(): number;
  /** Stops the clock; from then on only `advance` makes steps. */
  pause(): void;
  advance(steps: number): void;
  commandsSoFar(): LiveRun['commandsSoFar'] extends () => infer Log ? Log : never;
  result(): RunResult;
  hash(): string;
  hand(side: Side): ScreenPoint & { readonly holds: string | null };
  item(id: string): ScreenPoint;
  /** Working end of a thing: face of the probe, mouth of the packet and of the opened sheath, tip of the needle. */
  end(id: string): ScreenPoint;
  site(): ScreenPoint;
  /** What the assistant is at. */
  assistant(): AssistantDoing;
}

declare global {
  interface Window {
    trainer?: TrainerHook;
  }
}

/** Puts the hook in place; gives back what takes it away. */
export function installTestHook(live: LiveRun, stage: StagePort, room: HTMLElement): () => void {
  const at = (x: number, y: number): ScreenPoint => {
    const box = room.getBoundingClientRect();
    const point = stage.roomToScreen(x, y);
    return { x, y, screenX: box.left + point.x, screenY: box.top + point.y };
  };
  window.trainer = {
    stepCount: () => live.run.stepCount,
    pause: () => live.hold(),
    advance: (steps) => live.stepMany(steps),
    commandsSoFar: () => live.commandsSoFar(),
    result: () => live.run.result(),
    hash: () => live.run.hash(),
    hand: (side) => {
      const hand = live.current.hands[SIDES.includes(side) ? side : 'right'];
      return { ...at(hand.x, hand.y), holds: hand.holds };
    },
    item: (id) => {
      const item = live.current.items.find((candidate) => candidate.id === id);
      return at(item?.x ?? NaN, item?.y ?? NaN);
    },
    end: (id) => {
      const item = live.current.items.find((candidate) => candidate.id === id);
      if (!item) return at(NaN, NaN);
      if (item.kind === 'sheathRoll') return at(...middleOfMouth(live.current));
      const { halfLength, needleLength } = THING_SHAPES[item.kind];
      return at(item.x + item.c * (halfLength + needleLength), item.y + item.s * (halfLength + needleLength));
    },
    site: () => at(...middleOfSite(live)),
    assistant: () => live.current.assistant.doing,
  };
  return () => delete window.trainer;
}

/** Where the site lies on the skin now. */
function middleOfSite({ current }: LiveRun): [number, number] {
  const { skinX, skinY, scenario } = current;
  let nearest = 0;
  for (let k = 1; k < skinX.length; k++) {
    const wanted = scenario.room.patient.siteXM;
    if (Math.abs(skinX[k]! - wanted) < Math.abs(skinX[nearest]! - wanted)) nearest = k;
  }
  return [skinX[nearest]!, skinY[nearest]!];
}

/** Middle of the mouth of the sheath, once it is open. */
function middleOfMouth({ strands }: RoomPicture): [number, number] {
  const pocket = strands.find(({ id }) => id === 'pocket');
  return pocket ? [(pocket.x[0]! + pocket.x.at(-1)!) / 2, (pocket.y[0]! + pocket.y.at(-1)!) / 2] : [NaN, NaN];
}
