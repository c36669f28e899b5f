/** What fields of the project file are made of: numbers in their range, ids, names, sources. */
import { z } from 'zod';
import { type QuantityName, quantities } from './quantities.ts';

// A strict content-security-policy forbids compiling validators at run time.
z.config({ jitless: true });

const withUnit = (value: number, unit: string): string =>
  unit === '1' ? `${value}` : `${value} ${unit}`;

/** A finite number inside the declared physical range of the quantity. */
export const number = (name: QuantityName) => {
  const { label, unit, min, max, help } = quantities[name];
  const range = `${label} must be a number from ${min} to ${withUnit(max, unit)}`;
  return z
    .number({ error: range })
    .min(min, { error: range })
    .max(max, { error: range })
    .describe(unit === '1' ? help : `${help} Unit: ${unit}.`);
};

export const id = z
  .string({ error: 'an id is a short text of letters, digits and hyphens' })
  .regex(/^[a-z0-9][a-z0-9-]{0,63}$/, {
    error: 'an id is 1 to 64 lower-case letters, digits and hyphens',
  });
export const name = z
  .string({ error: 'a name is a text' })
  .min(1, { error: 'a name cannot be empty' })
  .max(120, { error: 'a name is at most 120 characters' });
export const note = z.string().max(4000, { error: 'a note is at most 4000 characters' });

/** Where a property set comes from. `typical` and `memory` are marked wherever they are used. */
export const sourceSchema = z.strictObject({
  kind: z.enum(['typical', 'memory', 'published', 'tested']),
  text: z.string().max(400),
});

export type Source = z.infer<typeof sourceSchema>;
