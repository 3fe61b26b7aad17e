type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** Least that an author must write; all else has defaults. */
export const LEAST = { format: 'sterile-field-scenario', version: 1, id: 'least', title: 'The least', summary: 'Only what must be there.', seed: 7, station: 'field' } as const;

/** Places and lengths on which sentences depend, written out so that a better default changes no test. */
const PLACES: Readonly<Record<string, Json>> = {
  'probe.xM': 0.2,
  'cord.lengthM': 1.8,
  'cord.slackM': 0.3,
  'drape.left.lengthM': 0.95,
  'drape.right.lengthM': 0.95,
  items: [
    { id: 'gel', kind: 'gelPacket', xM: -0.3, rubbish: true },
    { id: 'anaesthetic', kind: 'syringe', xM: 0.32 },
    { id: 'needle', kind: 'needleSyringe', xM: -0.22 },
    { id: 'gauze', kind: 'gauze', xM: 0.26, rubbish: true },
  ],
};

/** The least scenario with values put in at dotted paths: `{ 'room.rails.xM': 0.3 }`. A value of undefined takes the name out. */
export function sourceWith(changes: Readonly<Record<string, Json | undefined>>): Record<string, unknown> {
  const source: Record<string, unknown> = { ...LEAST };
  for (const [path, value] of Object.entries({ ...PLACES, ...changes })) {
    const names = path.split('.');
    const last = names.pop()!;
    let part = source;
    for (const name of names) part = (part[name] ??= {}) as Record<string, unknown>;
    if (value === undefined) delete part[last];
    else part[last] = value;
  }
  return source;
}

/** The same as the text of a file. */
export const fileWith = (changes: Readonly<Record<string, Json | undefined>>): string => JSON.stringify(sourceWith(changes), null, 2);
