/** Local times as they are written everywhere: 24 hours, year first, so that no reader has to guess. */

const two = (value: number): string => String(value).padStart(2, '0');

/** `14:32` */
export const clockText = (at: Date): string => `${two(at.getHours())}:${two(at.getMinutes())}`;

/** `14:32:05` */
export const secondText = (at: Date): string => `${clockText(at)}:${two(at.getSeconds())}`;

/** `2026-03-01 14:32` */
export const momentText = (at: Date): string =>
  `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${clockText(at)}`;
