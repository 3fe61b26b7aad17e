import { expect, it } from 'vitest';
import { busyRun } from '../../support/busyMinute.ts';
import { shippedScenario } from '../../support/runOperator.ts';

/**
 * State hashes after each second of a busy run in each shipped room. A change here changes what every older recording comes to:
 * raise SIMULATION_VERSION with it and say why in the commit.
 */
const GOLDEN = {
  'quiet-room': 'b9567d8c8a11266d',
  'high-rails-short-sheath': '103c8051d0ec3c7f',
  'restless-patient-head-down': '7de85de436cfdd4f',
  'sheath-short': 'eed243828c30510d',
} as const;

it.each(Object.entries(GOLDEN))('%s comes to the same bits as when this was written', (room, hash) => {
  const { hashes } = busyRun(shippedScenario(room as keyof typeof GOLDEN), 10, 7);
  expect(hashes).toHaveLength(10);
  expect(hashes[9]).toBe(hash);
});
