/** Joints of the project file: one schema for each type, walls, bonds and loads among them. */
import { z } from 'zod';
import { benchSchema } from './project-bench.ts';
import { id, name, number } from './project-fields.ts';

const wallSchema = z
  .strictObject({
    adherend: id,
    atRoot: number('wall'),
    atMouth: number('wall'),
  })
  .describe('A sleeve wall, its thickness linear from the root to the mouth.');
const bondSchema = z.strictObject({ gap: number('gap'), tolerance: number('gapTolerance') });

const tubeSchema = z.strictObject({
  adherend: id,
  outsideDiameter: number('outsideDiameter'),
  wall: number('wall'),
});
const stripSchema = z.strictObject({ adherend: id, thickness: number('wall') });

const sleeveLoads = z
  .array(
    z.strictObject({
      case: id,
      force: number('force'),
      moment: number('moment'),
      torque: number('torque'),
      shear: number('shear'),
    }),
  )
  .max(200);
const flatLoads = z.array(z.strictObject({ case: id, force: number('force') })).max(200);

const sizeCommon = {
  id,
  name,
  wallFactor: number('wallFactor')
    .optional()
    .describe('Multiplies the walls of sleeve, plate or straps; 1 when left out.'),
  loadFactor: number('loadFactor')
    .optional()
    .describe('Multiplies the loads, the joint’s or those of this size; 1 when left out.'),
};
const sizesOf = <S extends z.ZodType>(size: S) =>
  z
    .array(size)
    .max(40, { error: 'a joint has at most 40 sizes' })
    .optional()
    .describe('The same joint in other sizes of the frame: what differs from the joint itself.');
const sleeveSizes = sizesOf(
  z.strictObject({
    ...sizeCommon,
    outsideDiameter: number('outsideDiameter').optional(),
    tubeWall: number('wall').optional(),
    loads: sleeveLoads.optional(),
  }),
);
const flatSizes = sizesOf(
  z.strictObject({
    ...sizeCommon,
    width: number('width').optional(),
    thickness: number('wall').optional(),
    loads: flatLoads.optional(),
  }),
);

const jointCommon = {
  id,
  name,
  overlap: number('overlap'),
  adhesive: id,
  bench: benchSchema.optional(),
};

export const sleeveSingleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('sleeve-single'),
  side: z.enum(['socket', 'spigot'], {
    error: 'side is "socket" (sleeve outside the tube) or "spigot" (sleeve inside the tube)',
  }),
  tube: tubeSchema,
  sleeve: wallSchema,
  bond: bondSchema,
  offset: number('offset'),
  loads: sleeveLoads,
  sizes: sleeveSizes,
});
export const sleeveDoubleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('sleeve-double'),
  tube: tubeSchema,
  spigot: wallSchema,
  socket: wallSchema,
  innerBond: bondSchema,
  outerBond: bondSchema,
  offset: number('offset'),
  loads: sleeveLoads,
  sizes: sleeveSizes,
});
export const flatSingleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('flat-single'),
  width: number('width'),
  strip: stripSchema,
  plate: wallSchema,
  bond: bondSchema,
  loads: flatLoads,
  sizes: flatSizes,
});
export const flatDoubleSchema = z.strictObject({
  ...jointCommon,
  type: z.literal('flat-double'),
  width: number('width'),
  strip: stripSchema,
  lowerStrap: wallSchema,
  upperStrap: wallSchema,
  lowerBond: bondSchema,
  upperBond: bondSchema,
  loads: flatLoads,
  sizes: flatSizes,
});
export const jointSchema = z.discriminatedUnion(
  'type',
  [sleeveSingleSchema, sleeveDoubleSchema, flatSingleSchema, flatDoubleSchema],
  {
    error: 'a joint is of type "sleeve-single", "sleeve-double", "flat-single" or "flat-double"',
  },
);

export type Wall = z.infer<typeof wallSchema>;
export type Bond = z.infer<typeof bondSchema>;
export type SleeveSingle = z.infer<typeof sleeveSingleSchema>;
export type SleeveDouble = z.infer<typeof sleeveDoubleSchema>;
export type FlatSingle = z.infer<typeof flatSingleSchema>;
export type FlatDouble = z.infer<typeof flatDoubleSchema>;
export type SleeveSize = NonNullable<SleeveSingle['sizes']>[number];
export type FlatSize = NonNullable<FlatSingle['sizes']>[number];
export type Joint = z.infer<typeof jointSchema>;
export type JointType = Joint['type'];
