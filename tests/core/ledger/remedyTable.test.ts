import { describe, expect, it } from 'vitest';
import { commandSchema } from '../../../src/core/commands/command.ts';
import { REMEDY_TABLE } from '../../../src/core/ledger/rules/remedyTable.ts';
import type { Practised, Waiting } from '../../../src/core/ledger/rules/remedyRow.ts';
import { RULE_BOOK, ruleById } from '../../../src/core/ledger/rules/ruleBook.ts';
import { PLAYABLE_STATIONS } from '../../../src/core/ledger/rules/station.ts';

const isPractised = (way: Practised | Waiting): way is Practised => 'rules' in way;
const practised = REMEDY_TABLE.flatMap(({ id, row, practised: way }) => (isPractised(way) ? [{ id, row, ...way }] : []));
const waiting = REMEDY_TABLE.flatMap(({ id, practised: way }) => (isPractised(way) ? [] : [{ id, ...way }]));
const rowOf = (row: string) => practised.find((one) => one.row === row)!;

describe('the table of remedies', () => {
  it('has all 27 rows of the table of practice, each once, in order', () => {
    const rows = REMEDY_TABLE.flatMap(({ row }) => row ?? []);
    expect(rows).toEqual(Array.from({ length: 27 }, (_, k) => `B${String(k + 1).padStart(2, '0')}`));
    expect(new Set(REMEDY_TABLE.map(({ id }) => id)).size).toBe(REMEDY_TABLE.length);
  });

  it('maps every row to rules and remedies, or names the station that it waits for, and what a built one lacks', () => {
    for (const { id, rules, remedies } of practised) {
      expect(rules.length, id).toBeGreaterThan(0);
      expect(remedies.length, id).toBeGreaterThan(0);
      for (const rule of rules) ruleById(rule);
    }
    for (const { id, station, missing } of waiting) expect(missing === undefined, id).toBe(!PLAYABLE_STATIONS.includes(station));
  });

  it('says what happened and what is asked in whole sentences', () => {
    for (const { id, broken, asked } of REMEDY_TABLE) {
      expect(broken, id).toMatch(/^[A-Z].*[^.]$/);
      expect(asked, id).toMatch(/^[A-Z].{15,}\.$/);
    }
  });

  it('answers every rule that can be broken, by one row only', () => {
    const answered = practised.flatMap(({ rules }) => rules);
    expect([...answered].sort()).toEqual(RULE_BOOK.map(({ id }) => id).sort());
  });

  it('agrees with the rule book on what answers a rule: each remedy of a rule is one of its row', () => {
    for (const { id, rules, remedies } of practised)
      for (const rule of rules) for (const remedy of ruleById(rule).remedies) expect(remedies, `${rule} in ${id}`).toContain(remedy);
  });

  it('names only remedies and requests that a run offers', () => {
    for (const { id, remedies, requests = [] } of practised) {
      for (const remedy of remedies) expect(commandSchema.safeParse({ type: 'remedy.start', remedy }).success, id).toBe(true);
      for (const request of requests) expect(commandSchema.safeParse({ type: 'ask', request }).success, id).toBe(true);
    }
  });

  // What the table of practice asks first for each row that the field can show (its own sources stand in the rows).
  it.each([
    ['B01', 'changeGlove'],
    ['B05', 'changeGownAndGloves'],
    ['B07', 'changeGlove'],
    ['B09', 'coverDrape'],
    ['B10', 'replaceItem'],
    ['B12', 'replaceItem'],
    ['B13', 'replaceItem'],
    ['B15', 'prepAndDrape'],
    ['B16', 'coverDrape'],
    ['B17', 'coverDrape'],
    ['B18', 'prepAndDrape'],
    ['B22', 'newSheath'],
    ['B23', 'coverDrape'],
  ])('%s is answered first by %s', (row, remedy) => {
    expect(rowOf(row).remedies[0]).toBe(remedy);
  });

  // Bare cord and slack are the assistant's to take (rows on the cord).
  it.each(['B22', 'B23'])('%s may begin with asking the assistant for the cord', (row) => {
    expect(rowOf(row).requests).toEqual(['takeCord']);
  });
});
