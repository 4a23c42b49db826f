// Place value from hundreds to a million.
import type { Skill } from '../skill.js';
import { compose, digitWorth, howMany, type NumberRange, restOf } from './place-templates.js';
import { greatestOrLeast, moreOrLess } from './step-and-order.js';

const STEPPED: NumberRange = { free: (rng) => rng.int(101, 989), from: 20, to: 9899 };

const THOUSANDS: NumberRange = { free: (rng) => rng.int(1002, 9995), from: 1000, to: 1_000_000 };

const TO_100_000: NumberRange = {
  free: (rng) => (rng.chance(0.5) ? rng.int(1003, 9997) : 10 * rng.int(1001, 9899)),
  from: 100,
  to: 1_000_000,
};

const MILLION: NumberRange = { free: (rng) => 500 * rng.int(24, 1900), from: 10_000, to: 999_999 };

export const LARGER_PLACE_SKILLS: readonly Skill[] = [
  {
    id: 'place.hundred-more',
    family: 'one more',
    title: 'Ten and a hundred more or less',
    year: 3,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.three-digit'],
    codes: { ac9: ['AC9M3N01', 'AC9M3N03'], england: ['NC-Y3-place-1'], ccss: ['2.NBT.B.8'] },
    shift: -0.4,
    templates: [moreOrLess(STEPPED, [10, 100])],
  },
  {
    id: 'place.thousands',
    title: 'Thousands, hundreds, tens and ones',
    year: 3,
    fluentYear: 4,
    strand: 'place-value',
    prerequisites: ['place.three-digit'],
    codes: {
      ac9: ['AC9M3N01'],
      england: ['NC-Y4-place-4', '4NPV-1', '4NPV-2'],
      ccss: ['4.NBT.A.1', '4.NBT.A.2'],
    },
    templates: [
      howMany(THOUSANDS),
      compose(THOUSANDS),
      restOf(THOUSANDS),
      digitWorth(THOUSANDS),
      moreOrLess(THOUSANDS, [1]),
    ],
  },
  {
    id: 'place.thousand-more',
    family: 'one more',
    title: 'A hundred and a thousand more or less',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.hundred-more', 'place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y4-place-2', 'NC-Y5-place-2'], ccss: ['4.NBT.A.1'] },
    shift: -0.5,
    templates: [moreOrLess(TO_100_000, [100, 1000])],
  },
  {
    id: 'place.compare.large',
    family: 'which is greater',
    title: 'Compare numbers beyond 1000',
    year: 4,
    fluentYear: 5,
    strand: 'place-value',
    prerequisites: ['place.compare.1000', 'place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y4-place-5'], ccss: ['4.NBT.A.2'] },
    templates: [
      greatestOrLeast({ free: (rng) => rng.int(1020, 98_900), from: 1000, to: 1_000_000 }, 1_000_000),
    ],
  },
  {
    id: 'place.million',
    title: 'Place value to a million',
    year: 5,
    fluentYear: 6,
    strand: 'place-value',
    prerequisites: ['place.thousands'],
    codes: { ac9: ['AC9M3N01'], england: ['NC-Y5-place-1', 'NC-Y5-place-2'], ccss: ['4.NBT.A.2'] },
    shift: -0.3,
    templates: [
      digitWorth(MILLION),
      howMany(MILLION),
      restOf(MILLION),
      moreOrLess({ ...MILLION, to: 890_000 }, [1, 1000, 10_000, 100_000]),
    ],
  },
];
