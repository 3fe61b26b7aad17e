import { describe, expect, it } from 'vitest';
import { doneUpTo, FieldDriver } from './FieldDriver.ts';

describe('At the start', () => {
  it('nothing is done, and gel comes first', () => {
    new FieldDriver().for(30).expectDone().expectCurrent('gel').expectHint('Take the gel packet and put gel on the site.');
  });

  it('gel and readiness are what no run can be met without', () => {
    const { tasks } = new FieldDriver().procedure.progress;
    expect(tasks.filter((one) => one.critical).map((one) => one.task)).toEqual(['gel', 'ready']);
  });

  it('a scenario without rubbish does not ask for it', () => {
    const driver = new FieldDriver({ items: [{ id: 'g', kind: 'gelPacket', xM: -0.3 }, { id: 's', kind: 'syringe', xM: 0.32 }, { id: 'n', kind: 'needleSyringe', xM: -0.22 }] });
    driver.rubbish().for(1).expectDone();
    expect(driver.procedure.progress.tasks).toHaveLength(5);
  });
});

describe('Gel', () => {
  it('is not on for less than half a packet', () => {
    new FieldDriver().gel(0.49).for(10).expectDone().expectHint('A little more gel on the site.');
  });

  it('is on at half a packet, and stays done when it is wiped off', () => {
    new FieldDriver().gel(0.5).for(0.1).expectDone('gel').gel(0).for(1).expectDone('gel');
  });
});

describe('The view', () => {
  it('needs its seconds to the step', () => {
    const driver = doneUpTo('gel').probeAtSite(0.015).forSteps(359).expectDone('gel');
    expect(driver.report('view').progress).toBeCloseTo(359 / 360, 12);
    driver.forSteps(1).expectDone('gel', 'view');
    expect(driver.report('view').doneStep).toBe(driver.lastStep);
  });

  it('is not one while the probe moves faster than allowed', () => {
    doneUpTo('gel').probeAtSite(0.016).for(20).expectDone('gel').expectHint('You are there. Now keep the probe still.');
  });

  it('is not one while the probe lies at the site by itself', () => {
    const driver = doneUpTo('gel');
    driver.scene = { ...driver.scene, probe: { heldBy: null, atSite: true, speed: 0, coupled: true, lyingOnField: true } };
    driver.for(20).expectDone('gel');
    expect(driver.procedure.progress.steadyShare).toBeNull();
  });

  it('survives an interruption of a quarter of a second, which does not count', () => {
    const driver = doneUpTo('gel').probeAtSite().for(2.5).probeAtSite(0.1).forSteps(30).probeAtSite().forSteps(59);
    driver.expectDone('gel').forSteps(1).expectDone('gel', 'view');
  });

  it('starts again after a longer one', () => {
    const driver = doneUpTo('gel').probeAtSite().for(2.9).probeAtSite(0.1).forSteps(31).probeAtSite().forSteps(359);
    driver.expectDone('gel').forSteps(1).expectDone('gel', 'view');
  });

  it('starts again after the probe left the site', () => {
    doneUpTo('gel').probeAtSite().for(2.9).holdProbe().for(0.5).probeAtSite().for(2.9).expectDone('gel');
  });

  it('goes on when the probe changes hands without leaving', () => {
    doneUpTo('gel').probeAtSite(0, 'right').for(1.5).probeAtSite(0, 'left').for(1.5).expectDone('gel', 'view');
  });

  it('has its steadiness shared out over the time at the site', () => {
    const driver = doneUpTo('gel').probeAtSite(0.2).for(1).probeAtSite().for(3).holdProbe().for(7);
    expect(driver.procedure.progress.steadyShare).toBeCloseTo(0.75, 12);
  });
});

