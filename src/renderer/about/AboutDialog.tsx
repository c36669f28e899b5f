/** What this program is, what it runs on, under which licences, and the cautions; the texts open in its place. */
import { createSignal, For, type JSX, onMount, Show } from 'solid-js';
import { cautions } from '../../shared/cautions.ts';
import type { Bridge } from '../../shared/contract.ts';
import type { About } from '../../shared/reports.ts';
import { sentence } from '../../shared/words.ts';
import { KeysDialog } from '../actions/KeysDialog.tsx';
import { type LegalName, LegalView } from './LegalView.tsx';

export interface AboutDialogProps {
  readonly bridge: Pick<Bridge, 'ask'>;
  readonly onClose: () => void;
}

/** What carries the page, in words. */
export function runsInText({ carrier, electron }: About): string {
  if (carrier !== 'electron') return 'a browser, by the host on this machine';
  return electron === null
    ? 'Electron'
    : `Electron ${electron.version}, with Chromium ${electron.chromium}`;
}

export function AboutDialog(props: AboutDialogProps): JSX.Element {
  const [about, setAbout] = createSignal<About | null>(null);
  const [trouble, setTrouble] = createSignal<string | null>(null);
  const [open, setOpen] = createSignal<LegalName | null>(null);
  const openers: Partial<Record<LegalName, HTMLButtonElement>> = {};
  onMount(async () => {
    const reply = await props.bridge.ask('app.about', {});
    if (reply.ok) setAbout(reply.value);
    else setTrouble(reply.error.message);
  });

  /** The button that opened the text has the focus again, not the one that put it away. */
  const back = (): void => {
    const from = open();
    setOpen(null);
    if (from !== null) openers[from]?.focus();
  };
  const Row = (row: { readonly of: string; readonly children: JSX.Element }): JSX.Element => (
    <div>
      <dt>{row.of}</dt>
      <dd>{row.children}</dd>
    </div>
  );
  const opener = (name: LegalName, text: string): JSX.Element => (
    <button
      ref={(button) => {
        openers[name] = button;
      }}
      type="button"
      class="link"
      onClick={() => setOpen(name)}
    >
      {text}
    </button>
  );

  return (
    <KeysDialog class="about-dialog" label="About Lapwright" onClose={props.onClose}>
      <header class="about-head">
        <h2>About Lapwright</h2>
        <Show when={open() !== null}>
          <button type="button" class="link" onClick={back}>
            Back
          </button>
        </Show>
        <button type="button" class="link" aria-keyshortcuts="Escape" onClick={props.onClose}>
          Close
        </button>
      </header>
      <Show
        when={open()}
        keyed
        fallback={
          <div class="about-body">
            <Show when={trouble()}>{(message) => <p role="alert">{sentence(message())}</p>}</Show>
            <dl class="about-facts">
              <Row of="Program">{about()?.version}</Row>
              <Row of="Model">
                {about()?.modelVersion}{' '}
                <span class="units">another number means that figures can differ</span>
              </Row>
              <Row of="Runs in">
                <Show when={about()}>{(is) => runsInText(is())}</Show>
              </Row>
              <Row of="Calculates with">
                <Show when={about()}>{(is) => `Node ${is().node}`}</Show>
              </Row>
              <Row of="Licence">MIT {opener('licence', 'Read the licence')}</Row>
              <Row of="Packages built in">{opener('notices', 'Read their notices')}</Row>
            </dl>
            <Show when={about()?.electron}>
              <p class="units">
                The notices of Electron and Chromium lie in the folder of Electron’s program,
                LICENSE and LICENSES.chromium.html.
              </p>
            </Show>
            <ul class="about-cautions" aria-label="Cautions">
              <For each={cautions}>{(caution) => <li>{caution}</li>}</For>
            </ul>
          </div>
        }
      >
        {(name) => <LegalView name={name} />}
      </Show>
    </KeysDialog>
  );
}
