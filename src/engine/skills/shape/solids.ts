// Solids: faces, edges and vertices.
import { formatWhole } from '../../numbers/format.js';
import type { Locale } from '../../numbers/locale.js';
import { wholeAnswer } from '../../questions/answer.js';
import type { Draft, TemplateContext } from '../../questions/draft.js';
import { sizeOf, using, wholeOn } from '../measuring/quantity.js';
import type { Skill } from '../skill.js';

interface Solid {
  readonly solid: 'cube' | 'cuboid' | 'square-pyramid' | 'triangular-prism';
  readonly name: string;
  readonly many: string;
  readonly faces: number;
  readonly edges: number;
  readonly vertices: number;
  readonly seen: number;
}

const SOLIDS: readonly Solid[] = [
  { solid: 'cube', name: 'cube', many: 'cubes', faces: 6, edges: 12, vertices: 8, seen: 3 },
  { solid: 'cuboid', name: 'box', many: 'boxes', faces: 6, edges: 12, vertices: 8, seen: 3 },
  {
    solid: 'square-pyramid',
    name: 'square pyramid',
    many: 'square pyramids',
    faces: 5,
    edges: 8,
    vertices: 5,
    seen: 2,
  },
  {
    solid: 'triangular-prism',
    name: 'triangular prism',
    many: 'triangular prisms',
    faces: 5,
    edges: 9,
    vertices: 6,
    seen: 2,
  },
];

const PARTS = ['faces', 'edges', 'vertices'] as const;

/** Steps for count × each: a fact of the tables at once, anything more by its tens and ones. */
function altogetherSteps(count: number, each: number, locale: Locale): string[] {
  const say = (n: number) => formatWhole(n, locale);
  const times = (a: number, b: number) => `${say(a)} × ${say(b)} = ${say(a * b)}`;
  if (count <= 12 || count === 100 || (each < 10 && count % 10 === 0)) return [times(count, each)];
  const split = each > 10 ? each : count;
  const parts = [split - (split % 10), split % 10].map((part) =>
    each > 10 ? ([count, part] as const) : ([part, each] as const),
  );
  return [
    ...parts.map(([a, b]) => times(a, b)),
    `${parts.map(([a, b]) => say(a * b)).join(' + ')} = ${say(count * each)}`,
  ];
}

function solidParts(
  solid: Solid,
  part: (typeof PARTS)[number],
  count: number,
  { locale }: TemplateContext,
): Draft {
  const each = solid[part];
  const total = count * each;
  const others = PARTS.filter((other) => other !== part);
  const called = part === 'vertices' ? 'vertices (corners)' : part;
  return {
    text:
      count === 1
        ? `How many ${called} does a ${solid.name} have?`
        : `How many ${called} do ${formatWhole(count, locale)} ${solid.many} have altogether?`,
    answer: wholeAnswer(total, locale),
    expression:
      count === 1
        ? part === 'edges'
          ? `${solid.faces} + ${solid.vertices} - 2`
          : part === 'faces'
            ? `${solid.edges} - ${solid.vertices} + 2`
            : `${solid.edges} - ${solid.faces} + 2`
        : `${count} * ${each}`,
    features: {
      drawn: true,
      size: (part === 'edges' ? 1 : 0) + (count === 1 ? 0 : sizeOf(count) + 0.5),
      extraSteps: count === 1 ? 0 : 1,
    },
    strategy: [
      solid.solid === 'cube' || solid.solid === 'cuboid'
        ? {
            faces: 'Top and bottom, front and back, left and right: 2 + 2 + 2 = 6',
            edges: '4 around the top, 4 around the bottom, 4 upright: 4 + 4 + 4 = 12',
            vertices: '4 at the top, 4 at the bottom: 4 + 4 = 8',
          }[part]
        : solid.solid === 'square-pyramid'
          ? {
              faces: '1 square and 4 triangles: 1 + 4 = 5',
              edges: '4 around the square, 4 up to the point: 4 + 4 = 8',
              vertices: '4 at the square, 1 at the point: 4 + 1 = 5',
            }[part]
          : {
              faces: '2 triangles and 3 rectangles: 2 + 3 = 5',
              edges: '3 around each triangle, 3 between them: 3 + 3 + 3 = 9',
              vertices: '3 at each triangle: 3 + 3 = 6',
            }[part],
      ...(count === 1 ? [] : altogetherSteps(count, each, locale)),
    ],
    slips: [
      ...(part === 'faces'
        ? [{ misconception: 'shape.seen-only' as const, answer: wholeAnswer(count * solid.seen, locale) }]
        : []),
      ...others.map((other) => ({
        misconception: 'shape.parts-mixed-up' as const,
        answer: wholeAnswer(count * solid[other], locale),
      })),
      ...(count > 1
        ? [
            {
              misconception: 'money.added-not-multiplied' as const,
              answer: wholeAnswer(count + each, locale),
            },
          ]
        : []),
    ],
    figure: { kind: 'solid', solid: solid.solid },
  };
}

export const SOLID_SKILLS: readonly Skill[] = [
  {
    id: 'shape.solid',
    title: 'Count faces, edges and vertices',
    year: 2,
    fluentYear: 4,
    strand: 'shape',
    prerequisites: ['shape.sides'],
    codes: { ac9: ['AC9M3SP01'], england: ['NC-Y2-shape-2'], ccss: ['2.G.A.1'] },
    templates: [
      {
        id: 'parts',
        ask: (context) => solidParts(context.rng.pick(SOLIDS), context.rng.pick(PARTS), 1, context),
        dayKinds: ['whole'],
        askOn: (day, context) => {
          const count = wholeOn(day, 2, 100);
          if (count === null) return null;
          const solid = context.rng.pick(SOLIDS);
          const part = context.rng.pick(PARTS);
          return using(
            solidParts(solid, part, count, context),
            `counts the ${part} of ${day.text} ${solid.many}`,
          );
        },
      },
    ],
  },
];
