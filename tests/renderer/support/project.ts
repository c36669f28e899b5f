/** A small project of every kind of joint, for tests of the page. */
import type {
  FlatSingle,
  Project,
  SleeveDouble,
  SleeveSingle,
} from '../../../src/shared/project.ts';
import { projectShape } from '../../../src/shared/project.ts';

const typical = { kind: 'typical', text: 'invented' } as const;

export const socket: SleeveSingle = {
  id: 'tip',
  name: 'Boom tip',
  type: 'sleeve-single',
  side: 'socket',
  overlap: 30,
  adhesive: 'paste',
  tube: { adherend: 'carbon', outsideDiameter: 32, wall: 1.6 },
  sleeve: { adherend: 'titanium', atRoot: 1.2, atMouth: 1.2 },
  bond: { gap: 0.2, tolerance: 0.05 },
  offset: 0.03,
  loads: [
    { case: 'gust', force: 16_000, moment: 410_000, torque: 0, shear: 250 },
    { case: 'landing', force: -3000, moment: 0, torque: 0, shear: 0 },
  ],
};

export const double: SleeveDouble = {
  id: 'root',
  name: 'Boom root',
  type: 'sleeve-double',
  overlap: 45,
  adhesive: 'paste',
  tube: { adherend: 'carbon', outsideDiameter: 40, wall: 2 },
  spigot: { adherend: 'titanium', atRoot: 1.2, atMouth: 0.6 },
  socket: { adherend: 'titanium', atRoot: 1.4, atMouth: 0.7 },
  innerBond: { gap: 0.2, tolerance: 0.05 },
  outerBond: { gap: 0.25, tolerance: 0.05 },
  offset: 0,
  loads: [{ case: 'gust', force: 20_000, moment: 0, torque: 0, shear: 0 }],
};

export const lug: FlatSingle = {
  id: 'lug',
  name: 'Tail lug',
  type: 'flat-single',
  overlap: 25,
  adhesive: 'paste',
  width: 20,
  strip: { adherend: 'carbon', thickness: 3 },
  plate: { adherend: 'titanium', atRoot: 1.5, atMouth: 1.5 },
  bond: { gap: 0.2, tolerance: 0.05 },
  loads: [{ case: 'gust', force: 4000 }],
};

/** A fresh copy each time: the page's store writes into what it is given. */
export function makeProject(change: Partial<Project> = {}): Project {
  return projectShape.parse(
    structuredClone({
      format: 'lapwright-project',
      version: 1,
      name: 'Test frame',
      settings: {
        targetMargin: 0.25,
        factors: { limit: 1, ultimate: 1.5, fitting: 1.15 },
        adherendShear: true,
      },
      adherends: [
        {
          id: 'carbon',
          name: 'Carbon tube',
          kind: 'orthotropic',
          axialModulus: 70_000,
          hoopModulus: 30_000,
          shearModulus: 8000,
          poisson: 0.3,
          axialExpansion: 1e-6,
          hoopExpansion: 6e-6,
          throughShearModulus: 4000,
          tensileStrength: 600,
          compressiveStrength: 450,
          shearStrength: 80,
          source: typical,
        },
        {
          id: 'titanium',
          name: 'Printed titanium',
          kind: 'isotropic',
          modulus: 114_000,
          poisson: 0.34,
          expansion: 8.6e-6,
          yieldStrength: 830,
          ultimateStrength: 900,
          source: { kind: 'tested', text: 'coupons' },
        },
      ],
      adhesives: [
        {
          id: 'paste',
          name: 'Toughened paste',
          stressFreeTemperature: 60,
          states: [
            {
              temperature: 20,
              moisture: 'dry',
              modulus: 2400,
              shearModulus: 876,
              shearYield: 38,
              plasticStrain: 0.4,
            },
            {
              temperature: 60,
              moisture: 'wet',
              modulus: 1000,
              shearModulus: 360,
              shearYield: 20,
              plasticStrain: 0.6,
            },
          ],
          source: typical,
        },
      ],
      loadCases: [
        { id: 'gust', name: 'Gust', kind: 'limit', temperature: 20, moisture: 'dry' },
        { id: 'landing', name: 'Hard landing', kind: 'ultimate', temperature: 60, moisture: 'wet' },
        {
          id: 'rotor',
          name: 'Rotor',
          kind: 'cyclic',
          temperature: 20,
          moisture: 'dry',
          cycles: 1e7,
        },
      ],
      joints: [socket, double, lug],
      ...change,
    }),
  );
}
