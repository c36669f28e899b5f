/** A host for the page in a test: answers like the real one, and lets the test see and steer. */
import { ledgerReport } from '../../../src/main/handlers/ledger/ledger.ts';
import type { Answers, Bridge, RequestInput, RequestName } from '../../../src/shared/contract.ts';
import type { Project } from '../../../src/shared/project.ts';
import { ok, type Reply, type RequestError } from '../../../src/shared/reply.ts';
import { makeCompareReport, makeVariant } from './compare.ts';
import { makeCouponsReport } from './coupons.ts';
import { makeGapReport, makeGapVerdict } from './gap.ts';
import { makeLaminateReport } from './laminate.ts';
import { makeProject } from './project.ts';
import {
  makeCorners,
  makeMap,
  makeMargin,
  makeReport,
  makeSheet,
  makeStress,
  makeSummary,
  makeSweep,
  makeWorking,
} from './reports.ts';
import { makeSizes, makeSizing } from './sizing.ts';

type Answerers = {
  [N in RequestName]?: (input: RequestInput<N>) => Reply<Answers[N]>;
};

export interface Asked {
  readonly name: RequestName;
  /** As it was when it was asked: plain data, as any carrier would send it. */
  readonly input: Record<string, unknown>;
}

export interface FakeBridge extends Bridge {
  readonly asked: readonly Asked[];
  count(name: RequestName): number;
  last(name: RequestName): Asked['input'];
  answer<N extends RequestName>(
    name: N,
    answer: (input: RequestInput<N>) => Reply<Answers[N]>,
  ): void;
  refuse(name: RequestName, error: Partial<RequestError>): void;
  /** Answers wait until `release`, for tests of what is shown meanwhile. */
  hold(): void;
  release(): Promise<void>;
}

const documentOf = (input: unknown): Project => (input as { document: Project }).document;

export function makeFakeBridge(project: Project = makeProject()): FakeBridge {
  const asked: Asked[] = [];
  let held: (() => void)[] | null = null;
  const answers: Answerers = {
    'app.first-start': () => ok({ first: false }),
    'project.initial': () =>
      ok({ document: structuredClone(project), origin: 'test.lapwright.json' }),
    'project.demo': () => ok({ document: makeProject({ name: 'Curlew' }), origin: 'Curlew' }),
    'project.read': ({ text, origin }) => ok({ document: JSON.parse(text) as Project, origin }),
    'project.check': (input) => {
      const { joints, name, settings } = documentOf(input);
      const margins = [0.9, -0.12, 0.1];
      return ok({
        project: name,
        targetMargin: settings.targetMargin,
        joints: joints.map((joint, i) =>
          makeSummary(joint, joint.loads.length > 0 ? makeMargin(margins[i] ?? 1) : null),
        ),
        counts: { fails: 1, low: 1, holds: 1 },
        modelVersion: '1',
      });
    },
    'project.corners': (input) =>
      ok(
        makeCorners(documentOf(input), {
          'tip gust': 0.4,
          'tip landing': -0.2,
          'root gust': 0.1,
          'lug gust': 0.9,
        }),
      ),
    'joint.analyse': (input) => ok(makeReport(documentOf(input).joints[0]!)),
    'joint.stress': (input) => {
      const [joint] = documentOf(input).joints;
      const { overlap = 30, id = '' } = joint ?? {};
      const map = input.focus.map === undefined ? null : makeMap(overlap, input.focus.map);
      return ok(makeStress(overlap, { jointId: id, map }));
    },
    'joint.explain': (input) => ok(makeWorking({ title: `working of ${input.subject}` })),
    'joint.sweep': () => ok(makeSweep()),
    'app.about': () =>
      ok({
        version: '9.9.9',
        modelVersion: '1',
        carrier: 'loopback',
        node: '20.19.0',
        electron: null,
      }),
    'joint.sheet': (input) => ok(makeSheet(documentOf(input).joints[0]!, input)),
    'sheet.pdf': ({ name }) => ok({ name: `${name}.pdf` }),
    'project.compare': (input) => ok(makeCompareReport(documentOf(input), input)),
    'project.coupons': (input) => ok(makeCouponsReport(documentOf(input))),
    'project.ledger': (input) => ok(ledgerReport(documentOf(input))),
    'joint.variant': (input) => ok(makeVariant(documentOf(input), input)),
    'joint.size': (input) => ok(makeSizing(documentOf(input).joints[0]!)),
    'joint.sizes': (input) => ok(makeSizes(documentOf(input).joints[0]!, input.each)),
    'joint.gap': ({ document, measured }) =>
      ok(makeGapReport((document as Project).joints[0]!, measured)),
    'joint.gap-verdict': ({ document, measured }) =>
      ok(makeGapVerdict((document as Project).joints[0]!, measured)),
    'file.places': () => ok({ dialogs: false, folders: [], recent: [], last: null }),
    'file.stamp': () => ok({ stamp: null, at: null }),
    'recovery.keep': () => ok({ at: '2026-03-01T09:00:00Z' }),
    'recovery.kept': () => ok({ kept: [] }),
    'recovery.drop': () => ok({ dropped: true, at: null, until: null }),
    'bench.kept': () => ok({ checks: [] }),
    'bench.keep': () => ok({ at: '2026-03-01T09:00:00Z' }),
    'bench.drop': () => ok({ dropped: true }),
    'rows.kept': () => ok({ sets: [] }),
    'rows.keep': () => ok({ at: '2026-03-01T09:00:00Z' }),
    'rows.drop': () => ok({ dropped: true }),
    'job.progress': () =>
      ok({ state: 'unknown', done: 0, total: 0, what: '', elapsed: 0, left: null }),
    'job.found': () => ok({ joints: [] }),
    'job.stop': () => ok({ stopped: false }),
    'laminate.describe': ({ document, adherendId, wall, flat }) =>
      ok(makeLaminateReport(document as Project, adherendId, wall, flat)),
  };

  return {
    carrier: 'loopback',
    asked,
    count: (name) => asked.filter((one) => one.name === name).length,
    last: (name) => asked.findLast((one) => one.name === name)?.input ?? {},
    answer: (name, answer) => Object.assign(answers, { [name]: answer }),
    refuse(name, error) {
      const whole: RequestError = { code: 'bad-input', field: '', message: 'no', ...error };
      Object.assign(answers, { [name]: () => ({ ok: false, error: whole }) });
    },
    hold: () => {
      held ??= [];
    },
    async release() {
      const waiting = held ?? [];
      held = null;
      for (const go of waiting) go();
      await new Promise((done) => setTimeout(done));
    },
    async ask(name, input) {
      const sent = JSON.parse(JSON.stringify(input)) as Record<string, unknown>;
      asked.push({ name, input: sent });
      if (held) await new Promise<void>((go) => held?.push(go));
      const answer = answers[name] as ((input: unknown) => Reply<never>) | undefined;
      if (!answer) throw new Error(`No answer for ${name}`);
      return answer(sent);
    },
  };
}
