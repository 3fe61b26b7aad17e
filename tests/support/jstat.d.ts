/** The part of jstat that the tests compare with. */
declare module 'jstat' {
  interface Distribution<Parameters extends readonly number[]> {
    inv(p: number, ...parameters: Parameters): number;
    cdf(x: number, ...parameters: Parameters): number;
  }
  const jstat: {
    readonly normal: Distribution<[mean: number, sd: number]>;
    readonly chisquare: Distribution<[dof: number]>;
    readonly beta: Distribution<[alpha: number, beta: number]>;
  };
  export default jstat;
}
