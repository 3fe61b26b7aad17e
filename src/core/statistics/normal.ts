import { assert } from '../base/assert.ts';
import { log } from '../base/portableMath.ts';

/** Coefficients of three rational approximations, lowest power first: the middle, the tails, and the far tails. */
const MIDDLE = {
  over: [3.387132872796366608, 133.14166789178437745, 1971.5909503065514427, 13731.693765509461125, 45921.953931549871457, 67265.770927008700853, 33430.575583588128105, 2509.0809287301226727],
  under: [1, 42.313330701600911252, 687.1870074920579083, 5394.1960214247511077, 21213.794301586595867, 39307.89580009271061, 28729.085735721942674, 5226.495278852854561],
};
const TAIL = {
  over: [1.42343711074968357734, 4.6303378461565452959, 5.7694972214606914055, 3.64784832476320460504, 1.27045825245236838258, 0.24178072517745061177, 0.0227238449892691845833, 0.00077454501427834140764],
  under: [1, 2.05319162663775882187, 1.6763848301838038494, 0.68976733498510000455, 0.14810397642748007459, 0.0151986665636164571966, 0.00054759380849953449460, 1.05075007164441684324e-9],
};
const FAR_TAIL = {
  over: [6.6579046435011037772, 5.4637849111641143699, 1.7848265399172913358, 0.29656057182850489123, 0.026532189526576123093, 0.0012426609473880784386, 2.71155556874348757815e-5, 2.01033439929228813265e-7],
  under: [1, 0.59983220655588793769, 0.1369298809227358053, 0.0148753612908506148525, 0.0007868691311456132591, 1.8463183175100546818e-5, 1.4215117583164458887e-7, 2.04426310338993978564e-15],
};

const polynomial = (coefficients: readonly number[], x: number): number => coefficients.reduceRight((sum, coefficient) => coefficient + x * sum, 0);
const ratio = ({ over, under }: { readonly over: readonly number[]; readonly under: readonly number[] }, x: number): number => polynomial(over, x) / polynomial(under, x);

/** z(p), the quantile of the standard normal distribution, for 0 < p < 1; about 1e-15 (algorithm AS 241, Wichura 1988). */
export function probit(p: number): number {
  assert(p > 0 && p < 1, `${p} lies between 0 and 1`);
  const q = p - 0.5;
  if (q >= -0.425 && q <= 0.425) return q * ratio(MIDDLE, 0.180625 - q * q);
  const r = Math.sqrt(-log(q < 0 ? p : 1 - p));
  const z = r <= 5 ? ratio(TAIL, r - 1.6) : ratio(FAR_TAIL, r - 5);
  return q < 0 ? -z : z;
}
