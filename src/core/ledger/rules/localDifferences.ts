import type { StationId } from './station.ts';

/** A point in which local practice differs and which a scenario does not set. */
export interface LocalDifference {
  readonly setting: string;
  /** Values seen in print and in local policies. */
  readonly seen: string;
  /** How it is here: what is taken for right, or the station that it waits for. */
  readonly here: { readonly taken: string } | { readonly waitsFor: StationId };
}

/** The rest of what differs between hospitals; ask which of these hold in yours. */
export const LOCAL_DIFFERENCES: readonly LocalDifference[] = [
  { setting: 'Hand hygiene before the gown', seen: 'rub 20 to 30 s; wash 40 to 60 s; surgical preparation 2 to 5 min', here: { waitsFor: 'setUp' } },
  { setting: 'Eye protection', seen: 'asked for by the ASA in 2020; elsewhere optional; no part of the insertion bundle', here: { waitsFor: 'setUp' } },
  { setting: 'What the assistant wears', seen: 'cap and mask; everything if within the field; gloves', here: { waitsFor: 'setUp' } },
  { setting: 'Time for which an open field may stand', seen: 'no limit; 30 min; 1 to 2 h', here: { taken: 'No limit; a run is far shorter.' } },
  { setting: 'Way of gloving', seen: 'closed; open; gloves first, with less on the sleeve in one study', here: { taken: 'Closed; whoever cannot glove closed any more takes a new gown.' } },
  { setting: 'Double gloves; change after a time', seen: 'no or yes; never, after 60, 90 or 150 min', here: { taken: 'One pair; a run is shorter than any interval.' } },
  { setting: 'Skin preparation before or after gowning', seen: 'before, by the assistant; after, with a sterile applicator', here: { waitsFor: 'prepAndDrape' } },
  { setting: 'Strokes, applications and strength of the antiseptic', seen: '30 s on dry sites, 2 min on moist ones; once or twice; more than 0.5 % or 2 % chlorhexidine in alcohol', here: { waitsFor: 'prepAndDrape' } },
  { setting: 'Drying', seen: '30 s (small swab), 60 s, 3 min (large applicator), up to 1 h in hair; the label decides', here: { waitsFor: 'prepAndDrape' } },
  { setting: 'How much the drape covers', seen: 'the whole body; 80 % or more; “large”', here: { taken: 'The insertion bundle asks for the whole body; a scenario says what there was.' } },
  { setting: 'A contaminated drape', seen: 'covered; removed and replaced', here: { taken: 'Covered: taking it off may spread what is on it.' } },
  { setting: 'A drape that slid away from the site', seen: 'allowed while prepared skin is left beside the opening; never', here: { taken: 'A break once skin that was not prepared lies bare.' } },
  { setting: 'Gel for the look before', seen: 'sterile; not sterile', here: { waitsFor: 'sheath' } },
  { setting: 'Disinfection of the probe afterwards', seen: 'low level with a cover; high level after every puncture', here: { waitsFor: 'sheath' } },
  { setting: 'Who may stop the work', seen: 'the nurse; anyone', here: { taken: 'Nobody stops a run; saying it yourself is what counts.' } },
  { setting: 'Unknown answers in the insertion bundle', seen: 'count as no; left out', here: { taken: 'Count as no.' } },
];
