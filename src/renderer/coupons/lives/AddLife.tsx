/** One more set of coupons under cycles, of a specimen that the project has. */
import { createSignal, type JSX } from 'solid-js';
import { MOST_LIVES } from '../../../shared/coupon-plan.ts';
import type { Project } from '../../../shared/project.ts';
import type { CouponSet, LifeSet, Specimen } from '../../../shared/project-coupons.ts';
import type { LifeEdits } from '../../state/life-edits.ts';
import { boxValue, NumberBox } from '../NumberBox.tsx';
import { createWhere } from '../WhereTested.tsx';

export interface AddLifeProps {
  readonly project: Project;
  readonly specimens: readonly Specimen[];
  /** What is likely: the set before, of lives or of static results. */
  readonly like: LifeSet | CouponSet | undefined;
  readonly edits: LifeEdits;
}

export function AddLife(props: AddLifeProps): JSX.Element {
  const { like } = props;
  const draft = createWhere(props);
  const [ratio, setRatio] = createSignal(String(like && 'ratio' in like ? like.ratio : 0.1));
  const wanted = () => {
    const [where, of] = [draft.where(), boxValue(ratio(), 'loadRatio')];
    return where === null || of === undefined ? null : { ...where, ratio: of };
  };
  const isFull = (): boolean => (props.project.coupons?.life ?? []).length >= MOST_LIVES;
  return (
    <form
      class="coupon-add"
      aria-label="One more set of lives"
      onSubmit={(event) => {
        event.preventDefault();
        const [piece, values] = [draft.specimen(), wanted()];
        if (piece && values && !isFull()) props.edits.add(piece, values);
      }}
    >
      {draft.fields()}
      <span class="coupon-line" title="Lowest over highest load of a cycle; −1 is fully reversed">
        load ratio R
        <NumberBox
          name="Load ratio, lowest over highest load"
          quantity="loadRatio"
          text={ratio()}
          onText={setRatio}
        />
      </span>
      <button
        type="submit"
        class="plain"
        disabled={wanted() === null || !draft.specimen() || isFull()}
      >
        Add set of lives
      </button>
      {isFull() && <p class="units">A project takes {MOST_LIVES} sets of lives.</p>}
    </form>
  );
}
