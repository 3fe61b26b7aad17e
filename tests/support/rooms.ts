import { shippedScenario } from './runOperator.ts';
import type { Scenario } from '../../src/core/scenario/schema.ts';

type Source = Record<string, Record<string, unknown>>;

/** Sets some values of one part of a scenario's source. */
const set = (source: Record<string, unknown>, part: string, values: Record<string, unknown>): void => {
  source[part] = { ...(source as Source)[part], ...values };
};

/** A short operator, whose arms come low over the field. */
const SHORT = { shoulderM: 1.26, faceM: 1.48, waistM: 1 };

/** The quiet room with the pole beyond the machine, so that a hand can come to the machine. */
export const POLE_ASIDE: Scenario = shippedScenario('quiet-room', (source) => set(source, 'room', { pole: { xM: 1.55 } }));

/** The quiet room with a short operator. */
export const SHORT_OPERATOR: Scenario = shippedScenario('quiet-room', (source) => set(source, 'operator', SHORT));

/** The same where only what an arm over the field touches is judged. */
export const TOUCH_ONLY: Scenario = shippedScenario('quiet-room', (source) => {
  set(source, 'operator', SHORT);
  set(source, 'policy', { reachOver: 'touchOnly' });
});

/** The quiet room with a tall operator and a policy that asks for hands above the waist everywhere. */
export const ABOVE_WAIST: Scenario = shippedScenario('quiet-room', (source) => {
  set(source, 'operator', { waistM: 1.15 });
  set(source, 'policy', { lowerLimit: 'waist' });
});

/** The quiet room with the cord plugged in high up, so that bare cord hangs above the waist, and the pole out of the way. */
export const HIGH_OUTLET: Scenario = shippedScenario('quiet-room', (source) => set(source, 'room', { pole: { xM: 1.55 }, machine: { xM: 1.25, outletYM: 1.4 } }));

/** High rails and a sheath without a tail that ends at the rail; cord that hung below is not judged. */
export const BARE_END: Scenario = shippedScenario('high-rails-short-sheath', (source) => {
  set(source, 'cord', { coveredM: 0.5 });
  set(source, 'policy', { sheathTailM: 0 });
  source['rulesOff'] = ['cord-hung-below-returned'];
});

/** High rails and a sheath whose last part, drawn along by hand, begins inside the rail. */
export const TAIL_INSIDE: Scenario = shippedScenario('high-rails-short-sheath', (source) => {
  set(source, 'cord', { coveredM: 0.55 });
  set(source, 'policy', { sheathTailM: 0.15 });
});

/** The quiet room with a drape that sticks poorly and remedies that take a tenth of their time. */
export const QUICK_REMEDIES: Scenario = shippedScenario('quiet-room', (source) => {
  set(source, 'policy', { remedySeconds: 0.1 });
  set(source, 'drape', { left: { gluedM: 0.03, peelNPerM: 25 } });
  source['cues'] = [];
});

/** The quiet room with an assistant who comes too close. */
export const CLUMSY_ASSISTANT: Scenario = shippedScenario('quiet-room', (source) => {
  source['assistant'] = { skill: 0 };
  source['seed'] = 9;
  source['cues'] = [];
});

/** Loading the sheath with a probe of twice the weight in a film that tears easily. */
export const HEAVY_PROBE: Scenario = shippedScenario('sheath-short', (source) => {
  set(source, 'sheath', { tearN: 2 });
  source['probe'] = { massKg: 0.3 };
});

/** Loading the sheath where nobody minds who takes a bottle. */
export const ANY_GEL: Scenario = shippedScenario('sheath-short', (source) => {
  source['rulesOff'] = ['glove-on-unsterile-item'];
});

/** Loading the sheath and then on into the field. */
export const LOAD_AND_WORK: Scenario = shippedScenario('sheath-short', (source) => {
  source['followedBy'] = ['field'];
});

/** The quiet room with its gauze as near to the outer edge of the kit table as a file may have it. */
export const EDGE_GAUZE: Scenario = shippedScenario('quiet-room', (source) => {
  source['items'] = [
    { id: 'gel', kind: 'gelPacket', xM: -0.31, rubbish: true },
    { id: 'anaesthetic', kind: 'syringe', xM: -1.02 },
    { id: 'needle', kind: 'needleSyringe', xM: -0.86 },
    { id: 'gauze', kind: 'gauze', xM: -1.19, rubbish: true },
  ];
});
