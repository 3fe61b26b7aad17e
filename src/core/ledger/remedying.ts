import type { RemedyId } from '../commands/command.ts';
import { change, closeAnswered } from './breakList.ts';
import type { LedgerState } from './ledgerState.ts';
import { objectOf, recordOf } from './ledgerState.ts';
import { dropTouches } from './touching.ts';

/** A surface is taken away or covered: it keeps its history, touches nothing and carries nothing on. */
export function retire(state: LedgerState, surface: string): void {
  const record = recordOf(state, surface);
  if (record.retiredStep !== null) return;
  dropTouches(state, record);
  record.retiredStep = state.step;
  closeAnswered(state);
}

/** Enters a remedy with every break that it helped to answer, by what was taken away in this step; it answers outright those by which no surface was lost. */
export function enterRemedy(state: LedgerState, remedy: RemedyId, things: readonly string[]): void {
  const objects = things.map(objectOf);
  for (const { number, spread, remedies, remediedStep } of state.breaks) {
    if (remediedStep !== null && remediedStep < state.step) continue;
    const { concerns } = state.notes[number - 1]!;
    const named = spread.some(({ surface }) => recordOf(state, surface).retiredStep === state.step);
    const answered = spread.length === 0 && concerns.some((object) => objects.includes(object));
    if (!named && !answered) continue;
    change(state, number, { remedies: remedies.includes(remedy) ? remedies : [...remedies, remedy], ...(answered ? { remediedStep: state.step } : {}) });
  }
}
