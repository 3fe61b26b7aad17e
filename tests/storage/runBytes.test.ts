import { gunzipSync, gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { writeRunFile } from '../../src/core/recording/writeRunFile.ts';
import { gzip, readRunBytes } from '../../src/storage/runBytes.ts';
import { finishedRun } from '../core/recording/support/sampleRun.ts';

const run = finishedRun(300);
const text = writeRunFile(run);
const bytes = (data: Uint8Array): Uint8Array<ArrayBuffer> => new Uint8Array(data);

it('a saved run opens zipped and unzipped', async () => {
  const zipped = await gzip(text);
  expect(gunzipSync(zipped).toString('utf8')).toBe(text);
  expect(await readRunBytes(zipped)).toEqual({ ok: true, value: run });
  expect(await readRunBytes(new TextEncoder().encode(text))).toEqual({ ok: true, value: run });
});

it('a zipped run that was cut off or is no run says so', async () => {
  const zipped = bytes(gzipSync(text));
  expect(await readRunBytes(zipped.slice(0, -20))).toEqual({ ok: false, error: 'The zipped run file is damaged or cut off; copy or download it again from where it was saved.' });
  expect(await readRunBytes(bytes(gzipSync('hello')))).toMatchObject({ ok: false, error: expect.stringMatching(/not JSON/) });
  expect(await readRunBytes(bytes(Buffer.from([0x89, 0x50, 0x4e, 0x47, 255])))).toMatchObject({ ok: false, error: expect.stringMatching(/not JSON/) });
});
