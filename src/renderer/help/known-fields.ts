/** Which field has what help: told by the fields themselves, asked for by whoever shows it. */
import type { FieldHelp } from '../../shared/field-help.ts';

const known = new WeakMap<Element, () => FieldHelp>();

/** For `ref`: the help is worked out when it is asked for, in the units of that moment. */
export const tellHelp = (field: Element, help: () => FieldHelp): void => {
  known.set(field, help);
};

export const helpAt = (field: Element | null): FieldHelp | null =>
  (field && known.get(field)?.()) ?? null;
