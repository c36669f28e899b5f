/** Exit codes of the command line. */
export const DONE = 0;
export const BELOW_TARGET = 1;
export const REFUSED = 2;
