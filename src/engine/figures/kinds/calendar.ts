// One month of a calendar, weeks across, from Monday or from Sunday.
import type { FigureSpec } from '../figure.js';
import { BOLD_MM, FINE_MM, line, type Mark, PALE, rect, type Sketch, text } from '../svg.js';

const COLUMN_MM = 8;
const ROW_MM = 6;
const LETTER_MM = 3.4;
const FROM_MONDAY = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;
const LONG = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** The month's name above, weekdays as heads, the days in their places; `ringed` days stand on grey. */
export function drawCalendar(spec: Extract<FigureSpec, { kind: 'calendar' }>): Sketch {
  const { month, days, firstWeekday, sundayFirst = false, ringed = [] } = spec;
  const heads = sundayFirst ? [FROM_MONDAY[6], ...FROM_MONDAY.slice(0, 6)] : FROM_MONDAY;
  const offset = sundayFirst ? firstWeekday % 7 : firstWeekday - 1;
  const rows = Math.ceil((offset + days) / 7);
  const width = 7 * COLUMN_MM;
  const height = (rows + 1) * ROW_MM;
  const marks: Mark[] = [rect(0, 0, width, ROW_MM, { fill: PALE, stroke: 'none' })];
  const at = (day: number) => {
    const index = offset + day - 1;
    return [(index % 7) * COLUMN_MM, (Math.floor(index / 7) + 1) * ROW_MM] as const;
  };
  for (const day of ringed) {
    const [left, top] = at(day);
    marks.push(rect(left, top, COLUMN_MM, ROW_MM, { fill: PALE, stroke: 'none', part: 'ringed' }));
  }
  heads.forEach((head, index) =>
    marks.push(text(head ?? '', [(index + 0.5) * COLUMN_MM, ROW_MM / 2], LETTER_MM * 0.85)),
  );
  for (let row = 1; row <= rows; row++)
    marks.push(line([0, row * ROW_MM], [width, row * ROW_MM], { widthMm: FINE_MM }));
  for (let column = 1; column < 7; column++)
    marks.push(line([column * COLUMN_MM, 0], [column * COLUMN_MM, height], { widthMm: FINE_MM }));
  for (let day = 1; day <= days; day++) {
    const [left, top] = at(day);
    marks.push(text(String(day), [left + COLUMN_MM / 2, top + ROW_MM / 2], LETTER_MM));
  }
  marks.push(
    rect(0, 0, width, height, { widthMm: BOLD_MM, part: 'frame' }),
    text(month, [width / 2, -3.4], LETTER_MM + 0.6),
  );
  const told = ringed.length > 0 ? ` On grey: ${ringed.join(', ')}.` : '';
  return {
    marks,
    alt: `A calendar page for ${month} with ${days} days. The 1st is a ${LONG[firstWeekday - 1] ?? ''}.${told}`,
  };
}
