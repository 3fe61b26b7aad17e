import { describe, expect, it } from 'vitest';
import { secondsToSteps } from '../../../src/core/base/time.ts';
import { Run } from '../../../src/core/run/run.ts';
import type { Operator } from '../../support/operator.ts';
import { runOperator, shippedScenario } from '../../support/runOperator.ts';

const room = (coaching: 'spoken' | 'silent', attentive = 1) =>
  shippedScenario('quiet-room', (source) => {
    source['coaching'] = coaching;
    source['assistant'] = { attentive };
    source['cues'] = [];
  });
const SPOKEN = room('spoken');
const SILENT = room('silent');
const BLIND = room('spoken', 0);

/** The right hand scratches the face, in full sight, and goes on. */
const scratch = (op: Operator): Operator => op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face')).palmTo('right', -0.27, 1.3);

describe('An attentive assistant', () => {
  it('asks about a break that can be seen, once, and keeps how it was answered', () => {
    const { result } = runOperator((op) => scratch(op).wait(1).send({ type: 'answer', how: 'stop' }).wait(8), SPOKEN);
    expect(result.breaks.map(({ rule }) => rule)).toEqual(['hand-on-face']);
    const [challenge, ...more] = result.challenges;
    expect(more).toEqual([]);
    expect(challenge).toMatchObject({ break: 1, answered: { how: 'stop' }, stillInTime: true });
    expect(challenge!.said.map(({ words }) => words)).toEqual(['“Stop, please. Did I see that right: right glove, fingers on the mask and face?”']);
    // Reaction and making up one's mind: 0.25 s and 0.3 to 1.2 s more.
    const delay = challenge!.step - result.breaks[0]!.step;
    expect(delay).toBeGreaterThanOrEqual(secondsToSteps(0.55) - 1);
    expect(delay).toBeLessThanOrEqual(secondsToSteps(1.45) + 1);
    expect(result.cues.filter(({ kind }) => kind === 'assistantSpeaks')).toHaveLength(1);
  });

  it('says it again with the reason when nobody answers, and then leaves it', () => {
    const { result } = runOperator((op) => scratch(op).wait(20), SPOKEN);
    const [{ said, answered }] = result.challenges as [(typeof result.challenges)[number]];
    expect(answered).toBeNull();
    expect(said).toHaveLength(2);
    expect(said[1]!.step - said[0]!.step).toBe(secondsToSteps(6));
    expect(said[1]!.words).toContain('I am concerned: right glove');
    expect(said[1]!.words).toContain('Mask, face and cap are not sterile');
  });

  it('has a shrug recorded, and sees whether the hands went on', () => {
    const { result } = runOperator((op) => {
      scratch(op);
      while (op.run.challenges.length === 0) op.wait(0.02);
      op.send({ type: 'answer', how: 'fine' });
      for (let k = 0; k < 4; k++) op.palmTo('right', -0.2, 1.35, 0.4).palmTo('right', -0.3, 1.3, 0.4);
    }, SPOKEN);
    expect(result.challenges[0]).toMatchObject({ answered: { how: 'fine' } });
  });

  it('says nothing of what the operator has said already', () => {
    const { result } = runOperator((op) => {
      op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face'));
      op.send({ type: 'notice' }).wait(6);
    }, SPOKEN);
    expect(result.challenges).toEqual([]);
  });

  it.each([['silent', SILENT], ['not attentive at all', BLIND]] as const)('says nothing when %s', (_, scenario) => {
    const { result } = runOperator((op) => scratch(op).wait(10), scenario);
    expect(result.breaks).toHaveLength(1);
    expect(result.challenges).toEqual([]);
    expect(result.cues).toEqual([]);
  });

  it('goes on from a snapshot between seeing and speaking', () => {
    const { run } = runOperator((op) => {
      op.palmTo('right', -0.25, 1.5).touch('right', 0.6, 0.8, () => op.near.gap('glove.right', 'face'));
    }, SPOKEN);
    expect(run.challenges).toEqual([]);
    const saved = structuredClone(run.snapshot());
    const goOn = (one: Run): string => {
      for (let k = 0; k < 360; k++) one.step([]);
      return `${one.hash()} ${JSON.stringify(one.challenges)}`;
    };
    const first = goOn(run);
    const fresh = new Run(run.scenario);
    fresh.restore(saved);
    expect(goOn(fresh)).toBe(first);
    expect(fresh.challenges).toHaveLength(1);
  });
});
