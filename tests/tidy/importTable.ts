/** What a folder may import; "types of" a folder means `import type` alone. The folder itself is always allowed. */
export interface FolderRule {
  readonly folders: readonly string[];
  readonly typesOf?: readonly string[];
  readonly packages?: readonly string[];
}

const CORE = ['base', 'commands', 'scenario', 'physics', 'touch', 'ledger', 'room', 'procedure', 'run', 'recording', 'debrief', 'statistics', 'scoring', 'scoring/bundle', 'scoring/noticing'].map((name) => `src/core/${name}`);
const core = (...names: string[]): string[] => names.map((name) => `src/core/${name}`);

/** The longest folder name that a file's path begins with decides. */
export const IMPORT_TABLE: Readonly<Record<string, FolderRule>> = {
  'src/core/base': { folders: [] },
  'src/core/commands': { folders: core('base'), packages: ['zod'] },
  'src/core/scenario': { folders: core('base'), packages: ['zod'] },
  'src/core/physics': { folders: core('base'), packages: ['matter-js'] },
  'src/core/touch': { folders: core('base') },
  'src/core/ledger': { folders: core('base', 'commands'), typesOf: core('scenario') },
  'src/core/procedure': { folders: core('base', 'scenario'), typesOf: core('commands'), packages: ['xstate'] },
  'src/core/room': { folders: core('base', 'scenario', 'physics', 'touch'), typesOf: core('ledger', 'procedure', 'commands') },
  'src/core/run': { folders: core('base', 'commands', 'scenario', 'physics', 'touch', 'ledger', 'room', 'procedure') },
  'src/core/scoring': { folders: core('base', 'ledger', 'statistics', 'scoring/noticing'), typesOf: core('commands', 'scenario', 'run', 'procedure', 'room') },
  'src/core/recording': { folders: core('base', 'commands', 'scenario', 'room', 'procedure', 'run', 'scoring'), packages: ['zod'] },
  'src/core/debrief': { folders: core('base', 'commands', 'scenario', 'ledger', 'run', 'scoring', 'recording'), typesOf: core('room', 'procedure') },
  'src/core/statistics': { folders: core('base') },
  'src/core/scoring/bundle': { folders: core('base'), typesOf: core('scenario', 'run') },
  'src/core/scoring/noticing': { folders: core('base', 'statistics'), typesOf: core('scenario', 'run', 'ledger') },
  'src/storage': { folders: core('base', 'commands', 'scenario', 'recording'), typesOf: core('run'), packages: ['fflate', 'idb', 'zod'] },
  'src/app': { folders: [...CORE, 'src/app/canvas/swatches.ts', 'src/storage'], packages: ['preact', 'xstate', 'zod'] },
  'src/app/canvas': { folders: [...CORE, 'src/app', 'src/app/canvas/swatches.ts'], packages: ['pixi.js', 'preact'] },
  // Samples of the room's patterns for legends; draws without the renderer, so that pages may use it.
  'src/app/canvas/swatches.ts': { folders: [...CORE, 'src/app/canvas'] },
  // The one place where pages and canvas meet.
  'src/app/wire': { folders: [...CORE, 'src/app', 'src/app/canvas', 'src/storage'], packages: ['preact', 'zod'] },
  'src/cli': { folders: CORE, packages: ['node'] },
  'src/bench': { folders: CORE, packages: ['node', '@dimforge/rapier2d-compat', 'matter-js'] },
  'src/main.tsx': { folders: ['src/app', 'src/app/wire'], packages: ['preact'] },
};
