// Pictures of the skill map as SVG: one of each strand with its titles, and one of the whole map in dots.
import { STRANDS, strandTitle } from '#engine/curriculum/strands.js';
import { yearName } from '#engine/curriculum/years.js';
import { layOut, rowsOf, withoutDetours } from './layout.mjs';

const INK = '#1f2b29';
const SOFT = '#51605c';
const LINE = '#82795f';
const PAPER = '#fffdf8';
const BAND = '#f6f2e8';
const FACE = 'Andika, Segoe UI, Helvetica, Arial, sans-serif';

const LEAST_WIDTH = 960;
const MARGIN = 76;
const BOX = { width: 160, height: 62, gapX: 12, gapY: 44 };
const MOST = 5;

const escapeText = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const n = (value) => String(Math.round(value * 10) / 10);

/** The words in lines of at most about `most` letters. */
function linesOf(text, most) {
  const lines = [''];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== '' && last.length + 1 + word.length > most) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines;
}

/** A wavy line through its points, leaving and arriving straight down. */
function pathThrough(points) {
  let d = `M${n(points[0].x)} ${n(points[0].y)}`;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    const middle = (a.y + b.y) / 2;
    d += a.x === b.x ? `V${n(b.y)}` : `C${n(a.x)} ${n(middle)} ${n(b.x)} ${n(middle)} ${n(b.x)} ${n(b.y)}`;
  }
  return d;
}

