/**
 * The check of measured parts on the page. It is a record of the document from its first reading on;
 * every entry is kept on disk too, so that a window that dies loses nothing.
 */
import {
  type Accessor,
  batch,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
} from 'solid-js';
import { carried, clash, fitsJoint } from '../../shared/carried-surfaces.ts';
import type { Bridge } from '../../shared/contract.ts';
import { emptySurfaces } from '../../shared/measured-text.ts';
import { instrumentsOf, measuringPlan } from '../../shared/measuring-plan.ts';
import type { GapCheck, Joint, MeasuredSurface } from '../../shared/project.ts';
import { resultOf } from '../../shared/recorded-check.ts';
import type { RequestError } from '../../shared/reply.ts';
import type { GapReport, GapVerdict } from '../../shared/reports-gap.ts';
import { makeLatest } from '../latest.ts';
import { makeSettle } from '../settle.ts';
import { createJob, type Job } from './job.ts';
import { type Path, type ProjectState, withOneJoint } from './project.ts';

export interface GapCheckState {
  /** Checks of the joint on the page, the latest first. */
  readonly checks: Accessor<readonly GapCheck[]>;
  readonly current: Accessor<GapCheck | null>;
  choose(id: string): void;
  /** A new check; with the readings of another one when that is given. */
  begin(from?: Pick<GapCheck, 'surfaces' | 'tubeSerial' | 'sleeveSerial'>): void;
  /** False where the joint has other surfaces than the check, or is shorter than where it was read. */
  readonly fits: Accessor<boolean>;
  /** A new check with what still fits the joint; the old one stays as it is. */
  carryOver(): void;
  /** Surfaces read from a file: into this check where they are not read yet, else into a new one. */
  takeIn(surfaces: readonly MeasuredSurface[]): void;
  /** Changes the check on the page; of one that is recorded only what goes on after the verdict. */
  edit(path: Path, value: unknown): void;
  /** A reading as it is typed; what was confirmed of the one before it is not of this one. */
  read(surface: number, place: ReadingPlace, value: number | null): void;
  /** What is typed into the cells of a surface of this check and is no number yet. */
  typed(surface: MeasuredSurface['surface']): Map<string, TypedCell>;
  /** The technician has measured again, and it is right. */
  confirm(surface: number, place: ReadingPlace): void;
  /** Of the readings as they are now; null until it is known. */
  readonly report: Accessor<GapReport | null>;
  readonly verdict: Accessor<GapVerdict | null>;
  readonly refusal: Accessor<RequestError | null>;
  readonly job: Job;
  /** When the check was last kept on disk; null before. */
  readonly keptAt: Accessor<string | null>;
  readonly keepTrouble: Accessor<string | null>;
  /** Takes the verdict down. */
  record(): void;
}

export interface TypedCell {
  readonly text: string;
  readonly message: string | null;
}

/** Station and clocking, from 0. */
export type ReadingPlace = readonly [station: number, clocking: number];

export interface GapCheckSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly index: Accessor<number>;
  readonly active: Accessor<boolean>;
}

/** Milliseconds of quiet before margins are asked for: geometry is answered at once. */
const QUIET = 500;

const plainOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
/** Bonding and cure go on after the verdict; each entry has its own time. */
const goesOn = ([head]: Path): boolean => head === 'done' || head === 'cure';
const timeNow = (): string => new Date().toISOString();

