import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('../../../scenarios/', import.meta.url);

/** Texts of the scenario files that come with the product, by their names without ending. */
export const shippedScenarios = (): Readonly<Record<string, string>> =>
  Object.fromEntries(
    readdirSync(FOLDER)
      .filter((name) => name.endsWith('.json'))
      .map((name) => [name.slice(0, -5), readFileSync(new URL(name, FOLDER), 'utf8')]),
  );

/** The page for authors. */
export const authorsPage = (): string => readFileSync(new URL('README.md', FOLDER), 'utf8');
