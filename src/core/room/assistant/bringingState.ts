import type { Side } from '../../base/side.ts';
import type { AssistantDoing } from '../picture.ts';
import type { CordGrip } from '../sheath/cordGrip.ts';
import type { ReachPath } from './reachPath.ts';

/** What is done with the probe and its cord, one after the other. */
export type Phase = 'coming' | 'reaching' | 'lifting' | 'carrying' | 'over' | 'lowering' | 'lowered' | 'clear' | 'toEnd' | 'drawing' | 'aside' | 'lettingDown' | 'leaving';

/** The work under way. Plain data. */
export interface BringingState {
  readonly goesFor: 'probe' | 'tail';
  phase: Phase;
  readonly arm: Side;
  readonly way: 1 | -1;
  path: ReachPath | null;
  grip: CordGrip | null;
  goalX: number;
  goalY: number;
  /** How far the probe has been lowered, what hung on the cord before, and what hangs on it now (m, N). */
  loweredM: number;
  weightN: number;
  hangsN: number;
  pullN: number;
  slackM: number;
  /** Step at which the present phase began. */
  since: number;
}

/** What of it goes on when asked for again after “stop”. */
export const UNDER_WAY: Readonly<Partial<Record<Phase, 'bringing' | 'lowering'>>> = { lifting: 'bringing', carrying: 'bringing', lowering: 'lowering' };

/** What that is called. */
export const DOING: Readonly<Record<Phase, AssistantDoing>> = {
  coming: 'coming', reaching: 'reaching', lifting: 'bringingProbe', carrying: 'bringingProbe', over: 'overMouth', lowering: 'lowering', lowered: 'overMouth', clear: 'supportingCord', toEnd: 'pullingTail', drawing: 'pullingTail', aside: 'lettingCordDown', lettingDown: 'lettingCordDown', leaving: 'leaving',
};
