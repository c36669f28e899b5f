/** Ids and names that nothing else in a list has. */

/** Longest id and name that the project file takes. */
const ID = 64;
const NAME = 120;

/** `text`, or `text` with the first number behind it that makes it another than all that are there. */
function free(
  text: string,
  taken: ReadonlySet<string>,
  most: number,
  write: (n: number) => string,
): string {
  let end = '';
  for (let n = 2; taken.has(text.slice(0, most - end.length) + end); n += 1) end = write(n);
  return text.slice(0, most - end.length) + end;
}

type Named = { readonly id: string; readonly name: string };

const taken = (others: readonly Named[], of: 'id' | 'name'): ReadonlySet<string> =>
  new Set(others.map((one) => one[of]));

/** The item under an id and a name of its own. */
export const unlike = <T extends Named>(others: readonly Named[], item: T): T => ({
  ...item,
  id: free(item.id, taken(others, 'id'), ID, (n) => `-${n}`),
  name: free(item.name, taken(others, 'name'), NAME, (n) => ` (${n})`),
});

const COPY = ' (copy)';

/** The item as a copy beside the others: `Paste (copy)`. */
export const asCopy = <T extends Named>(others: readonly Named[], item: T): T =>
  unlike(others, {
    ...item,
    id: `${item.id.slice(0, ID - '-copy'.length)}-copy`,
    name: `${item.name.slice(0, NAME - COPY.length)}${COPY}`,
  });
