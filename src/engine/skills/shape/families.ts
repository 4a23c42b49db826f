// Families of shapes: what makes a shape what it is, which belong together, triangles by sides and by angles.
import { offered } from '../offered.js';
import type { Skill } from '../skill.js';
import { templateOf } from '../template-of.js';

interface Claim {
  readonly text: string;
  readonly isTrue: boolean;
  readonly because: string;
  readonly size?: number;
}

const yesOrNo = (
  id: string,
  claims: readonly Claim[],
  misconception: 'shape.family-narrow' | 'shape.look-judged' = 'shape.family-narrow',
) =>
  templateOf<Claim>({
    id,
    free: (rng) => rng.pick(claims),
    draft: ({ text, isTrue, because, size = 0 }) =>
      offered({
        text: `${text}, yes or no?`,
        right: isTrue ? 'yes' : 'no',
        wrong: [[misconception, isTrue ? 'no' : 'yes']],
        features: { size },
        strategy: [because],
      }),
  });

const STILL: readonly Claim[] = [
  {
    text: 'A red square is painted blue. Is it still a square',
    isTrue: true,
    because: 'Paint does not matter: it still has 4 equal sides and square corners',
  },
  {
    text: 'A triangle is turned upside down. Is it still a triangle',
    isTrue: true,
    because: 'Turning does not matter: it still has 3 sides',
    size: 0.3,
  },
  {
    text: 'A square stands on one corner. Is it still a square',
    isTrue: true,
    because: 'Turning does not matter: it still has 4 equal sides and square corners',
    size: 0.8,
  },
  {
    text: 'A very small circle is made larger. Is it still a circle',
    isTrue: true,
    because: 'Size does not matter: it is still perfectly round',
  },
  {
    text: 'A square is cut into two triangles. Is each piece a square',
    isTrue: false,
    because: 'Each piece has 3 sides, and a square has 4',
  },
  {
    text: 'A shape has 4 sides. Can it be a triangle',
    isTrue: false,
    because: 'A triangle has 3 sides',
  },
  {
    text: 'A closed shape has 3 straight sides. Is it a triangle',
    isTrue: true,
    because: 'That is all a triangle needs: a closed shape with 3 straight sides',
    size: 0.4,
  },
];

const FAMILY: readonly Claim[] = [
  {
    text: 'Is every square a rectangle',
    isTrue: true,
    because: 'A rectangle needs 4 right angles, and a square has them',
    size: 0.6,
  },
  {
    text: 'Is every rectangle a square',
    isTrue: false,
    because: 'A square needs 4 equal sides, and a rectangle can be long',
  },
  {
    text: 'Is every square a rhombus',
    isTrue: true,
    because: 'A rhombus needs 4 equal sides, and a square has them',
    size: 1,
  },
  {
    text: 'Is every rhombus a square',
    isTrue: false,
    because: 'A square needs 4 right angles, and a rhombus can lean',
    size: 0.3,
  },
  {
    text: 'Is every rectangle a parallelogram',
    isTrue: true,
    because: 'Its opposite sides are parallel, which is all a parallelogram needs',
    size: 1,
  },
  {
    text: 'Is every parallelogram a rectangle',
    isTrue: false,
    because: 'A rectangle needs 4 right angles, and a parallelogram can lean',
    size: 0.5,
  },
  {
    text: 'Is every rhombus a parallelogram',
    isTrue: true,
    because: 'Its opposite sides are parallel, which is all a parallelogram needs',
    size: 1,
  },
  {
    text: 'Is every square a quadrilateral',
    isTrue: true,
    because: 'A quadrilateral is any shape with 4 straight sides',
  },
  {
    text: 'Is every quadrilateral a square',
    isTrue: false,
    because: 'Four sides are not enough: a square needs them equal, with right angles',
  },
  {
    text: 'Is every pentagon a polygon',
    isTrue: true,
    because: 'A polygon is any closed shape with straight sides',
  },
];

const REGULAR: readonly Claim[] = [
  {
    text: 'Is a rectangle of 6 cm by 4 cm a regular polygon',
    isTrue: false,
    because: 'Its angles are equal, but its sides are not',
    size: 0.5,
  },
  {
    text: 'Is a square a regular polygon',
    isTrue: true,
    because: 'All its sides are equal and all its angles are equal',
  },
  {
    text: 'Is a rhombus that leans a regular polygon',
    isTrue: false,
    because: 'Its sides are equal, but its angles are not',
    size: 0.8,
  },
  {
    text: 'Is a triangle with three equal sides a regular polygon',
    isTrue: true,
    because: 'Its angles are equal too: 60° each',
    size: 0.3,
  },
  {
    text: 'Is a hexagon with sides of 3 cm and 5 cm a regular polygon',
    isTrue: false,
    because: 'All sides of a regular polygon are equal',
  },
];

