/** What the inputs show besides the document: figures that only the core can give. */
import { createContext, useContext } from 'solid-js';
import type { Reply } from '../../shared/reply.ts';
import type { LaminateReport, StressReport } from '../../shared/reports.ts';

export interface Answers {
  /** What a stack of plies makes of a wall; of its own thickness when the wall is left out. */
  describe(
    adherendId: string,
    wall: number | undefined,
    flat: boolean,
  ): Promise<Reply<LaminateReport>>;
  /** The state that is drawn; null until it is known. */
  stress(): StressReport | null;
  /** True while the figures are older than the inputs. */
  stale(): boolean;
}

/** Fields deep in the form ask; nothing between them and the page needs to know. */
export const AnswersContext = createContext<Answers>();

export function useAnswers(): Answers {
  const answers = useContext(AnswersContext);
  if (!answers) throw new Error('The inputs stand outside an AnswersContext.');
  return answers;
}
