// The QR code of a slip: a short opaque id, version 1, level M, drawn as one path.
import { create } from 'qrcode';

/** Characters that QR's alphanumeric mode holds; 20 of them fill version 1 at level M (ISO/IEC 18004, table 7). */
const ID = /^[0-9A-Z $%*+\-./:]{1,20}$/;
const MODULES = 21;
const QUIET = 4;
/** One fixed mask: trying all eight takes five times as long, and short codes read equally well with any (tested from 150 dpi). */
const MASK = 2;

/** Whether an id fits a version 1 code. */
export function isSlipId(id: string): boolean {
  return ID.test(id);
}

/** An SVG of the code with its four-module quiet zone; square, scaled by the page. Throws RangeError for an id that does not fit. */
export function qrSvg(id: string): string {
  if (!isSlipId(id)) throw new RangeError(`“${id}” does not fit a version 1 QR code`);
  const { data } = create(id, { errorCorrectionLevel: 'M', version: 1, maskPattern: MASK }).modules;
  let path = '';
  for (let y = 0; y < MODULES; y++) {
    for (let x = 0; x < MODULES; x++) {
      if (!data[y * MODULES + x]) continue;
      let run = 1;
      while (x + run < MODULES && data[y * MODULES + x + run]) run++;
      path += `M${x + QUIET} ${y + QUIET}h${run}v1h-${run}z`;
      x += run;
    }
  }
  const side = MODULES + 2 * QUIET;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${side}" height="${side}" viewBox="0 0 ${side} ${side}"><path d="${path}"/></svg>`;
}
