import type { StateHash } from '../base/hash.ts';
import type { Contact, LedgerState, SurfaceRecord } from './ledgerState.ts';
import { emptyState, recordOf } from './ledgerState.ts';

type StoredContact = Omit<Contact, 'a' | 'b'> & { readonly a: string; readonly b: string };

/** The state of a ledger as plain data; it shares its entries of breaks and causes, which never change. */
export interface LedgerSnapshot extends Omit<LedgerState, 'surfaces' | 'contacts'> {
  readonly surfaces: readonly SurfaceRecord[];
  readonly contacts: readonly StoredContact[];
}

export const snapshotState = (state: LedgerState): LedgerSnapshot => ({
  ...state,
  justEnded: [...state.justEnded],
  causes: state.causes && [...state.causes],
  surfaces: [...state.surfaces.values()].map(copyRecord),
  contacts: [...state.contacts.values()].map((contact) => ({ ...contact, a: contact.a.surface.id, b: contact.b.surface.id })),
});

export function restoreState(snapshot: LedgerSnapshot): LedgerState {
  const { surfaces, contacts, justEnded, causes, ...rest } = snapshot;
  const state: LedgerState = { ...emptyState(), ...rest, justEnded: [...justEnded], causes: causes && [...causes] };
  for (const record of surfaces) state.surfaces.set(record.surface.id, copyRecord(record));
  for (const contact of contacts) state.contacts.set(contact.touch, { ...contact, a: recordOf(state, contact.a), b: recordOf(state, contact.b) });
  return state;
}

const copyRecord = (record: SurfaceRecord): SurfaceRecord => ({ ...record, zones: [...record.zones], touches: [...record.touches] });

const TAINTS: readonly SurfaceRecord['taint'][] = ['clean', 'nature', 'place', 'break'];

/** Mixes in all that decides how the ledger goes on. */
export function hashState(state: LedgerState, hash: StateHash): void {
  hash.addInt(state.factCount).addInt(state.contacts.size).addInt(state.causes?.length ?? 0).addInt(state.notices.length);
  for (const { surface, taint, zones, away, discarded, depth, retiredStep, touches, break: number } of state.surfaces.values()) {
    hash.addInt(surface.id.length).addInt(TAINTS.indexOf(taint)).addInt(number).addInt(depth);
    hash.addInt(zones.length).addInt((discarded ? 4 : 0) + (away ? 2 : 0) + (retiredStep === null ? 0 : 1)).addInt(touches.length);
  }
  for (const known of state.breaks) {
    hash.addText(known.rule).addInt(known.step).addInt(known.spread.length).addNumber(known.x).addNumber(known.y);
    hash.addInt(known.noticedStep ?? -1).addInt(known.remediedStep ?? -1).addInt(known.remedies.length);
  }
}
