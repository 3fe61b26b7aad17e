import type { Zone } from '../fact.ts';
import type { SurfaceKind } from '../surface.ts';
import type { Trigger } from './rule.ts';

const KIND_WORDS: Readonly<Record<SurfaceKind, string>> = {
  glove: 'a glove',
  sleeve: 'a gown sleeve',
  outerSleeve: 'a sleeve beyond its sterile part',
  gownFront: 'the gown front',
  face: 'mask or face',
  rail: 'a bed rail',
  pole: 'the pole',
  machine: 'the ultrasound machine',
  bed: 'bare bed',
  floor: 'the floor',
  kitTable: 'the kit table',
  tableEdge: 'the side of the kit table',
  bin: 'the bin',
  patientSkin: 'unprepared skin',
  preparedSkin: 'prepared skin',
  site: 'the site',
  drapeTop: 'the top of a drape',
  drapeUnder: 'the underside of a drape',
  sheath: 'the sheath along the cord',
  sheathTail: 'the tail of the sheath',
  bareCord: 'bare cord',
  probeSheath: 'the sheath over the probe',
  item: 'an item',
  needle: 'a needle',
  cover: 'a cover',
  bareHand: 'the assistant’s bare hand or forearm',
  bareProbe: 'the bare probe',
  sheathInside: 'the inside of the sheath',
  unsterileItem: 'a thing that is not sterile',
  knitCuff: 'a knit cuff',
  gownInside: 'the inside of the gown',
  gloveInside: 'the inside of a glove',
  passedCuff: 'a knit cuff through which a hand has gone',
  ownSkin: 'the operator’s bare skin',
  ownClothes: 'the operator’s own clothes',
  wrapper: 'the opened wrapper',
  cardEnd: 'the assistant’s part of the tie card',
  person: 'somebody who passes by',
};

const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  belowField: 'is below the level of the field, or below the waist beside it',
  outOfSight: 'cannot be seen',
  margin: 'lies in the margin',
  offField: 'has left the field',
  overField: 'is held over the field',
  armpit: 'is tucked in under the other arm',
  uncovered: 'shows beyond the glove once a hand has passed it',
};

/** More kinds than these are told as one. */
const KINDS_MAX = 8;

const either = (kinds: readonly SurfaceKind[], many: string): string => {
  if (kinds.length > KINDS_MAX) return many;
  const words = kinds.map((kind) => KIND_WORDS[kind]);
  return words.length < 2 ? words[0]! : `${words.slice(0, -1).join(', ')} or ${words.at(-1)!}`;
};

/** What sets a rule off, as one sentence. */
export function triggerWords(trigger: Trigger): string {
  const words = toldTrigger(trigger);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

function toldTrigger(trigger: Trigger): string {
  switch (trigger.kind) {
    case 'touch': {
      const kept = either(trigger.surfaces, 'anything that must be sterile');
      const met = either(trigger.against, 'such a thing that never was sterile');
      if (trigger.because === 'margin') return `${kept} touches the margin of ${met}`;
      if (trigger.because === 'offField') return `${kept} touches ${met} that had left the field${trigger.whenBack ? ', once that is back on it' : ''}`;
      return `${kept} touches ${met}`;
    }
    case 'zone':
      return `${trigger.surfaces === 'unsterile' ? 'an unsterile arm or thing' : either(trigger.surfaces, 'anything that must be sterile')} ${ZONE_WORDS[trigger.zone]}`;
    case 'drift':
      return trigger.direction === 'toward' ? 'the edge of a laid drape moves toward the site' : 'a laid drape moves away from the site until unprepared skin lies bare';
    case 'used':
      return 'gel, probe, needle or syringe is used at the site while it is unsterile';
    case 'torn':
      return 'the film of the sheath tears';
    case 'gelled':
      return 'gel that is not sterile goes into the sheath';
    case 'gloveTorn':
      return 'a glove tears';
  }
}