function frame(width, height, title, about, body) {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="t d" font-family="${FACE}">`,
    `<title id="t">${escapeText(title)}</title>`,
    `<desc id="d">${escapeText(about)}</desc>`,
    `<rect width="${width}" height="${height}" fill="${PAPER}"/>`,
    ...body,
    '</svg>',
    '',
  ].join('\n');
}

/** The skills of one strand, years from top to bottom, with lines from what comes before. */
export function drawStrand(strand, skills) {
  const mine = skills.filter((skill) => skill.strand === strand);
  const own = new Set(mine.map(({ id }) => id));
  const strandOf = new Map(skills.map((skill) => [skill.id, skill.strand]));
  const edges = withoutDetours(
    mine.flatMap(({ id, prerequisites }) =>
      prerequisites.filter((one) => own.has(one)).map((one) => [one, id]),
    ),
  );
  const nodes = mine.map(({ id, year }) => ({ id, group: year }));
  const {
    width: inner,
    rowCount,
    row,
    x,
    ways,
  } = layOut(nodes, edges, {
    most: MOST,
    slot: BOX.width + BOX.gapX,
    lane: 14,
    least: LEAST_WIDTH - MARGIN,
  });
  const width = Math.ceil(MARGIN + inner);
  const pitch = BOX.height + BOX.gapY;
  const height = rowCount * pitch;
  const top = (at) => at * pitch + BOX.gapY / 2;
  const body = [];
  const years = [...new Set(mine.map(({ year }) => year))].toSorted((a, b) => a - b);
  for (const [at, year] of years.entries()) {
    const inYear = mine.filter((skill) => skill.year === year).map(({ id }) => row.get(id));
    const from = Math.min(...inYear) * pitch;
    const to = (Math.max(...inYear) + 1) * pitch;
    if (at % 2 === 0) body.push(`<rect y="${from}" width="${width}" height="${to - from}" fill="${BAND}"/>`);
    body.push(
      `<text x="10" y="${from + pitch / 2 + 4}" font-size="13" font-weight="700" fill="${SOFT}">${year === 0 ? 'Found.' : yearName(year, 'en-AU')}</text>`,
    );
  }
  for (const { from, to, x: passes } of ways) {
    const points = passes.flatMap((px, i) => {
      const at = row.get(from) + i;
      const place = MARGIN + px;
      if (i === 0) return [{ x: place, y: top(at) + BOX.height }];
      if (i === passes.length - 1) return [{ x: place, y: top(at) - 5 }];
      return [
        { x: place, y: top(at) },
        { x: place, y: top(at) + BOX.height },
      ];
    });
    const end = points.at(-1);
    body.push(
      `<path d="${pathThrough(points)}" fill="none" stroke="${LINE}" stroke-width="1.3"/>`,
      `<path d="M${n(end.x - 3.5)} ${n(end.y)}h7l-3.5 5z" fill="${LINE}"><title>${from} comes before ${to}</title></path>`,
    );
  }
  for (const skill of mine) {
    const left = MARGIN + x.get(skill.id) - BOX.width / 2;
    const y = top(row.get(skill.id));
    const others = [...new Set(skill.prerequisites.map((one) => strandOf.get(one)))].filter(
      (one) => one !== strand,
    );
    const lines = linesOf(skill.title, 26).slice(0, 3);
    const small = others.length > 0 ? linesOf(`+ ${others.map(strandTitle).join(', ')}`, 33)[0] : null;
    const total = lines.length * 13.5 + (small ? 12 : 0);
    const start = y + (BOX.height - total) / 2 + 10.5;
    body.push(
      `<g><title>${escapeText(`${skill.title} (${skill.id})`)}</title>`,
      `<rect x="${n(left)}" y="${y}" width="${BOX.width}" height="${BOX.height}" rx="5" fill="${PAPER}" stroke="${INK}" stroke-width="1.2"/>`,
      ...lines.map(
        (line, i) =>
          `<text x="${n(left + BOX.width / 2)}" y="${n(start + i * 13.5)}" font-size="11.5" text-anchor="middle" fill="${INK}">${escapeText(line)}</text>`,
      ),
    );
    if (small)
      body.push(
        `<text x="${n(left + BOX.width / 2)}" y="${n(start + lines.length * 13.5)}" font-size="9" text-anchor="middle" fill="${SOFT}">${escapeText(small)}</text>`,
      );
    body.push('</g>');
  }
  return frame(
    width,
    height,
    `${strandTitle(strand)}: which skill comes before which`,
    `${mine.length} skills from ${yearName(years[0], 'en-AU')} to ${yearName(years.at(-1), 'en-AU')}. The page lists the same in words.`,
    body,
  );
}

const DOTS = { label: 150, column: 116, row: 15, gap: 9 };

/** The whole map: a row a strand, a column a year, a dot a skill, and a line from each skill to what it needs. */
export function drawMap(skills) {
  const years = [0, 1, 2, 3, 4, 5, 6];
  const width = DOTS.label + years.length * DOTS.column + 10;
  const body = [];
  const place = new Map();
  let y = 34;
  for (const [at, { id, title }] of STRANDS.entries()) {
    const mine = skills.filter((skill) => skill.strand === id);
    const columns = years.map((year) => mine.filter((skill) => skill.year === year));
    const own = new Set(mine.map((skill) => skill.id));
    // Within a year the dots go to the right as one needs the other, so that lines do not run back.
    const depth = rowsOf(
      mine.map((skill) => ({ id: skill.id, group: skill.year })),
      mine.flatMap((skill) =>
        skill.prerequisites.filter((one) => own.has(one)).map((one) => [one, skill.id]),
      ),
      4,
    );
    const high = 4 * DOTS.row + 2 * DOTS.gap;
    if (at % 2 === 0) body.push(`<rect y="${y}" width="${width}" height="${high}" fill="${BAND}"/>`);
    body.push(
      `<text x="12" y="${y + high / 2 + 4}" font-size="13" font-weight="700" fill="${INK}">${escapeText(title)}</text>`,
    );
    for (const [year, column] of columns.entries()) {
      const first = Math.min(...column.map((skill) => depth.get(skill.id)));
      const last = Math.max(...column.map((skill) => depth.get(skill.id)));
      const step = Math.min(22, (DOTS.column - 26) / Math.max(1, last - first));
      const filled = new Map();
      for (const skill of column) {
        const at = depth.get(skill.id) - first;
        const line = filled.get(at) ?? 0;
        filled.set(at, line + 1);
        place.set(skill.id, {
          x: DOTS.label + year * DOTS.column + 14 + at * step,
          y: y + DOTS.gap + (line + 0.5) * DOTS.row,
        });
      }
    }
    y += high;
  }
  const height = y + 8;
  for (const year of years)
    body.push(
      `<text x="${DOTS.label + year * DOTS.column + 8}" y="22" font-size="13" font-weight="700" fill="${SOFT}">${yearName(year, 'en-AU')}</text>`,
    );
  const lines = [];
  for (const skill of skills) {
    const to = place.get(skill.id);
    for (const one of skill.prerequisites) {
      const from = place.get(one);
      const reach = Math.max(18, Math.abs(to.x - from.x) / 2);
      lines.push(
        `M${n(from.x)} ${n(from.y)}C${n(from.x + reach)} ${n(from.y)} ${n(to.x - reach)} ${n(to.y)} ${n(to.x)} ${n(to.y)}`,
      );
    }
  }
  body.push(`<path d="${lines.join('')}" fill="none" stroke="${LINE}" stroke-width="0.8" opacity="0.45"/>`);
  for (const skill of skills) {
    const { x, y: middle } = place.get(skill.id);
    body.push(
      `<circle cx="${n(x)}" cy="${n(middle)}" r="4.2" fill="${INK}"><title>${escapeText(skill.title)}</title></circle>`,
    );
  }
  return frame(
    width,
    height,
    'The whole skill map',
    `${skills.length} skills in ${STRANDS.length} strands; a line joins a skill with each that comes before it.`,
    body,
  );
}
