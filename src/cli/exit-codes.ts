/** What the program ends with. */
export const DONE = 0;
export const BELOW_TARGET = 1;
export const REFUSED = 2;
