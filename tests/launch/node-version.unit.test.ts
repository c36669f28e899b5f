import { expect, it } from 'vitest';
import { tooOld } from '../../src/launch/node-version.mjs';

it.each(['20.19.0', '20.20.2', '22.12.0', '22.20.1', '24.0.0', '26.1.0'])(
  'takes Node %s',
  (version) => expect(tooOld(version)).toBeNull(),
);

it.each(['18.20.8', '20.18.3', '21.7.3', '22.11.0', '23.9.0', '9.0.0'])(
  'refuses Node %s and says what it needs',
  (version) => {
    expect(tooOld(version)).toContain('Node 20.19 or newer');
    expect(tooOld(version)).toContain(version);
  },
);
