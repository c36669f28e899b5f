/** Every formula that the core hands over is one that the page can typeset. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { root } from '../../src/launch/root.mjs';
import { createAsk } from '../../src/main/ask.ts';
import { parseFormula } from '../../src/renderer/formula/parse.ts';
import { questionOf, type Subject, subjectOfMargin } from '../../src/renderer/state/working.ts';
import type { Project } from '../../src/shared/project.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { JointReport, Working } from '../../src/shared/reports.ts';

const demo = join(root, 'src', 'main', 'demo', 'curlew.lapwright.json');
const document = JSON.parse(readFileSync(demo, 'utf8')) as Project;
const ask = createAsk({ carrier: 'terminal' });

const figures: readonly Subject[] = [
  { kind: 'figure', subject: 'peak-shear' },
  { kind: 'figure', subject: 'peak-peel' },
  { kind: 'figure', subject: 'bond-strength' },
  { kind: 'figure', subject: 'plateau' },
];

const patience = 300_000;

it.each(document.joints.map(({ id }) => id))(
  'in the workings of %s',
  async (jointId) => {
    const reply = (await ask('joint.analyse', {
      document,
      jointId,
      focus: {},
    })) as Reply<JointReport>;
    if (!reply.ok) throw new Error(reply.error.message);
    const report = reply.value;
    const subjects = [...report.margins.map(subjectOfMargin), ...figures];
    for (const subject of subjects) {
      const question = questionOf(subject, report);
      const answer = (await ask('joint.explain', {
        document,
        jointId,
        ...question,
      })) as Reply<Working>;
      // The page asks for what the list shows: no row may be without its working.
      if (!answer.ok) throw new Error(`${subject.subject}: ${answer.error.message}`);
      expect(answer.value.cards.length, subject.subject).toBeGreaterThan(0);
      for (const { id, formula, filled } of answer.value.cards) {
        for (const text of [formula, filled]) {
          expect(parseFormula(text), `${subject.subject}, ${id}: ${text}`).not.toBeNull();
        }
      }
      const listed = report.margins.find(
        ({ mode, part }) => mode === subject.subject && part === subject.part,
      );
      if (listed) expect(answer.value.margin?.margin).toBeCloseTo(listed.margin, 9);
    }
  },
  patience,
);