describe('Parking', () => {
  it('is not done by the probe that lay ready from the start', () => {
    doneUpTo('gel').for(60).expectDone('gel').expectCurrent('view');
  });

  it('needs its seconds without a hand on the probe', () => {
    doneUpTo('view').letProbeLie().forSteps(479).expectDone('gel', 'view').forSteps(1).expectDone('gel', 'view', 'park');
  });

  it('starts again when the probe is touched up', () => {
    doneUpTo('view').letProbeLie().for(3.9).holdProbe().forSteps(1).letProbeLie().for(3.9).expectDone('gel', 'view');
  });

  it('is not done while the probe slides', () => {
    doneUpTo('view').letProbeSlide().for(20).expectDone('gel', 'view');
  });

  it('is undone when the probe slides off afterwards', () => {
    const driver = doneUpTo('park').letProbeSlide().for(0.6).expectDone('gel', 'view').expectCurrent('park');
    driver.expectHint('The probe slid off. Lay it where it stays, with slack in the cord.');
    driver.holdProbe().for(1).letProbeLie().for(4).expectDone('gel', 'view', 'park').expectCurrent('anaesthetic');
  });

  it('is not undone by a tremble', () => {
    doneUpTo('park').letProbeSlide().for(0.4).letProbeLie().for(1).expectDone('gel', 'view', 'park');
  });

  it('is not undone by creeping with the drape, which is no lying still either', () => {
    doneUpTo('park').letProbeSlide(0.01).for(5).expectDone('gel', 'view', 'park');
    doneUpTo('view').letProbeSlide(0.01).for(20).expectDone('gel', 'view');
  });

  it('is undone when the probe comes to rest off the field', () => {
    doneUpTo('park').letProbeSlide(0).fallen('probe').for(0.6).expectDone('gel', 'view');
  });

  it('is not undone by taking the probe up for the next task', () => {
    doneUpTo('anaesthetic').holdProbe().for(5).expectDone('gel', 'view', 'park', 'anaesthetic').expectCurrent('ready');
  });

  it('does not matter any more once probe and needle were ready', () => {
    doneUpTo('ready').letProbeSlide().for(5).expectDone('gel', 'view', 'park', 'anaesthetic', 'ready');
  });

  it('has to be done once more when there was no view yet', () => {
    const driver = doneUpTo('gel').probeAtSite().for(1).letProbeLie().for(4).expectDone('gel', 'park');
    expect(driver.report('park').outOfOrderAfter).toBe('view');
    driver.probeAtSite().for(3).expectDone('gel', 'view').letProbeLie().for(4).expectDone('gel', 'view', 'park');
    expect(driver.report('park').outOfOrderAfter).toBeNull();
  });
});

describe('The anaesthetic', () => {
  it('is not given by a drop', () => {
    doneUpTo('park').anaesthetic(0.79).for(10).expectDone('gel', 'view', 'park').expectHint('Go on with the anaesthetic until the syringe is empty.');
  });

  it('is given when four fifths are in', () => {
    doneUpTo('park').anaesthetic(0.8).for(0.1).expectDone('gel', 'view', 'park', 'anaesthetic');
  });
});

describe('Readiness', () => {
  it('needs probe and needle at the site together for its seconds', () => {
    doneUpTo('anaesthetic').probeAtSite().needle(0.03).forSteps(239).expectCurrent('ready').forSteps(1).expectCurrent('rubbish');
  });

  it('is not reached with both in one hand', () => {
    doneUpTo('anaesthetic').probeAtSite(0, 'left').needle(0.01, 'left').for(10).expectCurrent('ready');
  });

  it('is not reached with the needle lying at the site', () => {
    doneUpTo('anaesthetic').probeAtSite().needle(0.01, null).for(10).expectCurrent('ready');
  });

  it('is not reached with the tip too far away', () => {
    doneUpTo('anaesthetic').probeAtSite().needle(0.031).for(10).expectCurrent('ready');
  });

  it('is not reached with the probe in the hand but off the site', () => {
    doneUpTo('anaesthetic').holdProbe().needle(0.01).for(10).expectCurrent('ready');
  });

  it('is not reached by one after the other', () => {
    doneUpTo('anaesthetic').probeAtSite().needle(0.2).for(3).holdProbe().needle(0.01).for(3).expectCurrent('ready');
  });

  it('is not pieced together from short meetings', () => {
    const driver = doneUpTo('anaesthetic');
    for (let k = 0; k < 5; k++) driver.probeAtSite().needle(0.01).for(1.5).needle(0.2).for(0.5);
    driver.expectCurrent('ready');
  });
});

