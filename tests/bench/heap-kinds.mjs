/** What the heap of a page holds, by who made it: the program's own things, code that was compiled, the browser's. */

/** What V8 keeps of functions: their code, where it may be entered, what it has learnt of them. */
const COMPILED = new Set(['code', 'hidden', 'object shape']);
/** Entries that the browser writes about the page's own times. */
const TIMINGS = /^(Performance|TaskAttribution)/;

/**
 * @param {import('playwright-core').CDPSession} client of the page
 * @returns bytes of each kind
 */
export async function heapKinds(client) {
  let text = '';
  const add = ({ chunk }) => {
    text += chunk;
  };
  client.on('HeapProfiler.addHeapSnapshotChunk', add);
  await client.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  client.off('HeapProfiler.addHeapSnapshotChunk', add);
  const { snapshot, nodes, strings } = JSON.parse(text);
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, name, size] = ['type', 'name', 'self_size'].map((field) => fields.indexOf(field));
  const kinds = { program: 0, compiled: 0, timings: 0 };
  for (let at = 0; at < nodes.length; at += fields.length) {
    const what = types[0][nodes[at + type]];
    const isTiming = what === 'native' && TIMINGS.test(strings[nodes[at + name]]);
    kinds[COMPILED.has(what) ? 'compiled' : isTiming ? 'timings' : 'program'] += nodes[at + size];
  }
  return kinds;
}
