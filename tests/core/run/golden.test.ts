import { expect, it } from 'vitest';
import { busyRun } from '../../support/busyMinute.ts';
import { shippedScenario } from '../../support/runOperator.ts';

/**
 * State hashes after each second of a busy run in each shipped room. A change here changes what every older recording comes to:
 * raise SIMULATION_VERSION with it and say why in the commit.
 */
const GOLDEN = {
  'quiet-room': '0a7c070b92f786e2',
  'high-rails-short-sheath': '908e8e9b1da4eabc',
  'restless-patient-head-down': '5a1455c6c5f2a4b4',
  'sheath-short': '73d46116cb2eb0a2',
} as const;

it.each(Object.entries(GOLDEN))('%s comes to the same bits as when this was written', (room, hash) => {
  const { hashes } = busyRun(shippedScenario(room as keyof typeof GOLDEN), 10, 7);
  expect(hashes).toHaveLength(10);
  expect(hashes[9]).toBe(hash);
});
