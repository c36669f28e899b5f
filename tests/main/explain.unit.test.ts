/** joint.explain: every margin and figure of the demonstration project, its refusals in plain words. */
import { evaluate } from 'mathjs/number';
import { describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import { parseFormula } from '../../src/renderer/formula/parse.ts';
import { figures } from '../../src/shared/contract.ts';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { Card, JointReport, Opened, Working } from '../../src/shared/reports.ts';

const ask = createAsk({ carrier: 'terminal' });
const open = async (): Promise<Project> => {
  const reply = (await ask('project.demo', {})) as Reply<Opened>;
  if (!reply.ok) throw new Error(reply.error.message);
  return structuredClone(reply.value.document) as Project;
};
const demo = await open();

const explain = (jointId: string, subject: string, more: object = {}, document: unknown = demo) =>
  ask('joint.explain', { document, jointId, subject, focus: {}, ...more }) as Promise<
    Reply<Working>
  >;
async function working(jointId: string, subject: string, more: object = {}): Promise<Working> {
  const reply = await explain(jointId, subject, more);
  if (!reply.ok) throw new Error(`${jointId} ${subject}: ${reply.error.message}`);
  return reply.value;
}
async function analyse(jointId: string): Promise<JointReport> {
  const reply = (await ask('joint.analyse', {
    document: demo,
    jointId,
    focus: {},
  })) as Reply<JointReport>;
  if (!reply.ok) throw new Error(reply.error.message);
  return reply.value;
}

/** A reader can repeat it: formula with values, and the filled formula with six digits. */
function expectReadable({ id, formula, filled, values, result, title, statement, source }: Card) {
  for (const text of [title, statement, source]) expect(text, id).not.toBe('');
  expect(parseFormula(formula), formula).not.toBeNull();
  expect(parseFormula(filled), filled).not.toBeNull();
  const scope = Object.fromEntries(values.map(({ symbol, value }) => [symbol, value]));
  const own = evaluate(formula, { ...scope }) as number;
  expect(Math.abs(own - result.value), `${id}: ${formula}`).toBeLessThanOrEqual(
    1e-6 * Math.abs(result.value) + 1e-12,
  );
  // Nothing but figures is left, and they come near: half a unit of the sixth digit in each.
  const put = evaluate(filled, {}) as number;
  const largest = Math.max(...values.map(({ value }) => Math.abs(value)), Math.abs(result.value));
  expect(Math.abs(put - result.value), `${id}: ${filled}`).toBeLessThanOrEqual(
    1e-3 * Math.abs(result.value) + 1e-5 * Math.min(largest, 100),
  );
}

describe.each(demo.joints.map(({ id }) => id))('%s', (id) => {
  it('shows the working of each of its margins, as the list has it', async () => {
    const { margins } = await analyse(id);
    for (const listed of margins) {
      const { mode, part, place, caseId, gapState, theta } = listed;
      const focus = { caseId, gapState, theta };
      const shown = await working(id, mode, { part, place, focus });
      // The list alone adds how long the trough is; its working shows it.
      const { trough: _trough, ...same } = listed;
      expect(shown.margin).toEqual({ ...same, remark: shown.margin!.remark });
      expect(shown.title).toBe(listed.label);
      expect(shown.where).toContain(listed.caseName);
      for (const card of shown.cards) expectReadable(card);
      const last = shown.cards[shown.cards.length - 1]!;
      expect(last.result.value).toBe(listed.margin);
      expect(last.domain.filter(({ inside }) => !inside).map(({ text }) => text)).toEqual(
        listed.flags.map(({ message }) =>
          message.replace('Outside the domain, which asks that ', '').replace(/\.$/, ''),
        ),
      );
      expect(last.domain.length).toBeGreaterThan(2);
    }
  });

  it('explains the same margin when only its name is given', async () => {
    const { margins } = await analyse(id);
    const first = margins[0]!;
    const shown = await working(id, first.mode, { part: first.part, place: first.place });
    expect(shown.margin!.margin).toBe(first.margin);
  });
});

describe('figures', () => {
  it('peak shear, peak peel and strength are those of the drawn state', async () => {
    for (const id of ['boom-root', 'boom-tip', 'landing-leg', 'tail-strut']) {
      const stress = (await analyse(id)).stress!;
      const { caseId, gapState, theta, loadFactor } = stress;
      const focus = { caseId, gapState, theta, loadFactor };
      for (const bond of stress.bonds) {
        const { part } = bond;
        const shear = await working(id, 'peak-shear', { part, focus });
        shear.cards.forEach(expectReadable);
        expect(shear.cards.at(-1)!.result.value).toBeCloseTo(Math.abs(bond.peak.value), 9);
        const peel = await working(id, 'peak-peel', { part, focus });
        peel.cards.forEach(expectReadable);
        expect(peel.cards.at(-1)!.result.value).toBeCloseTo(bond.layered.peak.value, 7);
        expect(peel.margin).toBeNull();
        // The last domain that depends on the place is that of the figure's own place.
        const root = peel.cards.at(-1)!.domain.find(({ text }) => text.includes('from the root'));
        const far = bond.layered.peak.x >= 5 * Math.max(...stress.bonds.map(({ gap }) => gap));
        if (stress.bonds.length === 2) expect(root!.inside).toBe(far);
      }
      const strength = await working(id, 'bond-strength', { focus });
      strength.cards.forEach(expectReadable);
      expect(strength.cards.at(-1)!.result.value).toBeCloseTo(stress.capacity, 9);
    }
  });

  it('the plateau is where the strength is 98 % of the longest', async () => {
    const { cards, where } = await working('landing-leg', 'plateau');
    cards.forEach(expectReadable);
    expect(cards.at(-1)!.result.value).toBeCloseTo(0.98, 3);
    expect(where).toContain('plateau at');
    // Domains are those of the joint at its plateau, not as it is drawn.
    const long = cards.at(-1)!.domain.find(({ text }) => text.includes('thickest wall'))!;
    expect(Number(/here ([\d.]+)/.exec(long.text)![1])).toBeGreaterThan(20);
  });

  it('only a flat single lap has an edge moment', async () => {
    const reply = await explain('tail-strut', 'edge-moment');
    expect(reply.ok).toBe(false);
    expect(!reply.ok && reply.error.message).toContain('flat single lap');
  });
});

describe('a flat single lap', () => {
  it('shows its edge moments by both methods, the chosen one last', async () => {
    const document = structuredClone(demo) as unknown as { joints: Record<string, unknown>[] };
    const joint = document.joints.find(({ id }) => id === 'tail-strut')!;
    const { lowerStrap, lowerBond, upperStrap: _s, upperBond: _b, ...rest } = joint;
    document.joints = [{ ...rest, type: 'flat-single', plate: lowerStrap, bond: lowerBond }];
    const input = { document, jointId: 'tail-strut', focus: {} };
    const analysed = (await ask('joint.analyse', input)) as Reply<JointReport>;
    if (!analysed.ok) throw new Error(analysed.error.message);
    const { edgeMoment } = analysed.value.stress!;
    const reply = await explain('tail-strut', 'edge-moment', {}, document);
    if (!reply.ok) throw new Error(reply.error.message);
    const { cards } = reply.value;
    cards.forEach(expectReadable);
    const results = (id: string) =>
      cards.filter((card) => card.id === id).map(({ result }) => result.value);
    const { golandReissner, hartSmith } = edgeMoment!;
    expect(results('edge-goland-reissner')).toEqual([golandReissner.root, golandReissner.mouth]);
    expect(results('edge-hart-smith')).toEqual([hartSmith.root, hartSmith.mouth]);
    expect(cards.at(-1)!.id).toBe('edge-moment');
    for (const { mode, part, place } of analysed.value.margins) {
      const shown = await explain('tail-strut', mode, { part, place }, document);
      expect(shown.ok, mode).toBe(true);
    }
  });
});

const messageOf = (reply: Reply<Working>): string => (reply.ok ? '' : reply.error.message);

describe('refusals', () => {
  it('names what there is', async () => {
    const message = messageOf(await explain('boom-tip', 'creep'));
    expect(message).toContain('"creep"');
    const there = figures.filter((name) => name !== 'edge-moment');
    for (const name of ['adhesive-yield', ...there]) expect(message).toContain(name);
    // A sleeve carries its load without one.
    expect(message).not.toContain('edge-moment');
  });

  it('names the cases and bonds that there are', async () => {
    const focus = { caseId: 'storm' };
    expect(messageOf(await explain('boom-tip', 'adhesive-yield', { focus }))).toContain(
      'gust-cold',
    );
    expect(messageOf(await explain('boom-tip', 'peak-shear', { part: 'seam' }))).toContain('bond');
    const part = 'wing';
    expect(messageOf(await explain('boom-tip', 'metal-yield', { part }))).toContain('sleeve');
  });

  it('says why a mode is not judged', async () => {
    const bare = structuredClone(demo) as unknown as {
      adhesives: { states: { peelStrength?: number }[]; fracture?: object; fatigue?: object }[];
    };
    for (const adhesive of bare.adhesives) {
      for (const row of adhesive.states) delete row.peelStrength;
      delete adhesive.fracture;
      delete adhesive.fatigue;
    }
    const why = async (mode: string, joint = 'boom-tip'): Promise<string> =>
      messageOf(await explain(joint, mode, {}, bare));
    expect(await why('adhesive-peel')).toContain('no peel strength');
    expect(await why('peel-shear')).toContain('no peel strength');
    expect(await why('fracture')).toContain('no fracture energies');
    expect(await why('cyclic-shear')).toContain('no S-N line');
    expect(await why('first-ply')).toContain('stack of plies');
    expect(messageOf(await explain('landing-leg', 'cyclic-shear'))).toContain('cyclic cases only');
    const focus = { caseId: 'hard-landing' };
    expect(messageOf(await explain('boom-root', 'adhesive-yield', { focus }))).toContain(
      'ultimate',
    );
  });

  it('a joint without a load case has no working', async () => {
    const still = structuredClone(demo) as unknown as { joints: { loads: unknown[] }[] };
    still.joints[1]!.loads = [];
    expect(messageOf(await explain('boom-tip', 'adhesive-yield', {}, still))).toContain(
      'no load case',
    );
  });
});
