// A centimetre ruler with something lying above it; drawn to true size up to 8 cm.
import type { Locale } from '../../numbers/locale.js';
import type { FigureSpec } from '../figure.js';
import {
  BOLD_MM,
  FINE_MM,
  INK,
  LABEL_MM,
  line,
  LINE_MM,
  type Mark,
  PALE,
  polygon,
  rect,
  type Sketch,
  text,
} from '../svg.js';
import { tellPlace } from '../reading.js';
import { numberText, withArticle, capital } from '../words.js';

const HEIGHT_MM = 13;
const END_MM = 3;
const TINY = 1e-6;

export function drawRuler(spec: Extract<FigureSpec, { kind: 'ruler' }>, locale: Locale): Sketch {
  const { lengthCm, objectFrom, objectTo } = spec;
  const isAt = (part: number) =>
    [objectFrom, objectTo].every((end) => Math.abs(end * part - Math.round(end * part)) < TINY);
  const roomy = Math.min(10, 80 / lengthCm);
  const perCm = isAt(2) ? 1 : 10;
  const pitch = perCm === 10 ? Math.max(roomy, 6.5) : roomy;
  const division = perCm === 10 || pitch >= 8 ? 10 : !isAt(1) || pitch >= 3.6 ? 2 : 1;
  const marks: Mark[] = [
    rect(-END_MM, 0, lengthCm * pitch + 2 * END_MM, HEIGHT_MM, { fill: '#ffffff', widthMm: BOLD_MM }, 0.8),
  ];
  for (let tick = 0; tick <= lengthCm * division; tick++) {
    const x = (tick / division) * pitch;
    const isWhole = tick % division === 0;
    const isHalf = !isWhole && (tick * 2) % division === 0;
    marks.push(
      line([x, 0], [x, isWhole ? 5 : isHalf ? 3.6 : 2.3], {
        widthMm: isWhole ? LINE_MM : division === 10 ? 0.25 : FINE_MM,
        part: isWhole ? 'centimetre' : 'division',
      }),
    );
  }
  const every = pitch >= 5 ? 1 : pitch >= 3 ? 2 : 5;
  for (let cm = 0; cm <= lengthCm; cm += every) {
    marks.push(text(String(cm), [cm * pitch, 7.4], Math.min(LABEL_MM, pitch * every * 0.63)));
  }
  marks.push(text('cm', [Math.max(2, pitch * 0.2), 11.2], 2.8));
  const left = objectFrom * pitch;
  const right = objectTo * pitch;
  marks.push(...drawObject(spec.object, left, right));
  for (const x of [left, right]) marks.push(line([x, -1.6], [x, -0.4], { widthMm: FINE_MM }));
  const scale = { from: 0, to: lengthCm, step: 1 / division, labelEvery: every };
  const place = (value: number) => tellPlace(value, scale, (one) => numberText(one, locale));
  const alt =
    `A ruler in centimetres from 0 to ${lengthCm}, with ${division === 1 ? 'a mark at each centimetre' : division === 2 ? 'a small mark every half centimetre' : 'a small mark every tenth of a centimetre'}. ` +
    `${capital(withArticle(spec.object))} lies along it from ${place(objectFrom)} to ${place(objectTo)}.`;
  return { marks, alt };
}

function drawObject(name: string, left: number, right: number): Mark[] {
  const bottom = -2.6;
  const top = -8.2;
  const middle = (top + bottom) / 2;
  const length = right - left;
  const outline = { fill: '#ffffff', widthMm: LINE_MM };
  if (/pencil|crayon/.test(name) && length > 10) {
    const tip = right - 5.5;
    return [
      rect(left, top, length - 5.5, bottom - top, { ...outline, fill: PALE, part: 'object' }),
      line([left + 2.6, top], [left + 2.6, bottom], { widthMm: FINE_MM }),
      line([left + 2.6, middle - 0.9], [tip, middle - 0.9], { widthMm: FINE_MM }),
      line([left + 2.6, middle + 0.9], [tip, middle + 0.9], { widthMm: FINE_MM }),
      polygon(
        [
          [tip, top],
          [right, middle],
          [tip, bottom],
        ],
        outline,
      ),
      polygon(
        [
          [right - 1.8, middle - 0.92],
          [right, middle],
          [right - 1.8, middle + 0.92],
        ],
        { fill: INK, stroke: 'none' },
      ),
    ];
  }
  const size = 3.4;
  const body = rect(left, top, length, bottom - top, { fill: PALE, widthMm: LINE_MM, part: 'object' });
  const words = text(name, [(left + right) / 2, middle], size);
  const isRoomy = words.box.right - words.box.left < length - 1.5;
  return [body, isRoomy ? words : text(name, [(left + right) / 2, top - 2.4], size)];
}
