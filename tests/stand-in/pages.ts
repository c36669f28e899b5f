/**
 * Addresses of the page's own scheme, which no plain browser serves, and the addresses that stand
 * for them in the browser that stands in.
 */
const OWN = 'app://lapwright/';
const STANDS_FOR_IT = 'https://lapwright.app.test/';

export const toBrowser = (address: string): string =>
  address.startsWith(OWN) ? STANDS_FOR_IT + address.slice(OWN.length) : address;

export const fromBrowser = (address: string): string =>
  address.startsWith(STANDS_FOR_IT) ? OWN + address.slice(STANDS_FOR_IT.length) : address;
