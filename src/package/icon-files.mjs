/**
 * PNG pictures in the containers of Windows (.ico) and macOS (.icns). Both are a table and the pictures after
 * it; both have taken PNG as it is since Windows Vista and Mac OS X 10.7.
 */

/** Of a PNG: its width and height stand at bytes 16 and 20 of the first chunk. */
export const sizeOfPng = (/** @type {Buffer} */ png) => ({
  width: png.readUInt32BE(16),
  height: png.readUInt32BE(20),
});

/**
 * @param {readonly Buffer[]} pngs square, at most 256 pixels
 * @returns {Buffer}
 */
export function icoOf(pngs) {
  const head = Buffer.alloc(6 + 16 * pngs.length);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(pngs.length, 4);
  let at = head.length;
  pngs.forEach((png, i) => {
    const { width } = sizeOfPng(png);
    if (width > 256) throw new RangeError('an .ico holds at most 256 pixels');
    const entry = 6 + 16 * i;
    // 256 is written as 0: there is one byte for it.
    head.writeUInt8(width % 256, entry);
    head.writeUInt8(width % 256, entry + 1);
    head.writeUInt16LE(1, entry + 4);
    head.writeUInt16LE(32, entry + 6);
    head.writeUInt32LE(png.length, entry + 8);
    head.writeUInt32LE(at, entry + 12);
    at += png.length;
  });
  return Buffer.concat([head, ...pngs]);
}

/** Four letters for each size; `@2x` ones are the double size for a sharp screen. */
const icnsTypes = /** @type {const} */ ([
  ['icp4', 16],
  ['icp5', 32],
  ['ic11', 32],
  ['ic12', 64],
  ['ic07', 128],
  ['ic13', 256],
  ['ic08', 256],
  ['ic14', 512],
  ['ic09', 512],
  ['ic10', 1024],
]);

/**
 * @param {ReadonlyMap<number, Buffer>} pngs by pixels
 * @returns {Buffer}
 */
export function icnsOf(pngs) {
  const parts = icnsTypes.map(([type, size]) => {
    const png = pngs.get(size);
    if (!png) throw new RangeError(`an .icns needs ${size} pixels`);
    const head = Buffer.alloc(8);
    head.write(type, 0, 'ascii');
    head.writeUInt32BE(8 + png.length, 4);
    return Buffer.concat([head, png]);
  });
  const body = Buffer.concat(parts);
  const head = Buffer.alloc(8);
  head.write('icns', 0, 'ascii');
  head.writeUInt32BE(8 + body.length, 4);
  return Buffer.concat([head, body]);
}
