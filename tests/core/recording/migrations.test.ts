import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checksumOf } from '../../../src/core/recording/checksum.ts';
import { latestVersion, MIGRATIONS } from '../../../src/core/recording/migrations.ts';
import { readRunFile } from '../../../src/core/recording/readRunFile.ts';
import { writeRunFile } from '../../../src/core/recording/writeRunFile.ts';
import type { Migration } from '../../../src/core/scenario/migrations.ts';
import { finishedRun } from './support/sampleRun.ts';

const fixture = (version: number): URL => new URL(`../../fixtures/run-v${version}.json`, import.meta.url);

describe('Run files of every version there has been', () => {
  it('open: each has a kept file, so that no migration goes untried', () => {
    for (let version = 1; version <= latestVersion(MIGRATIONS); version++) {
      expect(existsSync(fixture(version)), `tests/fixtures/run-v${version}.json`).toBe(true);
      expect(readRunFile(readFileSync(fixture(version), 'utf8')), `version ${version}`).toMatchObject({ ok: true });
    }
  });

  it('are brought up one numbered step after the other, and only those that are due', () => {
    const done: string[] = [];
    const step = (to: number, name: string, up: Migration['up']): Migration => ({ to, name, up: (source) => (done.push(name), up(source)) });
    const migrations = [
      step(2, 'RenameStart', (source) => ({ ...source, header: renamed(source['header'] as object, 'begunAt', 'startTime') })),
      step(3, 'RenameStartAgain', (source) => ({ ...source, header: renamed(source['header'] as object, 'startTime', 'startedAt') })),
    ];
    const run = finishedRun(200);
    const content = JSON.parse(writeRunFile(run)) as Record<string, unknown>;
    const old = { ...content, version: 1, header: renamed(content['header'] as object, 'startedAt', 'begunAt') };
    expect(readRunFile(JSON.stringify({ ...old, checksum: checksumOf(old) }), migrations)).toEqual({ ok: true, value: run });
    expect(done).toEqual(['RenameStart', 'RenameStartAgain']);

    const middle = { ...content, version: 2, header: renamed(content['header'] as object, 'startedAt', 'startTime') };
    expect(readRunFile(JSON.stringify({ ...middle, checksum: checksumOf(middle) }), migrations)).toMatchObject({ ok: true });
    expect(done).toEqual(['RenameStart', 'RenameStartAgain', 'RenameStartAgain']);
  });

  it('are refused when their number skips one', () => {
    const gap = [{ to: 3, name: 'Skipped', up: (source: Readonly<Record<string, unknown>>) => ({ ...source }) }];
    expect(() => readRunFile(writeRunFile(finishedRun(200)), gap)).toThrow('Skipped');
  });
});

const renamed = (members: object, from: string, to: string): object => Object.fromEntries(Object.entries(members).map(([key, value]) => [key === from ? to : key, value]));
