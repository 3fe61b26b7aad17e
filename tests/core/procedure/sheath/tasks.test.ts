import { describe, expect, it } from 'vitest';
import { SHEATH_TASKS } from '../../../../src/core/procedure/observation.ts';
import { FOLDED, loadedUpTo, SheathDriver } from './SheathDriver.ts';

describe('Loading the sheath, done well', () => {
  it('comes to its end with nothing out of order', () => {
    const driver = loadedUpTo('laidDown').expectDone(...SHEATH_TASKS).expectCurrent('finished');
    expect(driver.procedure.progress.tasks.map(({ outOfOrderAfter, progress }) => [outOfOrderAfter, progress])).toEqual(SHEATH_TASKS.map(() => [null, 1]));
  });

  it('counts gel and covered cord as critical, and nothing else', () => {
    expect(new SheathDriver().procedure.progress.tasks.filter(({ critical }) => critical).map(({ task }) => task)).toEqual(['gelInside', 'covered']);
  });

  it('asks for the tasks one after the other', () => {
    new SheathDriver().expectCurrent('gelInside');
    SHEATH_TASKS.slice(0, 5).forEach((task, k) => loadedUpTo(task).expectCurrent(SHEATH_TASKS[k + 1]!));
  });

  it('refuses steps that do not rise', () => {
    const driver = new SheathDriver().for(1);
    expect(() => driver.procedure.observe({ ...driver.scene, step: 5 })).toThrow('after step');
  });
});

describe('Gel in the closed end', () => {
  it.each([[4.99, false], [5, true]])('%s mL of 5 mL: done %s', (ml, done) => {
    const driver = new SheathDriver().open().gel(ml).for(0.1);
    expect(driver.report('gelInside').doneStep !== null).toBe(done);
    expect(driver.report('gelInside').progress).toBeCloseTo(ml / 5);
  });

  it('of another kind does not count', () => {
    new SheathDriver().open().with({ otherGelMl: 20 }).for(0.1).expectDone();
  });

  it('that is missing when the probe is taken makes that come too early', () => {
    const driver = new SheathDriver().open().bring().for(1).lower().holdThrough().for(0.5).expectDone('probeTaken');
    expect(driver.report('probeTaken').outOfOrderAfter).toBe('gelInside');
  });
});

describe('The probe is taken', () => {
  it('when it was held through the film for half a second after the assistant let go', () => {
    const driver = loadedUpTo('gelInside').lower().holdThrough('left', true).for(3).expectDone('gelInside').holdThrough('left').forSteps(59).expectDone('gelInside');
    expect(driver.report('probeTaken').progress).toBeCloseTo(59 / 60);
    driver.forSteps(1).expectDone('gelInside', 'probeTaken');
  });

  it('not while nobody holds it', () => {
    loadedUpTo('gelInside').lower().lie(false).for(3).expectDone('gelInside');
  });
});

describe('Cord', () => {
  it.each([[0.799, false], [0.8, true]])('%s m of 0.8 m covered: done %s', (metres, done) => {
    expect(loadedUpTo('probeTaken').cover(metres).for(0.1).report('covered').doneStep !== null).toBe(done);
  });

  it('stays counted as covered when the film slips back', () => {
    loadedUpTo('covered').cover(0.5).for(1).expectDone('gelInside', 'probeTaken', 'covered');
  });
});

describe('Air under the face', () => {
  it('is out after one second with at most a twentieth of the face spoiled', () => {
    loadedUpTo('covered').face(0.05).forSteps(119).expectDone('gelInside', 'probeTaken', 'covered').forSteps(1).expectDone('gelInside', 'probeTaken', 'covered', 'airOut');
    loadedUpTo('covered').face(0.06).for(5).expectDone('gelInside', 'probeTaken', 'covered');
  });

  it('does not count before the probe is taken', () => {
    loadedUpTo('gelInside').lower().face(0).for(3).expectDone('gelInside').holdThrough().for(0.5).expectDone('gelInside', 'probeTaken').for(1).expectDone('gelInside', 'probeTaken', 'airOut');
  });

  it('is back when more than three tenths are spoiled, and must go out again', () => {
    const driver = loadedUpTo('airOut').face(0.3).for(1).expectDone('gelInside', 'probeTaken', 'covered', 'airOut').face(0.31).forSteps(1).expectDone('gelInside', 'probeTaken', 'covered');
    expect(driver.report('airOut').progress).toBe(0);
    driver.face(0).for(1).expectDone('gelInside', 'probeTaken', 'covered', 'airOut');
  });

  it('does not come back once the probe was laid down', () => {
    loadedUpTo('laidDown').face(0.9).for(1).expectDone(...SHEATH_TASKS);
  });
});

describe('Bands', () => {
  it('are two', () => {
    const driver = loadedUpTo('airOut').bands(true, false).for(1);
    expect(driver.report('banded')).toMatchObject({ doneStep: null, progress: 0.5 });
    driver.bands(true, true).forSteps(1);
    expect(driver.report('banded').doneStep).toBe(driver.lastStep);
  });

  it('may sit before cord and face are done', () => {
    const driver = loadedUpTo('probeTaken').bands(true, true).for(0.1).face(0).for(1).cover().for(0.1).lie().for(4);
    expect(driver.procedure.progress.tasks.map(({ outOfOrderAfter }) => outOfOrderAfter)).toEqual(SHEATH_TASKS.map(() => null));
  });
});

describe('The probe is laid down', () => {
  it('when it lay still for the time asked, with nobody holding it', () => {
    loadedUpTo('banded').lie().forSteps(479).expectCurrent('laidDown').forSteps(1).expectCurrent('finished');
    loadedUpTo('banded').lie(false).for(10).expectCurrent('laidDown');
  });

  it('not once and for all: it may slide off, for more than a second', () => {
    loadedUpTo('laidDown').lie(false).forSteps(119).expectCurrent('finished').forSteps(1).expectCurrent('laidDown').lie().for(4).expectCurrent('finished');
    loadedUpTo('laidDown').lie(false).for(0.9).lie().for(1).lie(false).for(0.9).expectCurrent('finished');
  });

  it('for good when it is taken up again', () => {
    loadedUpTo('laidDown').holdThrough().for(0.1).lie(false).for(5).expectCurrent('finished');
  });

  it('out of order when something is missing', () => {
    expect(loadedUpTo('covered').lie().for(4).report('laidDown').outOfOrderAfter).toBe('airOut');
  });
});

describe('A fresh sheath', () => {
  it.each([
    ['after the one on the probe', () => loadedUpTo('banded').with({ ...FOLDED })],
    ['after an opened one with gel in it', () => loadedUpTo('gelInside').with({ sheath: 'lying', gelMl: 0 })],
    ['after a torn one', () => loadedUpTo('gelInside').with({ torn: true }).for(1).with({ torn: false, gelMl: 0 })],
  ] as const)('%s brings all work back', (_, replaced) => {
    replaced().for(1).expectDone().expectCurrent('gelInside');
  });

  it('is not one that is laid down again, or out of which the probe comes again', () => {
    loadedUpTo('gelInside').with({ sheath: 'held' }).for(1).with({ sheath: 'lying' }).for(1).expectDone('gelInside');
    loadedUpTo('gelInside').lower().for(1).open().bring().for(1).expectDone('gelInside');
  });
});
