import { createRequire } from 'node:module';

interface Distribution<Parameters extends readonly number[]> {
  inv(p: number, ...parameters: Parameters): number;
  cdf(x: number, ...parameters: Parameters): number;
}

/** The part of jstat, which has no types, that the tests compare with. */
export const jstat = createRequire(import.meta.url)('jstat') as {
  readonly normal: Distribution<[mean: number, sd: number]>;
  readonly chisquare: Distribution<[dof: number]>;
};
