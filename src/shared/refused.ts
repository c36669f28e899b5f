/** Thrown by what reads a typed text: its message is what is said of it. */
export class Refused extends Error {}
