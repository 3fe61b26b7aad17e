import { describe, expect, it } from 'vitest';
import { canSee, type Looking } from '../../../../src/core/room/assistant/lineOfSight.ts';
import { layoutOf } from '../../../../src/core/room/layout.ts';
import type { Scene } from '../../../../src/core/room/scene.ts';
import { shippedScenario } from '../../../support/runOperator.ts';

const scenario = shippedScenario('quiet-room');
const scene = { scenario, layout: layoutOf(scenario) } as Scene;
/** Where the assistant stands, at the right of the screen, with the operator in the middle. */
const STANDING: Looking = { eyeX: 1.65, eyeY: 1.55, operatorX: 0, humpX: 0, humpY: 0.95 };
const sees = (x: number, y: number, more: Partial<Looking> = {}): boolean => canSee(scene, { ...STANDING, ...more }, x, y);

describe('What the assistant sees', () => {
  it.each([
    ['a glove on the rail of the near side', 0.49, 1.26],
    ['the site', -0.05, 1.11],
    ['a glove before the operator', -0.15, 1.3],
    ['a hand at the face', 0, 1.6],
  ])('%s', (_, x, y) => expect(sees(x, y)).toBe(true));

  it.each([
    ['the bed behind the patient', -0.35, 0.96],
    ['a hand beyond the operator', -0.3, 1.3],
    ['what is under the edge of the mattress', 0.2, 0.8],
    ['the kit table beyond the operator', -0.98, 0.97],
    ['the far rail while the operator leans over', -0.49, 1.26, { operatorX: -0.1 }],
  ] as const)('not %s', (_, x, y, more: Partial<Looking> = {}) => expect(sees(x, y, more)).toBe(false));

  it('the kit table, once the operator stands on its other side', () => expect(sees(-0.98, 0.97, { operatorX: -1.05 })).toBe(true));

  it('what the patient hid, once the assistant stands there', () => expect(sees(-0.35, 0.96, { eyeX: -1 })).toBe(true));
});
