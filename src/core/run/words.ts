import { SIDES, type Side } from '../base/side.ts';
import type { Ledger } from '../ledger/Ledger.ts';
import { HAND_PARTS } from '../room/handShape.ts';
import type { Room } from '../room/room.ts';
import type { TouchLine } from './contract.ts';

/** Most lines of the text twin: a person listens to them one after the other. */
const LINES = 8;

/** What the hands touch now, in words, spoiling touches first; one line for each pair of part and thing. */
export function touchLines(room: Room, ledger: Ledger): TouchLine[] {
  const lines: TouchLine[] = [];
  const said = new Set<string>();
  for (const side of SIDES) {
    for (const part of HAND_PARTS) {
      const id = room.surfaces.upper[room.surfaces.slots.hand[side][part]]!;
      for (const { touch, other } of ledger.touching(id)) {
        const words = `${side} ${part}: ${shortWords(room, other)}`;
        if (said.has(words)) continue;
        said.add(words);
        lines.push({ hand: side, words, spoils: ledger.carried(touch) });
      }
    }
  }
  return lines.sort((a, b) => Number(b.spoils) - Number(a.spoils)).slice(0, LINES);
}

/** What a hand holds and whether hand or thing has lost its sterility. */
export function heldWords(room: Room, ledger: Ledger, side: Side): { what: string; state: string; broken: boolean } {
  const { hold } = room.hands[side];
  const spoiledParts = HAND_PARTS.filter((part) => ledger.isSpoiled(room.surfaces.upper[room.surfaces.slots.hand[side][part]]!));
  const broken = spoiledParts.length > 0;
  const isBare = ledger.stateOf(room.surfaces.upper[room.surfaces.slots.hand[side].fingers]!) === 'unsterile';
  const state = broken ? `${spoiledParts.join(', ')} became unsterile` : isBare ? 'bare' : 'sterile';
  if (!hold) return { what: 'empty', state, broken };
  if (hold.kind === 'node') return { what: hold.strand === 'cord' ? 'the cord' : 'the drape', state, broken };
  if (hold.kind === 'gown') return { what: room.gown!.held.isByNeck ? 'the gown by its neck' : 'the shoulder of the gown', state, broken };
  if (hold.kind === 'gloveCuff') return { what: 'the cuff of the glove', state, broken };
  const { slots, upper } = room.surfaces;
  // Fingers at the mouth lie under the folds of the open end; the inside, where the bare probe goes, is not what they touch.
  const id = upper[hold.kind === 'thing' ? slots.thing[hold.thing]!.solid : slots.end]!;
  const spoiled = ledger.isSpoiled(id) || ledger.stateOf(id) === 'unsterile';
  const what = hold.kind === 'thing' ? thingWords(room, hold.thing, id) : hold.kind === 'rim' ? 'the mouth of the sheath' : 'the open end of the sheath';
  return { what, state: spoiled && !broken ? 'not sterile' : state, broken: broken || spoiled };
}

/** A thing in the film is named for what it is, not for the stretch of film that the fingers touch. */
function thingWords({ scene, surfaces }: Room, thing: number, id: string): string {
  if (thing === scene.sheath?.roll) return 'the folded sheath';
  return scene.things[thing]!.kind === 'probe' && id === surfaces.film?.probe ? 'probe in its sheath' : surfaces.words(id);
}

function shortWords(room: Room, id: string): string {
  return room.surfaces.words(id).replace(/, \d+ cm from the (opening|probe)$/, '');
}
