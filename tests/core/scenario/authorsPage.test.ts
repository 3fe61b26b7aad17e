import { describe, expect, it } from 'vitest';
import { parseScenario } from '../../../src/core/scenario/parseScenario.ts';
import { fieldRows, rowText } from './fieldRows.ts';
import { authorsPage, shippedScenarios } from './shipped.ts';

const PAGE = authorsPage();
const LINES = PAGE.split('\n');
const documented = LINES.filter((line) => /^\| `[a-z][^`]*` \|[^|]*\|[^|]*\|[^|]*\|[^|]*\|[^|]*\|$/.test(line));
const ROWS = fieldRows();

describe('The page for authors', () => {
  it.each(ROWS.map((row) => [row.path, rowText(row)]))('documents %s with its unit, default and range, and says what it means', (path, text) => {
    const line = documented.find((one) => one.startsWith(`| \`${path}\` |`));
    expect(line?.slice(0, text.length)).toBe(text);
    expect(line!.slice(text.length).split('|')[0]!.trim()).not.toBe('');
  });

  it('documents no field that does not exist, and none twice', () => {
    expect(documented.map((line) => line.split('`')[1]).sort()).toEqual(ROWS.map((row) => row.path).sort());
  });

  it('says for every measured default where it comes from', () => {
    const measured = ROWS.filter((row) => row.unit !== '' && row.fallback !== 'must be given').map((row) => row.path);
    for (const path of measured) {
      const source = documented.find((line) => line.startsWith(`| \`${path}\` |`))!.split('|')[6]!;
      expect(source, path).toMatch(/looked up|derived|memory|common practice|choice/);
    }
  });

  it('names every shipped file', () => {
    for (const name of Object.keys(shippedScenarios())) expect(PAGE).toContain(`\`${name}.json\``);
  });

  it('has an example that can be opened', () => {
    const example = /```json\n([^]*?)```/.exec(PAGE)![1]!;
    expect(parseScenario(example).ok).toBe(true);
  });

  it('quotes the sentence that the reader really gives', () => {
    const example = JSON.parse(/```json\n([^]*?)```/.exec(PAGE)![1]!) as object;
    const result = parseScenario(JSON.stringify({ ...example, room: { rails: { xM: 0.3 } } }));
    expect(result.ok ? '' : PAGE).toContain(result.ok ? 'taken' : result.error.message);
  });
});
