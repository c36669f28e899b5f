/** What somebody wrote, as a message quotes it: a field may be given a million letters. */
const MOST = 40;

export const shortened = (text: string): string =>
  text.length > MOST ? `${text.slice(0, MOST)}…` : text;
