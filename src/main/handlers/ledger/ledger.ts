/**
 * The request `project.ledger`: for each adhesive, environment and gap the strength that margins use and
 * what it rests on. Strengths come from `adhesiveInBonds`, words from `foundationOf`, as in the margins.
 */
import { ModelError } from '../../../model/errors.ts';
import { adhesiveInBonds } from '../../../model/joint/adhesive-in-bond.ts';
import { type AdhesiveState, rowsAt } from '../../../model/joint/adhesive-state.ts';
import { MODEL_VERSION } from '../../../model/version.ts';
import type { Adhesive, Project } from '../../../shared/project.ts';
import type {
  AdhesiveLedger,
  LedgerEnvironment,
  LedgerGap,
  LedgerReport,
  LedgerStrength,
} from '../../../shared/reports-ledger.ts';
import { type JobContext, unwatched } from '../../jobs/progress.ts';
import { foundationOf } from '../foundation.ts';
import { resolveAdhesive } from '../resolve.ts';
import { allowableToday, isTestedAt, offersAt } from './coupon-sets.ts';
import { type Environment, environmentsOf, gapsOf, type NamedGap } from './environments.ts';
import { type JointUse, jointUses, sameGap, usesAt } from './uses.ts';

/** Lines of one adhesive above which those that no joint uses are left out: nobody reads more. */
const MOST_LINES = 1000;

/** The strength does not hang on the gap where nothing names one: any would do. */
const ANY_GAP = 0.2;

const strengthOf = ({
  shearYield,
  plasticStrain,
  peelStrength,
}: AdhesiveState): LedgerStrength => ({
  shearYield,
  plasticStrain,
  peelStrength: peelStrength ?? null,
});

const theirs = ({ gap, of }: NamedGap, joints: readonly string[]): Omit<LedgerGap, 'factors'> => ({
  gap,
  of,
  strength: null,
  outsideTable: false,
  otherGap: false,
  joints,
});

function environmentLedger(
  project: Project,
  adhesive: Adhesive,
  place: Environment,
  { uses, gaps }: { readonly uses: readonly JointUse[]; readonly gaps: readonly NamedGap[] },
): LedgerEnvironment {
  const resolved = resolveAdhesive(adhesive);
  const there = usesAt(uses, place);
  const ids = there.map(({ jointId }) => jointId);
  const jointsAt = ({ joints }: NamedGap): readonly string[] => ids.filter((id) => joints.has(id));
  const common = { ...place, offers: offersAt(project, adhesive, place), uses: there };
  try {
    const { table, ledgers, left } = adhesiveInBonds(
      resolved.adhesive,
      gaps.map(({ gap }) => gap ?? ANY_GAP),
      place,
    );
    const { below, above, share, outsideTable } = rowsAt(
      resolved.adhesive,
      place.temperature,
      place.moisture,
    );
    const { basis, words, allowables, exact } = foundationOf(resolved, place);
    const rowsUsed =
      below === above || share === 0 ? [below] : share === 1 ? [above] : [below, above];
    return {
      ...common,
      table: strengthOf(table),
      why: '',
      rows: outsideTable ? 'beyond' : rowsUsed.length === 1 ? 'at' : 'between',
      rowsAt: rowsUsed.map(({ temperature }) => temperature),
      basis,
      restsOn: words.message,
      ...(words.figures ? { restsOnFigures: words.figures } : {}),
      source: allowables[0]?.setName ?? adhesive.source.text,
      allowables: allowables.map((one) => allowableToday(project, adhesive, one)),
      testedHere: exact,
      gaps: gaps.map((one, i) => {
        const { gapOutsideTable, ...factors } = ledgers[i]!;
        return {
          ...theirs(one, jointsAt(one)),
          factors,
          strength: strengthOf(left[i]!),
          outsideTable: gapOutsideTable,
          otherGap:
            one.gap !== null &&
            allowables.some(({ gap }) => sameGap(gap) !== one.gap) &&
            !isTestedAt(project, adhesive, place, one.gap),
        };
      }),
    };
  } catch (error) {
    if (!(error instanceof ModelError)) throw error;
    return {
      ...common,
      table: null,
      why: error.message,
      rows: 'none',
      rowsAt: [],
      basis: null,
      restsOn: '',
      source: '',
      allowables: [],
      testedHere: false,
      gaps: gaps.map((one) => ({ ...theirs(one, jointsAt(one)), factors: null })),
    };
  }
}

function adhesiveLedger(
  project: Project,
  adhesive: Adhesive,
  all: readonly JointUse[],
): AdhesiveLedger {
  const uses = all.filter(({ joint }) => joint.adhesive === adhesive.id);
  const gaps = gapsOf(project, adhesive, uses);
  const places = environmentsOf(project, adhesive);
  const whole = places.map((place) => environmentLedger(project, adhesive, place, { uses, gaps }));
  const isMany = places.length * gaps.length > MOST_LINES;
  const environments = isMany
    ? whole.map((one) => ({ ...one, gaps: one.gaps.filter(({ joints }) => joints.length > 0) }))
    : whole;
  const lines = (list: readonly LedgerEnvironment[]): number =>
    list.reduce((sum, one) => sum + one.gaps.length, 0);
  const { id, name, source, knockdowns = null, fracture = null, fatigue = null } = adhesive;
  return {
    id,
    name,
    source,
    knockdowns,
    fracture,
    fatigue,
    joints: project.joints.filter((joint) => joint.adhesive === id).length,
    environments,
    leftOut: lines(whole) - lines(environments),
  };
}

export function ledgerReport(project: Project, { progress }: JobContext = unwatched): LedgerReport {
  const { joints, adhesives } = project;
  const total = joints.length + adhesives.length;
  const { uses, refused } = jointUses(project, (done, name) => progress(done, total, name));
  return {
    project: project.name,
    adhesives: adhesives.map((adhesive, i) => {
      const ledger = adhesiveLedger(project, adhesive, uses);
      progress(joints.length + i + 1, total, adhesive.name);
      return ledger;
    }),
    refused,
    modelVersion: MODEL_VERSION,
  };
}
