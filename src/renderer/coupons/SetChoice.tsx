/** Which set is looked at, of static results or of lives, and what it was of. */

import { type JSX, Show } from 'solid-js';
import { ratioText } from '../../shared/life-words.ts';
import { plainText } from '../../shared/measures.ts';
import type { Adhesive } from '../../shared/project.ts';
import type { CouponSet, LifeSet, Specimen } from '../../shared/project-coupons.ts';
import { environment } from '../../shared/words.ts';
import { Choice } from '../size/Choice.tsx';
import type { SetsState } from '../state/coupons.ts';

export interface SetChoiceProps {
  readonly name: string;
  readonly list: Pick<SetsState<CouponSet | LifeSet, unknown>, 'sets' | 'current' | 'choose'>;
  readonly adhesives: readonly Pick<Adhesive, 'id' | 'name'>[];
  readonly specimens: readonly Specimen[];
}

export function SetChoice(props: SetChoiceProps): JSX.Element {
  /** Sets by name, with the adhesive where there are several. */
  const options = () => {
    const sets = props.list.sets();
    const isMixed = new Set(sets.map(({ adhesive }) => adhesive)).size > 1;
    return sets.map(({ id, name, results, adhesive }) => {
      const glue = isMixed ? props.adhesives.find((one) => one.id === adhesive)?.name : '';
      const tail = [glue, results.length === 0 ? 'no results' : ''].filter(Boolean).join(', ');
      return { value: id, text: tail === '' ? name : `${name} (${tail})` };
    });
  };
  const about = (set: CouponSet | LifeSet): string =>
    [
      props.specimens.find(({ id }) => id === set.specimen)?.standard,
      environment(set.temperature, set.moisture),
      `gap ${plainText('small', set.gap)}`,
      'ratio' in set ? `R ${ratioText(set.ratio)}` : '',
    ]
      .filter(Boolean)
      .join(' · ');
  return (
    <Show when={props.list.current()}>
      {(set) => (
        <>
          <Choice
            name={props.name}
            help="couponSet"
            class="joint-choice"
            options={options()}
            value={set().id}
            onChoose={props.list.choose}
          />
          <span class="units">{about(set())}</span>
        </>
      )}
    </Show>
  );
}