describe('Rubbish', () => {
  it('is not away while one piece is left', () => {
    doneUpTo('ready').rubbish('gauze').for(5).expectCurrent('rubbish').expectHint('Drop the gauze into the bin. Needles do not go in there.');
  });

  it('is not away when it fell to the floor', () => {
    doneUpTo('ready').rubbish('gauze').fallen('gauze').for(5).expectCurrent('rubbish').expectHint('What fell on the floor stays there. You can end the run.');
  });

  it('may be put away early, which is in order', () => {
    const driver = doneUpTo('gel').rubbish().for(0.1).expectDone('gel', 'rubbish');
    expect(driver.report('rubbish').outOfOrderAfter).toBeNull();
  });

  it('comes back when there is more of it', () => {
    doneUpTo('rubbish').expectCurrent('finished').rubbish('gauze').for(0.1).expectCurrent('rubbish').rubbish().for(0.1).expectCurrent('finished');
  });

  it('is half away with one of two pieces in the bin', () => {
    expect(doneUpTo('ready').rubbish('gel').for(0.1).report('rubbish').progress).toBe(0.5);
  });

  it('does not take sharps: they are reported', () => {
    const driver = doneUpTo('rubbish').sharps('needle').for(0.1).expectHint('All done. One thing for next time: needles belong in the sharps container.');
    expect(driver.procedure.progress.sharpsBinned).toEqual(['needle']);
  });
});

describe('Order', () => {
  it('is kept by the whole work done well', () => {
    const driver = doneUpTo('rubbish').expectDone('gel', 'view', 'park', 'anaesthetic', 'ready', 'rubbish').expectHint('All done. You can end the run.');
    const steps = driver.procedure.progress.tasks.map((one) => one.doneStep!);
    expect(steps).toEqual([...steps].sort((a, b) => a - b));
    expect(driver.procedure.progress.tasks.map((one) => one.outOfOrderAfter)).toEqual([null, null, null, null, null, null]);
  });

  it('names the first task that was left out', () => {
    const driver = new FieldDriver().anaesthetic().for(0.1).expectDone('anaesthetic').expectCurrent('gel');
    expect(driver.report('anaesthetic').outOfOrderAfter).toBe('gel');
    driver.gel().for(0.1);
    expect(driver.report('anaesthetic').outOfOrderAfter).toBe('gel');
  });

  it('names parking when the probe slid off before the anaesthetic', () => {
    const driver = doneUpTo('park').letProbeSlide().for(1).anaesthetic().for(0.1);
    expect(driver.report('anaesthetic').outOfOrderAfter).toBe('park');
  });

  it('names the view when gel is there but the picture was never held', () => {
    const driver = doneUpTo('gel').probeAtSite(0.3).needle(0.01).for(3);
    expect(driver.report('ready').outOfOrderAfter).toBe('view');
  });

  it('does not call two things in one step the wrong way round', () => {
    const driver = doneUpTo('gel').probeAtSite().for(3).letProbeLie().forSteps(479).anaesthetic().forSteps(1);
    expect(driver.report('anaesthetic').doneStep).toBe(driver.report('park').doneStep);
    expect(driver.report('anaesthetic').outOfOrderAfter).toBeNull();
  });
});

describe('Steps', () => {
  it('must rise', () => {
    const driver = new FieldDriver().forSteps(3);
    expect(() => driver.procedure.observe({ ...driver.scene, step: 2 })).toThrow('observation of step 2 after step 2');
  });
});
