import { describe, expect, it } from 'vitest';
import { engineName } from '../../../src/app/wire/engineName.ts';
import { fileText, zipText } from '../../../src/storage/gzip.ts';
import { openFile } from '../../../src/app/wire/openFile.ts';
import { runFileName } from '../../../src/app/wire/saveFile.ts';
import { runHeader } from '../../../src/core/recording/recording.ts';
import { writeRunFile } from '../../../src/core/recording/writeRunFile.ts';
import { scenarioWith } from '../support/scenario.ts';

const scenario = scenarioWith();
const header = runHeader({ runId: 'abcdef01-22', engine: 'test', startedAt: '2026-03-04T05:06:07.000Z', scenario, seed: 1 });
const run = { header, steps: 60, commands: [], hashes: [], result: null, score: null };
const named = (content: BlobPart, name: string): File => new File([content], name);

describe('files', () => {
  it('come back from the zip as they were', async () => {
    expect(await fileText(new Blob([await zipText('{"a":"ä"}')]))).toBe('{"a":"ä"}');
    expect(await fileText(new Blob(['plain']))).toBe('plain');
  });

  it('that are damaged zips are refused', async () => {
    expect(await fileText(new Blob([new Uint8Array([0x1f, 0x8b, 1, 2, 3])]))).toBeNull();
  });

  it('open as runs, zipped or not', async () => {
    const text = writeRunFile(run);
    for (const content of [text, await zipText(text)]) {
      const opened = await openFile(named(content, 'x.json'));
      expect(opened.ok && opened.value.kind).toBe('run');
    }
  });

  it('open as scenarios', async () => {
    const opened = await openFile(named(JSON.stringify({ format: 'sterile-field-scenario', version: 1, id: 'mine', title: 'Mine', summary: 'My own.', seed: 3, station: 'field' }), 'mine.json'));
    expect(opened.ok && opened.value.kind).toBe('scenario');
  });

  it('of other kinds are answered with a sentence', async () => {
    for (const content of ['', 'PK\u0003\u0004', 'hello', '{"format":"other"}', '[]', '{"format":"sterile-field-scenario","version":1,"id":"x"}']) {
      const opened = await openFile(named(content, 'x.json'));
      expect(opened.ok).toBe(false);
      if (!opened.ok) expect(opened.error).toMatch(/^[A-Za-z“].{20,}[.;]/);
    }
  });

  it('are named after scenario and time, not after persons', () => {
    expect(runFileName(run)).toBe('run-test-20260304-0506-abcdef.json.gz');
  });
});

describe('name of the engine', () => {
  it('is drawn from what the browser tells', () => {
    expect(engineName('Mozilla/5.0 (X11) AppleWebKit/537.36 Chrome/156.0.0.0 Safari/537.36')).toBe('V8 156');
    expect(engineName('Mozilla/5.0 (X11; rv:153.0) Gecko/20100101 Firefox/153.0')).toBe('SpiderMonkey 153');
    expect(engineName('Mozilla/5.0 (Mac) AppleWebKit/605.1.15 Version/19.1 Safari/605.1.15')).toBe('JavaScriptCore 19.1');
    expect(engineName('something else')).toBe('unknown');
  });
});
