/** One more set of a specimen that the project has. */
import { createSignal, type JSX } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import type { CouponSet, Specimen } from '../../shared/project-coupons.ts';
import type { CouponEdits } from '../state/coupon-edits.ts';
import { countValue, NumberBox } from './NumberBox.tsx';
import { createWhere } from './WhereTested.tsx';

export interface AddSetProps {
  readonly project: Project;
  readonly specimens: readonly Specimen[];
  /** What is likely: the set before. */
  readonly like: CouponSet | undefined;
  readonly edits: CouponEdits;
}

export function AddSet(props: AddSetProps): JSX.Element {
  const draft = createWhere(props);
  const [batches, setBatches] = createSignal(String(props.like?.planned?.batches ?? 3));
  const [each, setEach] = createSignal(String(props.like?.planned?.each ?? 6));
  const wanted = () => {
    const [where, of, n] = [
      draft.where(),
      countValue(batches(), 'batchCount'),
      countValue(each(), 'couponCount'),
    ];
    if (where === null || of === undefined || n === undefined) return null;
    return { ...where, planned: { batches: of, each: n } };
  };
  return (
    <form
      class="coupon-add"
      aria-label="One more set"
      onSubmit={(event) => {
        event.preventDefault();
        const [piece, values] = [draft.specimen(), wanted()];
        if (piece && values) props.edits.add(piece, values);
      }}
    >
      {draft.fields()}
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
      <button type="submit" class="plain" disabled={wanted() === null || !draft.specimen()}>
        Add set
      </button>
    </form>
  );
}
