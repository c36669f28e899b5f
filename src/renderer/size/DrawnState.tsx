/** Above the chart: which case, gap and load are drawn. */
import { For, type JSX } from 'solid-js';
import type { LoadCase, Project } from '../../shared/project.ts';
import type { StressReport } from '../../shared/reports.ts';
import { surroundingsOf } from '../../shared/surroundings.ts';
import { caseText, clocking, environment, figure, gapWords } from '../../shared/words.ts';
import type { Choice as Chosen } from '../state/drawn-state.ts';
import { Choice } from './Choice.tsx';

export interface DrawnStateProps {
  readonly project: Project;
  readonly cases: readonly LoadCase[];
  readonly stress: StressReport;
  readonly flat: boolean;
  readonly choice: Chosen;
  readonly asked: number;
  readonly onChoice: (choice: Chosen) => void;
}

/** A case and the surroundings it is judged in, as the value of an option; ids hold no space. */
const written = (caseId: string, conditionId: string | null): string =>
  conditionId === null ? caseId : `${caseId} ${conditionId}`;

export function DrawnState(props: DrawnStateProps): JSX.Element {
  const drawnCase = (): LoadCase | undefined =>
    props.cases.find(({ id }) => id === props.stress.caseId);
  const caseOptions = () => [
    {
      value: '',
      text:
        props.choice.caseId === null
          ? `Governing: ${caseText(drawnCase()?.name ?? props.stress.caseId, props.stress.conditionName)}`
          : 'Governing case',
    },
    ...props.cases.flatMap((one) =>
      surroundingsOf(props.project, one).map((condition) => ({
        value: written(one.id, condition?.id ?? null),
        text: caseText(one.name, condition?.name ?? null),
      })),
    ),
  ];
  const gapOptions = () => [
    {
      value: '',
      text:
        props.choice.gapState === null
          ? `Governing: ${gapWords[props.stress.gapState]}`
          : 'Governing gap',
    },
    ...props.stress.gapStates.map((state) => ({ value: state, text: gapWords[state] })),
  ];
  const pickGap = (value: string): void => {
    const gapState = props.stress.gapStates.find((state) => state === value) ?? null;
    props.onChoice({ ...props.choice, gapState, theta: null, row: null });
  };
  const chosenCase = (caseId: string): string => {
    const { conditionId } = props.choice;
    return written(caseId, conditionId === undefined ? props.stress.conditionId : conditionId);
  };
  const pickCase = (value: string): void => {
    const [caseId, conditionId = null] = value.split(' ');
    const chosen =
      value === '' ? { caseId: null, conditionId: undefined } : { caseId: caseId!, conditionId };
    props.onChoice({ ...props.choice, ...chosen, theta: null, row: null });
  };
  const loads = () => [
    { factored: false, text: 'as applied' },
    { factored: true, text: `× ${figure(props.asked)} asked` },
  ];

  return (
    <div class="drawn">
      <Choice
        name="Load case drawn"
        help="drawnCase"
        options={caseOptions()}
        value={props.choice.caseId === null ? '' : chosenCase(props.choice.caseId)}
        onChoose={pickCase}
      />
      <Choice
        name="Gap drawn"
        help="drawnGap"
        options={gapOptions()}
        value={props.choice.gapState ?? ''}
        onChoose={pickGap}
      />
      <span class="drawn-note">
        {environment(props.stress.temperature, props.stress.moisture)}
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
