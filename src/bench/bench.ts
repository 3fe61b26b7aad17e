/** All benches, one after the other: npm run bench. What follows `--` goes to each of them. */
import './physicsBench.ts';
