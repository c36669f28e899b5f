/** How the inputs of the joint vary, for the whole project: seen by both studies, changed in either. */

import { createEffect, createSignal, For, type JSX, on, Show } from 'solid-js';
import { fromShown, inShown, symbolOf } from '../../../shared/measures.ts';
import type { Tolerance } from '../../../shared/project-settings.ts';
import type { Distribution, InputTolerance } from '../../../shared/reports-scatter.ts';
import { distributionWords, originWords, spreadMeasures } from '../../../shared/scatter-words.ts';
import { TakeOut } from '../../parts/TakeOut.tsx';
import { tolerancesSheet } from '../../sheets/study-sheets.ts';
import { createAct } from '../../state/act.ts';
import { withOneJoint } from '../../state/project.ts';
import { Choice } from '../Choice.tsx';
import type { ViewProps } from '../views.ts';
import { PlainNumber } from './PlainNumber.tsx';

const PATH = ['settings', 'tolerances'] as const;
const distributions = (['normal', 'uniform', 'triangular'] as const).map((value) => ({
  value,
  text: distributionWords[value],
}));

/** Largest spread that the project file takes, as shown. */
const most = { mm: 100, '°C': 200, '1': 90 } as const;

const spreads = {
  mm: 'toleranceSize',
  '°C': 'toleranceTemperature',
  '1': 'toleranceShare',
} as const;

/** True where it is shown in the unit that is stored. */
const isStored = (unit: InputTolerance['unit']): boolean =>
  unit === '1' || symbolOf(spreadMeasures[unit]) === unit;
/** Shares are shown in per cent; the last digits of the change are not the input's. */
const inUnit = (value: number, unit: InputTolerance['unit']): number =>
  Number(
    (unit === '1' ? 100 * value : inShown(spreadMeasures[unit], value)).toPrecision(
      isStored(unit) ? 12 : 6,
    ),
  );
const shown = ({ spread, unit }: InputTolerance): number => inUnit(spread, unit);
const stored = (value: number, unit: InputTolerance['unit']): number =>
  Number((unit === '1' ? value / 100 : fromShown(spreadMeasures[unit], value)).toPrecision(12));
/** Rounded down: it may itself be typed. */
const mostShown = (unit: InputTolerance['unit']): number => {
  const end = unit === '1' ? most[unit] : inShown(spreadMeasures[unit], most[unit]);
  return Math.floor(end * 1000 + 1e-6) / 1000;
};
const unitText = (unit: InputTolerance['unit']): string =>
  unit === '1' ? '%' : symbolOf(spreadMeasures[unit]);

export function Tolerances(props: Pick<ViewProps, 'bridge' | 'project' | 'index'>): JSX.Element {
  const [rows, setRows] = createSignal<readonly InputTolerance[]>([]);
  createEffect(
    on([props.project.revision, () => props.index], async () => {
      const project = props.project.plain();
      const document = project && withOneJoint(project, props.index);
      const jointId = document?.joints[0]?.id;
      if (!document || jointId === undefined) return;
      const asked = props.project.revision();
      const reply = await props.bridge.ask('joint.tolerances', { document, jointId });
      if (reply.ok && asked === props.project.revision()) setRows(reply.value);
    }),
  );
  const given = (): readonly Tolerance[] | undefined =>
    props.project.document()?.settings.tolerances;

  /** What the project does not say yet is written down with the first change, so that it stays. */
  const change = (input: string, part: { distribution?: Distribution; spread?: number }): void => {
    const list = rows().filter(({ origin, input: own }) => origin !== 'joint' || own === input);
    const next = list.map(({ input: own, distribution, spread }) =>
      own === input
        ? { input: own, distribution, spread, ...part }
        : { input: own, distribution, spread },
    );
    // Rows of other joints, such as of a tube's diameter while a flat joint is shown, are kept.
    const seen = new Set<string>(rows().map(({ input: own }) => own));
    const others = given()?.filter(({ input: own }) => !seen.has(own)) ?? [];
    props.project.edit(PATH, [...next, ...others]);
  };

  return (
    <section class="tolerances" aria-labelledby="tolerances-title">
      <header>
        <h3 id="tolerances-title">Tolerances</h3>
        <span class="units">
          {given() ? 'of the project, for every joint' : 'the project gives none'}
        </span>
        <Show when={given()}>
          <button type="button" class="link" onClick={() => props.project.edit(PATH, undefined)}>
            Typical ones instead
          </button>
        </Show>
        <span class="figure-tools">
          <TakeOut what="Tolerances" sheet={() => tolerancesSheet(rows())} />
        </span>
      </header>
      <table class="study-rows">
        <caption class="hidden">How the inputs of the joint vary</caption>
        <thead>
          <tr>
            <th scope="col">Input</th>
            <th scope="col">Distribution</th>
            <th scope="col">Spread</th>
            <th scope="col">Origin</th>
          </tr>
        </thead>
        <tbody>
          <For each={rows().map(({ input }) => input)}>
            {(input) => {
              const act = createAct(props.project.history, () => PATH);
              const row = () => rows().find((one) => one.input === input)!;
              return (
                <Show when={rows().some((one) => one.input === input)}>
                  <tr classList={{ 'is-still': row().spread === 0 }}>
                    <th scope="row">{row().label}</th>
                    <td>
                      <Choice
                        name={`Distribution of ${row().label}`}
                        help="distribution"
                        options={distributions}
                        value={row().distribution}
                        onChoose={(value) => change(input, { distribution: value as Distribution })}
                      />
                    </td>
                    <td>
                      <PlainNumber
                        name={`Spread of ${row().label}`}
                        help={spreads[row().unit]}
                        value={shown(row())}
                        min={0}
                        max={mostShown(row().unit)}
                        unit={unitText(row().unit)}
                        act={act}
                        onValue={(value) => change(input, { spread: stored(value, row().unit) })}
                      />
                    </td>
                    <td classList={{ typical: row().origin === 'typical' }}>
                      {row().spread === 0 ? 'does not vary' : originWords[row().origin]}
                    </td>
                  </tr>
                </Show>
              );
            }}
          </For>
        </tbody>
      </table>
      <p class="asked-note">
        Spread: standard deviation of a normal distribution, half-width of the others. One draw
        moves every wall, bond and case alike. Tolerances are assumptions: coupons and measured
        parts decide.
      </p>
    </section>
  );
}