const TRIANGLE_NAMES = ['equilateral', 'isosceles', 'scalene'] as const;

interface Sides {
  readonly sides: readonly [number, number, number];
  readonly name: (typeof TRIANGLE_NAMES)[number];
}

/** An equilateral triangle is isosceles too, so it is only asked against scalene. */
const bySides = templateOf<Sides>({
  id: 'by-sides',
  free: (rng) => {
    const a = rng.int(4, 9);
    const name = rng.pick(TRIANGLE_NAMES);
    if (name === 'equilateral') return { name, sides: [a, a, a] };
    const b = a + rng.int(1, 3);
    return {
      name,
      sides: name === 'isosceles' ? rng.pick([[a, a, b] as const, [a, b, a] as const]) : [a, b, b + 1],
    };
  },
  draft: ({ sides: [a, b, c], name }) => {
    const choices = name === 'equilateral' ? ['equilateral', 'scalene'] : [...TRIANGLE_NAMES];
    const last = choices.pop();
    return offered({
      text: `Is a triangle of ${a} cm, ${b} cm and ${c} cm ${choices.join(', ')} or ${last}?`,
      right: name,
      wrong: [...choices, last ?? '']
        .filter((other) => other !== name)
        .map((other) => ['shape.triangle-names', other] as const),
      features: { size: name === 'isosceles' ? 0.5 : 0 },
      strategy: [
        name === 'equilateral'
          ? 'All three sides are equal'
          : name === 'isosceles'
            ? `Two sides are equal: ${a} cm and ${a} cm`
            : 'No two sides are equal',
        `So it is ${name}`,
      ],
    });
  },
});

const byAngles = templateOf<readonly [a: number, b: number]>({
  id: 'by-angles',
  free: (rng) => {
    const a = 5 * rng.int(5, 15);
    const b = rng.pick([90 - a, 90 - a, 5 * rng.int(4, 15)]);
    return [a, b > 5 ? b : 40];
  },
  draft: ([a, b], { locale }) => {
    const c = 180 - a - b;
    const largest = Math.max(a, b, c);
    const name = largest === 90 ? 'right' : largest > 90 ? 'obtuse' : 'acute';
    // American classrooms say "a right triangle", the others "a right-angled triangle".
    const ending = locale.id === 'en-US' ? '' : '-angled';
    const right = `${name}${ending}`;
    return offered({
      text: `Angles of ${a}°, ${b}° and ${c}°: is the triangle acute${ending}, right${ending} or obtuse${ending}?`,
      right,
      accepts: [ending === '' ? `${name}-angled` : name],
      wrong: ['acute', 'right', 'obtuse']
        .filter((other) => other !== name)
        .map((other) => ['shape.acute-obtuse', `${other}${ending}`] as const),
      features: { extraSteps: 0.5 },
      strategy: [`The largest angle is ${largest}°`, `So it is ${right}`],
    });
  },
});

export const FAMILY_SKILLS: readonly Skill[] = [
  {
    id: 'shape.still',
    title: 'Know what makes a shape what it is',
    year: 1,
    fluentYear: 1,
    strand: 'shape',
    prerequisites: ['shape.name'],
    codes: { ac9: ['AC9M1SP01'], england: ['1G-1', 'NC-Y2-shape-4'], ccss: ['1.G.A.1'] },
    templates: [yesOrNo('still', STILL, 'shape.look-judged')],
  },
  {
    id: 'shape.triangles',
    title: 'Sort triangles by sides and by angles',
    year: 4,
    fluentYear: 5,
    strand: 'shape',
    prerequisites: ['shape.angle.name', 'shape.still'],
    codes: { ac9: ['AC9M4M04'], england: ['NC-Y4-shape-1'], ccss: ['4.G.A.2'] },
    templates: [bySides, byAngles],
  },
  {
    id: 'shape.family',
    title: 'Tell which shapes belong to a family',
    year: 5,
    fluentYear: 6,
    strand: 'shape',
    prerequisites: ['shape.lines', 'shape.triangles'],
    codes: {
      ac9: ['AC9M2SP01'],
      england: ['NC-Y5-shape-6', 'NC-Y4-shape-1', '4G-2'],
      ccss: ['3.G.A.1', '5.G.B.3', '5.G.B.4'],
    },
    templates: [yesOrNo('family', FAMILY), yesOrNo('regular', REGULAR)],
  },
];
