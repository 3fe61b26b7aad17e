import { expect, it } from 'vitest';
import { busyRun } from '../../support/busyMinute.ts';
import { shippedScenario } from '../../support/runOperator.ts';

/**
 * State hashes after each second of a busy run in each shipped room. A change here changes what every older recording comes to:
 * raise SIMULATION_VERSION with it and say why in the commit.
 */
const GOLDEN = {
  'quiet-room': '82b59162315a84b1',
  'high-rails-short-sheath': 'cf5341abe60e8871',
  'restless-patient-head-down': '22781fc06c4f9b4b',
} as const;

it.each(Object.entries(GOLDEN))('%s comes to the same bits as when this was written', (room, hash) => {
  const { hashes } = busyRun(shippedScenario(room as keyof typeof GOLDEN), 10, 7);
  expect(hashes).toHaveLength(10);
  expect(hashes[9]).toBe(hash);
});
