import { expect, it } from 'vitest';
import { busyRun } from '../../support/busyMinute.ts';
import { shippedScenario } from '../../support/runOperator.ts';

/**
 * State hashes after each second of a busy run in each shipped room. A change here changes what every older recording comes to:
 * raise SIMULATION_VERSION with it and say why in the commit.
 */
const GOLDEN = {
  'quiet-room': '19892fda5eda5334',
  'high-rails-short-sheath': 'da040dd1788426d3',
  'restless-patient-head-down': '8bad4eb7d90b39fe',
  'sheath-short': 'b29c94cd1d9bea17',
} as const;

it.each(Object.entries(GOLDEN))('%s comes to the same bits as when this was written', (room, hash) => {
  const { hashes } = busyRun(shippedScenario(room as keyof typeof GOLDEN), 10, 7);
  expect(hashes).toHaveLength(10);
  expect(hashes[9]).toBe(hash);
});