export function createGapCheck({ bridge, project, index, active }: GapCheckSource): GapCheckState {
  const joint = (): Joint | undefined => project.document()?.joints[index()];
  const all = (): readonly GapCheck[] => project.document()?.gapChecks ?? [];
  const checks = createMemo(() =>
    all()
      .filter((check) => check.joint === joint()?.id)
      .reverse(),
  );
  const [chosen, setChosen] = createSignal<string | null>(null);
  const current = createMemo(
    () =>
      checks().find(({ id }) => id === chosen()) ??
      checks().find(({ recorded }) => recorded === undefined) ??
      null,
  );

  const typing = new Map<string, Map<string, TypedCell>>();
  const [keptAt, setKeptAt] = createSignal<string | null>(null);
  const [keepTrouble, setKeepTrouble] = createSignal<string | null>(null);
  const keeping = makeLatest(
    (check: GapCheck) => bridge.ask('bench.keep', { project: project.document()!.name, check }),
    (reply) =>
      batch(() => {
        setKeepTrouble(reply.ok ? null : reply.error.message);
        if (reply.ok) setKeptAt(reply.value.at);
      }),
  );
  const keep = (): void => {
    const check = current();
    if (check) keeping.ask(plainOf(check));
  };

  const place = (): number => all().findIndex(({ id }) => id === current()?.id);
  const edit = (path: Path, value: unknown): void => {
    const check = current();
    if (!check || (check.recorded !== undefined && !goesOn(path))) return;
    project.edit(['gapChecks', place(), ...path], value);
    keep();
  };

  const [answer, setAnswer] = createSignal<{ key: string; report: GapReport } | null>(null);
  const [said, setSaid] = createSignal<{ key: string; verdict: GapVerdict } | null>(null);
  const [refusal, setRefusal] = createSignal<RequestError | null>(null);
  /** All that an answer hangs on: the readings and the document around them. */
  const key = createMemo(() => {
    const document = project.document();
    const one = joint();
    if (!document || !one) return '';
    const { adhesives, loadCases, conditions, settings, adherends, plies } = document;
    return JSON.stringify([
      one,
      [current()?.id, current()?.recorded],
      current()?.surfaces ?? [],
      [adhesives, loadCases, conditions, settings, adherends, plies],
    ]);
  });
  const question = () => {
    const whole = project.plain();
    const document = whole && withOneJoint(whole, index());
    const jointId = document?.joints[0]?.id;
    if (!document || jointId === undefined) return null;
    return { document, jointId, measured: plainOf(current()?.surfaces ?? []) };
  };
  const job = createJob(bridge);
  const settle = makeSettle(() => void judge(), QUIET);
  async function judge(): Promise<void> {
    const asked = question();
    const about = key();
    if (!asked) return;
    const reply = await job.run('joint.gap-verdict', asked);
    if (reply.ok) setSaid({ key: about, verdict: reply.value });
    else if (reply.error.code !== 'stopped') setRefusal(reply.error);
  }
  const latest = makeLatest(
    async (about: string) => {
      const asked = question();
      return asked ? { about, reply: await bridge.ask('joint.gap', asked) } : null;
    },
    (found) => {
      if (!found) return;
      const { about, reply } = found;
      batch(() => {
        setRefusal(reply.ok ? null : reply.error);
        if (reply.ok) setAnswer({ key: about, report: reply.value });
      });
      // Margins only of what is whole: until then the geometry says all there is.
      if (reply.ok && reply.value.bonds.length > 0 && about === key()) settle.ask();
    },
  );
  createEffect(
    on([active, key], ([looked, about]) => {
      settle.drop();
      const one = joint();
      // A flat joint has nothing to measure; what is recorded is not computed anew.
      if (!looked || !one || !measuringPlan(one) || current()?.recorded !== undefined) return;
      latest.ask(about);
    }),
  );
  onCleanup(() => {
    settle.drop();
    latest.drop();
  });

  const verdict = (): GapVerdict | null => {
    const found = said();
    return found?.key === key() ? found.verdict : null;
  };

  return {
    checks,
    current,
    choose: setChosen,
    begin(from) {
      const document = project.document();
      const one = joint();
      if (!document || !one) return;
      const check: GapCheck = {
        id: crypto.randomUUID(),
        joint: one.id,
        started: timeNow(),
        by: current()?.by ?? '',
        tubeSerial: from?.tubeSerial ?? '',
        sleeveSerial: from?.sleeveSerial ?? '',
        surfaces: from
          ? plainOf(from.surfaces)
          : plainOf([...emptySurfaces(one, instrumentsOf(document))]),
        done: [],
        cure: [],
      };
      project.edit(['gapChecks'], [...plainOf(all()), check]);
      setChosen(check.id);
      keep();
    },
    fits: () => {
      const one = joint();
      const check = current();
      return !one || !check || check.recorded !== undefined || fitsJoint(check.surfaces, one);
    },
    carryOver() {
      const document = project.document();
      const one = joint();
      const check = current();
      if (!document || !one || !check) return;
      const surfaces = carried(
        plainOf(check.surfaces),
        one,
        emptySurfaces(one, instrumentsOf(document)),
      );
      const { tubeSerial, sleeveSerial } = check;
      this.begin({ surfaces, tubeSerial, sleeveSerial });
    },
    takeIn(surfaces) {
      const document = project.document();
      const one = joint();
      if (!document || !one) return;
      const check = current();
      const isNew = !check || check.recorded !== undefined || clash(check.surfaces, surfaces);
      const here = isNew ? emptySurfaces(one, instrumentsOf(document)) : check.surfaces;
      const whole = plainOf(
        here.map((old) => surfaces.find(({ surface }) => surface === old.surface) ?? old),
      );
      if (isNew) this.begin({ surfaces: whole, tubeSerial: '', sleeveSerial: '' });
      else edit(['surfaces'], whole);
    },
    edit,
    read(surface, [i, j], value) {
      const known = current()?.surfaces[surface]?.confirmed;
      const others = known?.filter(([a, b]) => a !== i || b !== j);
      batch(() => {
        edit(['surfaces', surface, 'diameters', i, j], value);
        if (known && others && others.length < known.length) {
          edit(['surfaces', surface, 'confirmed'], plainOf(others));
        }
      });
    },
    typed(surface) {
      const key = `${current()?.id} ${surface}`;
      const known = typing.get(key) ?? new Map<string, TypedCell>();
      typing.set(key, known);
      return known;
    },
    confirm(surface, [i, j]) {
      const known = current()?.surfaces[surface]?.confirmed ?? [];
      edit(['surfaces', surface, 'confirmed'], [...plainOf(known), [i, j]]);
    },
    report: () => (answer()?.key === key() ? answer()!.report : null),
    verdict,
    refusal,
    job,
    keptAt,
    keepTrouble,
    record() {
      const found = verdict();
      const [document, one] = [project.document(), joint()];
      const result = found && document && one ? plainOf(resultOf(document, one, found)) : null;
      if (!found || !result) return;
      batch(() => {
        edit(['result'], result);
        edit(['recorded'], found.at);
      });
      keep();
    },
  };
}
