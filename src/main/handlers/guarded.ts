/** Turns what the model throws into a reply that names a place in the project. */
import { ModelError } from '../../model/errors.ts';
import { type Reply, refuse } from '../../shared/reply.ts';

/** Where in a joint the model's short names of inputs stand. */
const places: Readonly<Record<string, string>> = {
  moisture: 'adhesive',
  load: 'loads',
  joint: '',
};

export function guarded<T>(jointIndex: number, compute: () => Reply<T>): Reply<T> {
  try {
    return compute();
  } catch (error) {
    if (error instanceof ModelError) {
      const place = places[error.input] ?? error.input;
      const field = ['joints', jointIndex, place].filter((part) => part !== '').join('.');
      return refuse('bad-input', field, error.said);
    }
    if (error instanceof RangeError) {
      return refuse(
        'not-computable',
        `joints.${jointIndex}`,
        `This joint could not be computed (${error.message}): change its overlap, walls or loads, and please report the project file.`,
      );
    }
    throw error;
  }
}
