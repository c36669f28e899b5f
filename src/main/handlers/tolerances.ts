/** The tolerances of a joint as the model takes them and as the reports name them. */
import { type VariedInput, variedInputs } from '../../model/scatter/inputs.ts';
import { applies, type Variation, variationOf } from '../../model/scatter/variation.ts';
import type { Study } from '../../model/scatter/varied.ts';
import { isFlat } from '../../shared/convert-lap.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { toleranceInputs } from '../../shared/project-settings.ts';
import type { InputTolerance } from '../../shared/reports-scatter.ts';
import type { ResolvedJoint } from './resolve.ts';

const labels: Readonly<Record<VariedInput, string>> = {
  overlap: 'overlap',
  gap: 'gap',
  offset: 'offset',
  'tube-diameter': 'tube diameter',
  'tube-wall': 'tube wall',
  'sleeve-wall': 'sleeve walls',
  'tube-modulus': 'tube moduli',
  'sleeve-modulus': 'sleeve moduli',
  'adhesive-modulus': 'adhesive moduli',
  'shear-yield': 'adhesive shear yield',
  'plastic-strain': 'adhesive plastic strain',
  'peel-strength': 'adhesive peel strength',
  'interlaminar-strength': 'interlaminar strength',
  'laminate-strength': 'laminate strength',
  'metal-strength': 'metal strength',
  'service-temperature': 'service temperature',
  'stress-free-temperature': 'stress-free temperature',
  load: 'loads',
};
/** A flat joint has strips. */
const flatLabels: Partial<Record<VariedInput, string>> = {
  'tube-wall': 'strip thickness',
  'sleeve-wall': 'plate thickness',
  'tube-modulus': 'strip moduli',
  'sleeve-modulus': 'plate moduli',
};

export const inputLabel = (input: VariedInput, joint: Joint): string =>
  (isFlat(joint) ? flatLabels[input] : undefined) ?? labels[input];

const unitOf = (input: VariedInput): InputTolerance['unit'] =>
  (['mm', '°C'] as const).find((unit) =>
    (toleranceInputs[unit] as readonly string[]).includes(input),
  ) ?? '1';

export const studyOfJoint = ({ input, adhesive, cases }: ResolvedJoint): Study => ({
  joint: input,
  adhesive,
  cases: cases.map((loadCase) => loadCase.input),
});

export const reported = (variation: Variation, joint: Joint): InputTolerance => ({
  ...variation,
  label: inputLabel(variation.input, joint),
  unit: unitOf(variation.input),
});

/** Every input that this joint has, those that do not vary with a spread of 0. */
export function tolerancesOf(project: Project, resolved: ResolvedJoint): InputTolerance[] {
  const study = studyOfJoint(resolved);
  const given = project.settings.tolerances ?? null;
  return variedInputs
    .filter((input) => applies(study, input))
    .map((input) =>
      reported(
        variationOf(study, given, input) ?? {
          input,
          distribution: 'normal',
          spread: 0,
          middle: 0,
          origin: 'project',
        },
        resolved.joint,
      ),
    );
}
