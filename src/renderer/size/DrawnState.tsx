/** Above the chart: which case, gap and load are drawn. */
import { For, type JSX } from 'solid-js';
import type { LoadCase } from '../../shared/project.ts';
import type { GapState, StressReport } from '../../shared/reports.ts';
import { clocking, environment, figure, gapWords } from '../../shared/words.ts';
import type { Choice as Chosen } from '../state/drawn-state.ts';
import { Choice } from './Choice.tsx';

export interface DrawnStateProps {
  readonly cases: readonly LoadCase[];
  readonly stress: StressReport;
  readonly flat: boolean;
  readonly choice: Chosen;
  readonly asked: number;
  readonly onChoice: (choice: Chosen) => void;
}

const gapStates: readonly GapState[] = ['min', 'nominal', 'max'];

export function DrawnState(props: DrawnStateProps): JSX.Element {
  const drawnCase = (): LoadCase | undefined =>
    props.cases.find(({ id }) => id === props.stress.caseId);
  const caseOptions = () => [
    {
      value: '',
      text:
        props.choice.caseId === null
          ? `Governing: ${drawnCase()?.name ?? props.stress.caseId}`
          : 'Governing case',
    },
    ...props.cases.map(({ id, name }) => ({ value: id, text: name })),
  ];
  const gapOptions = () => [
    {
      value: '',
      text:
        props.choice.gapState === null
          ? `Governing: ${gapWords[props.stress.gapState]}`
          : 'Governing gap',
    },
    ...gapStates.map((state) => ({ value: state, text: gapWords[state] })),
  ];
  const pickGap = (value: string): void => {
    const gapState = gapStates.find((state) => state === value) ?? null;
    props.onChoice({ ...props.choice, gapState, theta: null, row: null });
  };
  const loads = () => [
    { factored: false, text: 'as applied' },
    { factored: true, text: `× ${figure(props.asked)} asked` },
  ];

  return (
    <div class="drawn">
      <Choice
        name="Load case drawn"
        options={caseOptions()}
        value={props.choice.caseId ?? ''}
        onChoose={(value) =>
          props.onChoice({
            ...props.choice,
            caseId: value === '' ? null : value,
            theta: null,
            row: null,
          })
        }
      />
      <Choice
        name="Gap drawn"
        options={gapOptions()}
        value={props.choice.gapState ?? ''}
        onChoose={pickGap}
      />
      <span class="drawn-note">
        {environment(props.stress.temperature, drawnCase()?.moisture ?? 'dry')}
        {props.flat ? '' : ` · θ ${clocking(props.stress.theta)}`}
      </span>
      <fieldset class="segments">
        <legend class="hidden">Load drawn</legend>
        <For each={loads()}>
          {(load) => (
            <label>
              <input
                type="radio"
                name="load-drawn"
                checked={props.choice.factored === load.factored}
                onChange={() => props.onChoice({ ...props.choice, factored: load.factored })}
              />
              <span>{load.text}</span>
            </label>
          )}
        </For>
      </fieldset>
    </div>
  );
}
