/** One more set of a specimen that the project has. */
import { createSignal, type JSX } from 'solid-js';
import type { Moisture, Project } from '../../shared/project.ts';
import type { CouponSet, Specimen } from '../../shared/project-coupons.ts';
import { Choice } from '../size/Choice.tsx';
import type { CouponEdits } from '../state/coupon-edits.ts';
import { boxValue, countValue, NumberBox } from './NumberBox.tsx';
import { specimenOptions } from './specimen-options.ts';

export interface AddSetProps {
  readonly project: Project;
  readonly specimens: readonly Specimen[];
  /** What is likely: the set before. */
  readonly like: CouponSet | undefined;
  readonly edits: CouponEdits;
}

export function AddSet(props: AddSetProps): JSX.Element {
  const [chosen, setChosen] = createSignal(props.like?.specimen ?? '');
  const [adhesive, setAdhesive] = createSignal(
    props.like?.adhesive ?? props.project.adhesives[0]?.id ?? '',
  );
  const [temperature, setTemperature] = createSignal(String(props.like?.temperature ?? 23));
  const [moisture, setMoisture] = createSignal<Moisture>(props.like?.moisture ?? 'dry');
  const [gap, setGap] = createSignal(String(props.like?.gap ?? 0.2));
  const [batches, setBatches] = createSignal(String(props.like?.planned?.batches ?? 3));
  const [each, setEach] = createSignal(String(props.like?.planned?.each ?? 6));
  const specimen = () => props.specimens.find(({ id }) => id === chosen()) ?? props.specimens[0];
  const wanted = () => {
    const values = {
      temperature: boxValue(temperature(), 'temperature'),
      gap: boxValue(gap(), 'gap'),
      batches: countValue(batches(), 'batchCount'),
      each: countValue(each(), 'couponCount'),
    };
    const { temperature: at, gap: thick, batches: of, each: n } = values;
    if (at === undefined || thick === undefined || of === undefined || n === undefined) return null;
    return { temperature: at, gap: thick, planned: { batches: of, each: n } };
  };
  return (
    <form
      class="coupon-add"
      aria-label="One more set"
      onSubmit={(event) => {
        event.preventDefault();
        const [piece, values] = [specimen(), wanted()];
        if (!piece || !values) return;
        props.edits.add(piece, { adhesive: adhesive(), moisture: moisture(), ...values });
      }}
    >
      <Choice
        name="Specimen"
        options={specimenOptions(props.specimens)}
        value={specimen()?.id ?? ''}
        onChoose={setChosen}
      />
      <Choice
        name="Adhesive of the set"
        options={props.project.adhesives.map(({ id, name }) => ({ value: id, text: name }))}
        value={adhesive()}
        onChoose={setAdhesive}
      />
      <NumberBox
        name="Temperature, °C"
        quantity="temperature"
        unit="°C"
        text={temperature()}
        onText={setTemperature}
      />
      <Choice
        name="Moisture"
        options={[
          { value: 'dry', text: 'dry' },
          { value: 'wet', text: 'wet' },
        ]}
        value={moisture()}
        onChoose={(value) => setMoisture(value as Moisture)}
      />
      <span class="coupon-line">
        gap
        <NumberBox name="Gap, mm" quantity="gap" unit="mm" text={gap()} onText={setGap} />
      </span>
      <NumberBox
        name="Batches of the set"
        quantity="batchCount"
        unit="batches of"
        whole
        text={batches()}
        onText={setBatches}
      />
      <NumberBox
        name="Coupons of each batch of the set"
        quantity="couponCount"
        unit="coupons"
        whole
        text={each()}
        onText={setEach}
      />
      <button type="submit" class="plain" disabled={wanted() === null || !specimen()}>
        Add set
      </button>
    </form>
  );
}
