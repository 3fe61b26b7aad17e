import { describe, expect, it } from 'vitest';
import { doneUpTo, FieldDriver } from './FieldDriver.ts';

describe('The hint follows what the hands do', () => {
  it('from gel to the picture', () => {
    doneUpTo('gel').expectHint('Set the probe on the gel and hold the picture still.').probeAtSite(0.1).for(0.1).expectHint('You are there. Now keep the probe still.').probeAtSite().for(0.1).expectHint('Good picture. Hold it just there.');
  });

  it('from the picture to the parked probe', () => {
    doneUpTo('view').expectHint('Lay the probe on the field where it will stay.').letProbeLie().for(0.1).expectHint('Hands off the probe for a moment and see that it stays.').for(4).expectHint('Give the local anaesthetic at the site.');
  });

  it('to the assistant before the probe is laid down, where no clip holds the cord', () => {
    const loose = { cord: { clipN: 0 } };
    doneUpTo('view').expectRequest(null);
    doneUpTo('view', loose).expectHint('Have the cord held, and lay the probe where it will stay.').expectRequest('takeCord').letProbeLie().for(0.1).expectRequest(null);
    doneUpTo('park', loose).letProbeSlide().for(1).expectRequest(null).holdProbe().for(0.1).expectHint('The probe slid off. Have the cord held, and lay the probe where it will stay.');
  });

  it('to probe and needle, whichever is taken first', () => {
    doneUpTo('anaesthetic')
      .expectHint('Probe in one hand, needle syringe in the other: bring both to the site.')
      .needle(0.2).for(0.1).expectHint('Take the probe in your other hand.')
      .needle(0.2, null).holdProbe().for(0.1).expectHint('Take the needle syringe in your other hand.')
      .needle(0.2).for(0.1).expectHint('Set the probe on the site again.')
      .probeAtSite().for(0.1).expectHint('Bring the tip of the needle to the site.')
      .needle(0.01).for(0.1).expectHint('Both are there. Stay just like this.');
  });

  it('to the rubbish, each kind named once', () => {
    const items = [{ id: 'g1', kind: 'gelPacket', xM: -0.3, rubbish: true }, { id: 's', kind: 'syringe', xM: 0.32 }, { id: 'n', kind: 'needleSyringe', xM: -0.22 }, { id: 'w1', kind: 'gauze', xM: 0.26, rubbish: true }, { id: 'w2', kind: 'gauze', xM: 0.1, rubbish: true }];
    doneUpTo('ready', { items }).rubbish('g1', 'w1', 'w2').for(0.1).expectHint('Drop the gel packet and gauze into the bin. Needles do not go in there.');
  });

  it('to what has to be replaced before the work can go on', () => {
    new FieldDriver().fallen('gel').for(0.1).expectHint('The gel packet is off the field. Have it replaced.').fallen().for(0.1).expectHint('Take the gel packet and put gel on the site.');
    doneUpTo('view').fallen('probe').for(0.1).expectHint('The probe is off the field. Stop and have its sheath replaced.');
    doneUpTo('park').fallen('anaesthetic').for(0.1).expectHint('The syringe is off the field. Have it replaced.');
    doneUpTo('anaesthetic').fallen('needle').for(0.1).expectHint('The needle syringe is off the field. Have it replaced.');
  });

  it('not to something lost that the present task does not need', () => {
    doneUpTo('gel').fallen('gel', 'needle').for(0.1).expectHint('Set the probe on the gel and hold the picture still.');
  });

  it('in one short line, always', () => {
    for (const task of ['gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish'] as const) {
      const { hint } = doneUpTo(task).procedure.progress;
      expect(hint).toMatch(/^[A-Z][^\n]{8,90}\.$/);
    }
    expect(new FieldDriver().procedure.progress.hint).not.toBe('');
  });
});
