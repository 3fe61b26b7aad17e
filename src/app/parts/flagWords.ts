import type { PolicyFlag } from '../../core/ledger/rules/policyFlags.ts';

/** A setting outside what is published, in one sentence. */
export const flagWords = ({ path, setting, value, published }: PolicyFlag): string =>
  path.startsWith('rulesOff') ? `Not judged here: ${setting.charAt(0).toLowerCase()}${setting.slice(1)}.` : `Local setting: ${setting.charAt(0).toLowerCase()}${setting.slice(1)} ${value}; published: ${published}.`;
