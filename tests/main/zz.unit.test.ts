import { test } from 'vitest';
import { openDemo } from '../../src/main/demo/demo.ts';
import { resolveJoint } from '../../src/main/handlers/resolve.ts';
import { sizeJoint } from '../../src/main/handlers/sizing/size-joint.ts';
import { sizingAnswer, suggestionText, noHelpText } from '../../src/shared/sizing-words.ts';
test('t', () => {
  const r = openDemo(); if (!r.ok) return;
  const p = r.value.document;
  for (const [i, j] of p.joints.entries()) for (const vary of (['overlap','sleeve-wall','tube-wall','gap'] as const)) {
    const t = performance.now(); let n = 0; const log: string[] = []; let last='';
    const a = sizeJoint(p, resolveJoint(p, i), { vary }, { progress(d, tot, w) { n++; if (w !== last) { last = w!; log.push(`${((performance.now()-t)/1000).toFixed(1)}s ${w} ${d}/${tot}`);} } });
    console.log(`#${j.id} ${vary} ${((performance.now()-t)/1000).toFixed(1)} s, ${n} analyses`);
    if (!a.ok) { console.log('#', a.error); continue; }
    console.log('#' + sizingAnswer(a.value));
    console.log('#' + a.value.points.map(p => `${p.value}:${p.margin.toFixed(3)}`).join(' '));
    console.log('#' + JSON.stringify(a.value.found?.checks.map(c => [c.value, c.reached, c.margin?.margin])));
    if (!a.value.found) { console.log('#' + log.join(' | ')); for (const s of a.value.suggestions) console.log('#  ', s.change, suggestionText(vary, s)); console.log('#' + noHelpText(a.value)); }
  }
}, 600000);
