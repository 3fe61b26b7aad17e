import { expect, it } from 'vitest';
import { newsOf, withNews } from '../../../src/app/canvas/beside/news.ts';
import { Run } from '../../../src/core/run/run.ts';
import { shippedScenario } from '../../support/runOperator.ts';

it('sends what changed of every picture of a run, and nothing when nothing did', () => {
  const run = new Run(shippedScenario('quiet-room'));
  let sent = run.picture();
  let received: unknown = structuredClone(sent);
  for (let k = 0; k < 60; k++) {
    run.step(k % 10 === 0 ? [{ type: 'hand.move', hand: 'left', xMm: 250 - k, yMm: 1200 + k }] : []);
    const picture = run.picture();
    received = withNews(received, structuredClone(newsOf(picture, sent)));
    sent = picture;
    expect(received).toEqual(structuredClone(picture));
  }
  expect(newsOf(sent, sent)).toBeUndefined();
  expect(newsOf(structuredClone({ a: [1, { b: 2 }] }), { a: [1, { b: 2 }] })).toBeUndefined();
});

it('puts changed parts of lists and records together again', () => {
  const before = { list: [1, 2, 3], rows: new Float64Array([1, 2]), deep: { kept: { a: 1 }, changed: 'x' as string | null } };
  const after = { list: [1, 5, 3], rows: new Float64Array([1, 3]), deep: { kept: before.deep.kept, changed: null } };
  const whole = withNews(before, newsOf(after, before)) as typeof after;
  expect(whole).toEqual(after);
  expect(whole.deep.kept).toBe(before.deep.kept);
  expect(withNews([1, 2], newsOf([1, 2, 3], [1, 2]))).toEqual([1, 2, 3]);
});
