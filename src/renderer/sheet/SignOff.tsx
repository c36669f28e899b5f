/** The end of the sheet: cautions in full, who signs, what was changed when. */
import { For, type JSX } from 'solid-js';
import { cautions } from '../../shared/cautions.ts';
import type { SheetData } from './data.ts';

/** Rows to be filled in by hand, under those of the project. */
const BLANK = 2;
const blank = '\u00A0';

export function SignOff(props: { readonly data: SheetData }): JSX.Element {
  const sheet = props.data.project.sheet;
  const signs: readonly (readonly [string, string | undefined])[] = [
    ['Prepared', sheet?.prepared],
    ['Checked', sheet?.checked],
    ['Approved', sheet?.approved],
  ];
  const given = sheet?.revisions ?? [];
  const blanks = Array.from({ length: BLANK }, () => ({
    revision: '',
    date: '',
    by: '',
    change: '',
  }));
  return (
    <>
      <h2>Cautions</h2>
      <For each={cautions}>{(text) => <p class="sheet-caution">{text}</p>}</For>
      <h2>Sign-off</h2>
      <table class="paper-rows sign-table">
        <thead>
          <tr>
            <th scope="col">Role</th>
            <th scope="col">Name</th>
            <th scope="col">Date</th>
            <th scope="col">Signature</th>
          </tr>
        </thead>
        <tbody>
          <For each={signs}>
            {([role, name]) => (
              <tr>
                <th scope="row">{role}</th>
                <td>{name || blank}</td>
                <td>{blank}</td>
                <td>{blank}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <h2>Revisions</h2>
      <table class="paper-rows revision-table">
        <thead>
          <tr>
            <th scope="col">Revision</th>
            <th scope="col">Date</th>
            <th scope="col">By</th>
            <th scope="col">Change</th>
          </tr>
        </thead>
        <tbody>
          <For each={[...given, ...blanks]}>
            {(row) => (
              <tr>
                <th scope="row">{row.revision || blank}</th>
                <td>{row.date || blank}</td>
                <td>{row.by || blank}</td>
                <td>{row.change || blank}</td>
              </tr>
            )}
          </For>
        </tbody>
      </table>
    </>
  );
}
