import { describe, expect, it } from 'vitest';
import { convertLap, type Lap, lapOf, lapsFor } from '../../src/shared/convert-lap.ts';
import type { FlatSingle, Joint, SleeveDouble, SleeveSingle } from '../../src/shared/project.ts';
import { jointSchema } from '../../src/shared/project.ts';

const socket: SleeveSingle = {
  id: 'leg',
  name: 'Leg',
  type: 'sleeve-single',
  side: 'socket',
  overlap: 30,
  adhesive: 'paste',
  tube: { adherend: 'carbon', outsideDiameter: 32, wall: 1.6 },
  sleeve: { adherend: 'titanium', atRoot: 1.2, atMouth: 0.6 },
  bond: { gap: 0.2, tolerance: 0.05 },
  offset: 0.03,
  loads: [
    { case: 'landing', force: 16_000, moment: 1, torque: 2, shear: 3 },
    { case: 'gust', force: -500, moment: 4, torque: 5, shear: 6 },
  ],
};
const flat: FlatSingle = {
  id: 'lug',
  name: 'Lug',
  type: 'flat-single',
  overlap: 25,
  adhesive: 'paste',
  width: 20,
  strip: { adherend: 'carbon', thickness: 2 },
  plate: { adherend: 'titanium', atRoot: 1.5, atMouth: 1 },
  bond: { gap: 0.2, tolerance: 0.05 },
  loads: [{ case: 'landing', force: 4000 }],
};

const everyLap: Joint[] = [socket, flat].flatMap((joint) =>
  lapsFor(joint).map((lap) => convertLap(joint, lap)),
);

describe('changing the lap', () => {
  it('gives a joint of the schema, whichever way', () => {
    for (const joint of everyLap) {
      for (const lap of lapsFor(joint)) {
        const changed = convertLap(joint, lap);
        expect(jointSchema.parse(changed)).toEqual(changed);
        expect(lapOf(changed)).toBe(lap);
      }
    }
  });

  it('keeps tube, overlap, adhesive, offset and every load', () => {
    for (const lap of ['spigot', 'sleeve-double'] as const) {
      const changed = convertLap(socket, lap) as SleeveSingle;
      expect(changed.loads).toEqual(socket.loads);
      expect(changed.tube).toEqual(socket.tube);
      expect(changed).toMatchObject({
        id: 'leg',
        name: 'Leg',
        overlap: 30,
        adhesive: 'paste',
        offset: 0.03,
      });
    }
    expect(convertLap(flat, 'flat-double')).toMatchObject({
      width: 20,
      strip: flat.strip,
      loads: flat.loads,
    });
  });

  it('gives a new wall the material, wall and gap of the one that is there', () => {
    const double = convertLap(socket, 'sleeve-double') as SleeveDouble;
    expect(double.socket).toEqual(socket.sleeve);
    expect(double.spigot).toEqual(socket.sleeve);
    expect(double.innerBond).toEqual(socket.bond);
    expect(double.outerBond).toEqual(socket.bond);
    expect(double.spigot).not.toBe(double.socket);
    expect(double.innerBond).not.toBe(double.outerBond);
  });

  it('keeps the wall that stays where it is', () => {
    const double: SleeveDouble = {
      ...(convertLap(socket, 'sleeve-double') as SleeveDouble),
      spigot: { adherend: 'steel', atRoot: 0.9, atMouth: 0.8 },
      innerBond: { gap: 0.3, tolerance: 0.1 },
    };
    expect(convertLap(double, 'socket')).toMatchObject({
      sleeve: socket.sleeve,
      bond: socket.bond,
    });
    expect(convertLap(double, 'spigot')).toMatchObject({
      sleeve: double.spigot,
      bond: double.innerBond,
    });
    const back = convertLap(convertLap(double, 'socket'), 'sleeve-double', double);
    expect(back).toEqual(double);
    const spigotFirst = convertLap(convertLap(double, 'spigot'), 'sleeve-double', double);
    expect(spigotFirst).toEqual(double);
  });

  it('does not bring back what was changed since', () => {
    const double = convertLap(socket, 'sleeve-double') as SleeveDouble;
    const single = { ...(convertLap(double, 'socket') as SleeveSingle), overlap: 41 };
    const thicker = { ...single, sleeve: { ...single.sleeve, atRoot: 2 } };
    expect(convertLap(thicker, 'sleeve-double', double)).toMatchObject({
      overlap: 41,
      socket: { atRoot: 2 },
      spigot: double.spigot,
    });
  });

  it('leaves the joint alone for its own lap, or for one of another kind of part', () => {
    expect(convertLap(socket, 'socket')).toBe(socket);
    expect(convertLap(socket, 'flat-double')).toBe(socket);
    expect(convertLap(flat, 'sleeve-double')).toBe(flat);
  });

  it('shares nothing writable with what it was made from that both would keep', () => {
    const laps: Lap[] = ['sleeve-double', 'flat-double'];
    const [double] = laps.map((lap) => convertLap(socket, lap)) as [SleeveDouble];
    double.spigot.atRoot = 99;
    expect(socket.sleeve.atRoot).toBe(1.2);
  });
});
