/**
 * Asks as fast as answers come, never faster: one question in flight, and of those that arrive
 * meanwhile only the latest is asked next. Answers therefore come in the order of the questions,
 * and what is on the screen is never replaced by something older.
 */
export interface Latest<Input> {
  ask(input: Input): void;
  /** Forgets what waits and ignores the answer in flight, for when the subject has changed. */
  drop(): void;
  /** True while an answer is awaited. */
  busy(): boolean;
}

/** @param run must not reject: a refusal is an answer too. */
export function makeLatest<Input, Output>(
  run: (input: Input) => Promise<Output>,
  deliver: (output: Output, input: Input) => void,
): Latest<Input> {
  let waiting: { readonly input: Input } | null = null;
  let inFlight = false;
  let subject = 0;

  const start = (input: Input): void => {
    const asked = subject;
    inFlight = true;
    run(input)
      .then((output) => {
        if (asked === subject) deliver(output, input);
      })
      .finally(() => {
        inFlight = false;
        const next = waiting;
        waiting = null;
        if (next) start(next.input);
      });
  };

  return {
    ask(input) {
      if (inFlight) waiting = { input };
      else start(input);
    },
    drop() {
      subject += 1;
      waiting = null;
    },
    busy: () => inFlight,
  };
}
