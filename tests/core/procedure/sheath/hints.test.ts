import { describe, expect, it } from 'vitest';
import { SHEATH_TASKS } from '../../../../src/core/procedure/observation.ts';
import type { ScenarioSource } from '../../../../src/core/scenario/schema.ts';
import { FOLDED, loadedUpTo, SheathDriver } from './SheathDriver.ts';

const EMPTY = 'Take the sheath, and open its mouth with the other hand.';

describe('The hint follows what the hands do', () => {
  it('from the folded sheath to the gel', () => {
    new SheathDriver()
      .expectHint(EMPTY)
      .take().for(0.1).expectHint('Open its mouth with the other hand.')
      .open().for(0.1).expectHint('Sterile gel into the closed end: hold the packet over the mouth and squeeze.')
      .gel(2).for(0.1).expectHint('A little more sterile gel into the closed end.')
      .gel(5).for(0.1).expectHint('Ask for the probe.');
  });

  it('to wait for gel that runs down, once it is enough', () => {
    const wait = 'Enough gel is in. Wait until it has run down into the closed end.';
    new SheathDriver()
      .open().with({ gelComingMl: 4 }).for(0.1).expectHint('Sterile gel into the closed end: hold the packet over the mouth and squeeze.')
      .with({ gelComingMl: 6 }).for(0.1).expectHint(wait)
      .gel(2).with({ gelComingMl: 3 }).for(0.1).expectHint(wait)
      .with({ gelComingMl: 2.9 }).for(0.1).expectHint('A little more sterile gel into the closed end.')
      .gel(5).with({ gelComingMl: 0 }).for(0.1).expectHint('Ask for the probe.');
  });

  it('by the gathering of a loose sheath', () => {
    new SheathDriver({ sheath: { form: 'loose' } }).expectHint(EMPTY).take(0.3).for(0.1).expectHint('Gather the sheath before you open it: squeeze.').take(0.95).for(0.1).expectHint('Open its mouth with the other hand.');
  });

  it('does not take other gel for sterile gel', () => {
    new SheathDriver().open().with({ otherGelMl: 9 }).for(0.1).expectHint('Sterile gel into the closed end: hold the packet over the mouth and squeeze.');
  });

  it('from the probe that is asked for to the probe in the hand', () => {
    loadedUpTo('gelInside')
      .expectHint('Ask for the probe.')
      .bring(false).for(0.1).expectHint('Hold the mouth open and keep still while the probe comes.')
      .take().for(0.1).expectHint('Open its mouth with the other hand.').open()
      .bring().for(0.1).expectHint('Have it lowered into the mouth. Keep hands and film clear of it.')
      .lower().for(0.1).expectHint('Take hold of it through the film.')
      .holdThrough('right', true).for(0.1).expectHint('Have the assistant let go.')
      .holdThrough().for(0.1).expectHint('You have it. Hold it like this for a moment.')
      .with({ endHeld: true }).for(0.5).expectHint('Draw the film along the cord.');
  });

  it('says the same while the probe swings over the mouth and a little beside it, and no longer when it is elsewhere', () => {
    // It hangs 0.32 m below the hand: half a period, the longest that it is beside the mouth, is π √(L / g) = 0.57 s.
    const driver = loadedUpTo('gelInside').bring().for(0.1);
    for (let swing = 0; swing < 4; swing++) driver.bring(false).for(0.5).expectHint('Have it lowered into the mouth. Keep hands and film clear of it.').bring().for(0.9).expectHint('Have it lowered into the mouth. Keep hands and film clear of it.');
    driver.bring(false).for(0.7).expectHint('Hold the mouth open and keep still while the probe comes.');
  });

  it('along the cord, over the face and to the bands', () => {
    loadedUpTo('probeTaken')
      .cover(0.19).for(0.1).expectHint('Take the open end of the film, and draw it along the cord.')
      .with({ endHeld: true }).for(0.1).expectHint('Draw the film along the cord.')
      .cover(0.2).for(0.1).expectHint('Ask the assistant to pull the tail.')
      .cover(0.8).for(0.1).expectHint('Stroke the air away from the face.')
      .face(0.03).for(0.1).expectHint('The face is clear. See that it stays so.')
      .for(1).expectHint('A band behind the head, a second along the handle or cord.')
      .bands(true, false).for(0.1).expectHint('A second band along the handle or cord.')
      .bands(false, true).for(0.1).expectHint('One more band, behind the head.')
      .bands(true, true).for(0.1).expectHint('Lay the probe on the field and see that it stays.')
      .lie().for(0.1).expectHint('Hands off the probe for a moment and see that it stays.')
      .for(4).expectHint('All done. You can end the run.');
  });

  it('back to the mouth of the sheath when the probe is not all the way in, or out again', () => {
    loadedUpTo('probeTaken')
      .with({ sheath: 'open' }).for(0.1).expectHint('Bring the face all the way into the closed end.')
      .bring().for(0.1).expectHint('Have it lowered into the mouth. Keep hands and film clear of it.')
      .take().for(0.1).expectHint('Open its mouth with the other hand.');
    for (const task of ['covered', 'airOut', 'banded'] as const) loadedUpTo(task).with({ sheath: 'open', probe: FOLDED.probe }).for(0.1).expectHint('Ask for the probe.');
  });

  it('to a new sheath where this one is no good any more', () => {
    for (const task of SHEATH_TASKS.slice(0, 5)) loadedUpTo(task).with({ torn: true }).for(0.1).expectHint('The film is torn. Stop and take a new sheath.');
    new SheathDriver().open().gel(2).bring().for(0.1).lower().for(0.1).expectHint('Too little gel went in for a picture. Stop and take a new sheath.');
  });

  it('to what lies off the field and is still needed', () => {
    const items: ScenarioSource['items'] = [{ id: 'gel', kind: 'gelPacket', xM: 0.27 }, { id: 'one', kind: 'band', xM: -0.27 }, { id: 'two', kind: 'band', xM: -0.34 }];
    const noGel = 'The gel packet is off the field. Have it replaced.';
    const noBand = 'The band is off the field. Have it replaced.';
    new SheathDriver({ items }).fallen('gel').for(0.1).expectHint(noGel).open().for(0.1).expectHint(noGel).fallen().for(0.1).expectHint('Sterile gel into the closed end: hold the packet over the mouth and squeeze.');
    loadedUpTo('airOut', { items }).fallen('two').for(0.1).expectHint(noBand).bands(true, false).for(0.1).expectHint(noBand).fallen().for(0.1).expectHint('A second band along the handle or cord.');
    new SheathDriver({ items }).fallen('sheathRoll').for(0.1).expectHint('The sheath is off the field. Stop and take a new sheath.');
    loadedUpTo('banded', { items }).lie(false).fallen('probe').for(0.1).expectHint('The probe is off the field. Stop and have its sheath replaced.');
  });

  it('not to what lies there and is not needed, or no longer, or lies there twice', () => {
    const items: ScenarioSource['items'] = [{ id: 'gel', kind: 'gelPacket', xM: 0.27 }, { id: 'more', kind: 'gelPacket', xM: -0.9 }, ...['one', 'two', 'three'].map((id, k) => ({ id, kind: 'band' as const, xM: -0.2 - 0.07 * k }))];
    new SheathDriver({ items }).open().fallen('gel', 'one', 'two').for(0.1).expectHint('Sterile gel into the closed end: hold the packet over the mouth and squeeze.');
    loadedUpTo('gelInside', { items }).fallen('gel', 'more', 'probe').for(0.1).expectHint('Ask for the probe.');
    loadedUpTo('airOut', { items }).fallen('two').for(0.1).expectHint('A band behind the head, a second along the handle or cord.');
    loadedUpTo('banded', { items }).fallen('one', 'two', 'three').for(0.1).expectHint('Lay the probe on the field and see that it stays.');
    loadedUpTo('laidDown', { items }).fallen('gel', 'more', 'one', 'two', 'three').for(0.1).expectHint('All done. You can end the run.');
    new SheathDriver({ items }).open().gel(2).bring().for(0.1).lower().fallen('gel', 'more').for(0.1).expectHint('Too little gel went in for a picture. Stop and take a new sheath.');
  });

  it('to the assistant, with the request that is meant', () => {
    loadedUpTo('gelInside')
      .expectRequest('bringProbe')
      .bring(false).for(0.1).expectRequest(null)
      .bring().for(0.1).expectRequest('lower')
      .lower().for(0.1).expectRequest(null)
      .holdThrough('right', true).for(0.1).expectRequest('letGo')
      .holdThrough().for(0.6).expectRequest(null)
      .cover(0.2).for(0.1).expectRequest('pullTail')
      .with({ torn: true }).for(0.1).expectRequest(null);
  });

  it('to a packet that is still closed, where all that is left is in such', () => {
    const items: ScenarioSource['items'] = [{ id: 'gel', kind: 'gelPacket', xM: 0.27 }, { id: 'one', kind: 'band', xM: -0.27 }, { id: 'two', kind: 'band', xM: -0.86, spare: true }];
    const band = 'Ask the assistant to open a packet: the band is in it.';
    const driver = loadedUpTo('airOut', { items }).with({ packed: ['two'] }).for(0.1).expectHint('A band behind the head, a second along the handle or cord.').expectRequest(null);
    driver.bands(true, false).with({ used: ['one'] }).for(0.1).expectHint(band).expectRequest('openPacket');
    driver.with({ cordHeld: true }).for(0.1).expectHint('Have the assistant let go of the cord, and then open a packet: the band is in it.').expectRequest('letGo');
    driver.with({ cordHeld: false, packed: [] }).for(0.1).expectHint('A second band along the handle or cord.').expectRequest(null);
    loadedUpTo('airOut', { items }).with({ packed: ['two'] }).fallen('one').for(0.1).expectRequest(null);
    new SheathDriver({ items: [{ id: 'gel', kind: 'gelPacket', xM: -0.86, spare: true }, ...items.slice(1)] }).open().with({ packed: ['gel', 'two'] }).for(0.1).expectHint('Ask the assistant to open a packet: the gel is in it.').expectRequest('openPacket');
  });

  it('to an assistant who was told to stop on the way with the probe', () => {
    const driver = loadedUpTo('gelInside').bring(false).for(0.1).expectRequest(null);
    driver.with({ probe: { ...driver.scene.probe, stopped: 'bringing' } }).for(0.1).expectHint('Ask for the probe again: the assistant has stopped.').expectRequest('bringProbe');
    driver.bring().for(0.1).expectRequest('lower').with({ probe: { ...driver.scene.probe, inside: true } }).for(0.1).expectRequest(null);
    driver.with({ probe: { ...driver.scene.probe, stopped: 'lowering' } }).for(0.1).expectHint('Have it lowered on: the assistant has stopped.').expectRequest('lower');
    driver.holdThrough('right', true).for(0.1).expectRequest('letGo');
  });

  it('in one short line, always', () => {
    for (const task of SHEATH_TASKS) expect(loadedUpTo(task).procedure.progress.hint).toMatch(/^[A-Z][^\n]{8,90}\.$/);
  });
});
