/** One more set of coupons under cycles, of a specimen that the project has. */
import { createSignal, type JSX } from 'solid-js';
import { MOST_LIVES } from '../../../shared/coupon-plan.ts';
import type { Moisture, Project } from '../../../shared/project.ts';
import type { CouponSet, LifeSet, Specimen } from '../../../shared/project-coupons.ts';
import { Choice } from '../../size/Choice.tsx';
import type { LifeEdits } from '../../state/life-edits.ts';
import { boxValue, NumberBox } from '../NumberBox.tsx';
import { specimenOptions } from '../specimen-options.ts';

export interface AddLifeProps {
  readonly project: Project;
  readonly specimens: readonly Specimen[];
  /** What is likely: the set before, of lives or of static results. */
  readonly like: LifeSet | CouponSet | undefined;
  readonly edits: LifeEdits;
}

export function AddLife(props: AddLifeProps): JSX.Element {
  const { like } = props;
  const [chosen, setChosen] = createSignal(like?.specimen ?? '');
  const [adhesive, setAdhesive] = createSignal(
    like?.adhesive ?? props.project.adhesives[0]?.id ?? '',
  );
  const [temperature, setTemperature] = createSignal(String(like?.temperature ?? 23));
  const [moisture, setMoisture] = createSignal<Moisture>(like?.moisture ?? 'dry');
  const [gap, setGap] = createSignal(String(like?.gap ?? 0.2));
  const [ratio, setRatio] = createSignal(String(like && 'ratio' in like ? like.ratio : 0.1));
  const specimen = () => props.specimens.find(({ id }) => id === chosen()) ?? props.specimens[0];
  const wanted = () => {
    const [at, thick, of] = [
      boxValue(temperature(), 'temperature'),
      boxValue(gap(), 'gap'),
      boxValue(ratio(), 'loadRatio'),
    ];
    if (at === undefined || thick === undefined || of === undefined) return null;
    return { temperature: at, gap: thick, ratio: of };
  };
  const isFull = (): boolean => (props.project.coupons?.life ?? []).length >= MOST_LIVES;
  return (
    <form
      class="coupon-add"
      aria-label="One more set of lives"
      onSubmit={(event) => {
        event.preventDefault();
        const [piece, values] = [specimen(), wanted()];
        if (!piece || !values || isFull()) return;
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
      <span class="coupon-line" title="Lowest over highest load of a cycle; −1 is fully reversed">
        load ratio R
        <NumberBox
          name="Load ratio, lowest over highest load"
          quantity="loadRatio"
          text={ratio()}
          onText={setRatio}
        />
      </span>
      <button type="submit" class="plain" disabled={wanted() === null || !specimen() || isFull()}>
        Add set of lives
      </button>
      {isFull() && <p class="units">A project takes {MOST_LIVES} sets of lives.</p>}
    </form>
  );
}
