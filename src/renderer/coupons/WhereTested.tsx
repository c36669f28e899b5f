/** What every set of coupons is of, static or under cycles: specimen, adhesive, environment, gap. */
import { createSignal, type JSX } from 'solid-js';
import { symbolOf } from '../../shared/measures.ts';
import type { Moisture, Project } from '../../shared/project.ts';
import type { CouponSet, Specimen } from '../../shared/project-coupons.ts';
import { Choice } from '../size/Choice.tsx';
import { boxValue, NumberBox } from './NumberBox.tsx';
import { specimenOptions } from './specimen-options.ts';

type Where = Pick<CouponSet, 'adhesive' | 'temperature' | 'moisture' | 'gap'>;

export interface WhereSource {
  readonly project: Project;
  readonly specimens: readonly Specimen[];
  /** What is likely: the set before. */
  readonly like: (Where & Pick<CouponSet, 'specimen'>) | undefined;
}

export interface WhereDraft {
  specimen(): Specimen | undefined;
  /** As it stands in the fields; null while one of them is no number in its range. */
  where(): Where | null;
  fields(): JSX.Element;
}

export function createWhere(source: WhereSource): WhereDraft {
  const { like } = source;
  const [chosen, setChosen] = createSignal(like?.specimen ?? '');
  const [adhesive, setAdhesive] = createSignal(
    like?.adhesive ?? source.project.adhesives[0]?.id ?? '',
  );
  const [temperature, setTemperature] = createSignal(String(like?.temperature ?? 23));
  const [moisture, setMoisture] = createSignal<Moisture>(like?.moisture ?? 'dry');
  const [gap, setGap] = createSignal(String(like?.gap ?? 0.2));
  const specimen = (): Specimen | undefined =>
    source.specimens.find(({ id }) => id === chosen()) ?? source.specimens[0];
  return {
    specimen,
    where() {
      const [at, thick] = [boxValue(temperature(), 'temperature'), boxValue(gap(), 'gap')];
      if (at === undefined || thick === undefined) return null;
      return { adhesive: adhesive(), temperature: at, moisture: moisture(), gap: thick };
    },
    fields: () => (
      <>
        <Choice
          name="Specimen"
          help="testPiece"
          options={specimenOptions(source.specimens)}
          value={specimen()?.id ?? ''}
          onChoose={setChosen}
        />
        <Choice
          name="Adhesive of the set"
          help="adhesive"
          options={source.project.adhesives.map(({ id, name }) => ({ value: id, text: name }))}
          value={adhesive()}
          onChoose={setAdhesive}
        />
        <NumberBox
          name={`Temperature, ${symbolOf('temperature')}`}
          quantity="temperature"
          unit
          text={temperature()}
          onText={setTemperature}
        />
        <Choice
          name="Moisture"
          help="moisture"
          options={[
            { value: 'dry', text: 'dry' },
            { value: 'wet', text: 'wet' },
          ]}
          value={moisture()}
          onChoose={(value) => setMoisture(value as Moisture)}
        />
        <span class="coupon-line">
          gap
          <NumberBox
            name={`Gap, ${symbolOf('small')}`}
            quantity="gap"
            unit
            text={gap()}
            onText={setGap}
          />
        </span>
      </>
    ),
  };
}
