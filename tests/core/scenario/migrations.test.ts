import { describe, expect, it } from 'vitest';
import { CURRENT_VERSION, MIGRATIONS, migrate, type Migration } from '../../../src/core/scenario/migrations.ts';
import { scenarioFields } from '../../../src/core/scenario/fields.ts';

const RenameRailHeight: Migration = { to: 2, name: 'RenameRailHeight', up: ({ railM, ...rest }) => ({ ...rest, railTopM: railM }) };
const AddTilt: Migration = { to: 3, name: 'AddTilt', up: (source) => ({ ...source, tiltDeg: 0 }) };

describe('Lifting an old file', () => {
  it('goes through every later change, in order', () => {
    expect(migrate({ version: 1, railM: 0.3 }, 1, [RenameRailHeight, AddTilt])).toEqual({ version: 3, railTopM: 0.3, tiltDeg: 0 });
  });

  it('leaves out the changes that the file has behind it', () => {
    expect(migrate({ version: 2, railTopM: 0.3, railM: 7 }, 2, [RenameRailHeight, AddTilt])).toEqual({ version: 3, railTopM: 0.3, railM: 7, tiltDeg: 0 });
  });

  it('leaves a file of the present version as it is, and the original alone', () => {
    const source = { version: 3, tiltDeg: 4 };
    expect(migrate(source, 3, [RenameRailHeight, AddTilt])).toEqual(source);
    migrate(source, 1, [RenameRailHeight, AddTilt]);
    expect(source).toEqual({ version: 3, tiltDeg: 4 });
  });

  it('is refused for changes that are not numbered 2, 3, 4 …', () => {
    expect(() => migrate({}, 1, [AddTilt])).toThrow('migration AddTilt is number 3, expected 2');
  });
});

describe('The shipped changes', () => {
  it('end at the version that the schema asks for', () => {
    expect(scenarioFields().get('version')!.options).toEqual([CURRENT_VERSION]);
    expect(() => migrate({}, CURRENT_VERSION, MIGRATIONS)).not.toThrow();
  });
});
