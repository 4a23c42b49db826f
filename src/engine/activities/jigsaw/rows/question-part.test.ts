import { describe, expect, it } from 'vitest';
import { fractionMath } from '../../../../../test/support/exact-math.js';
import { localeOf } from '../../../numbers/locale.js';
import { finishQuestion } from '../../../questions/finish.js';
import { Rng } from '../../../random/rng.js';
import { SKILLS } from '../../../skills/map.js';
import { questionPart } from './question-part.js';

const locale = localeOf('en-AU');
const DRAWS = 4;

/** The parts that a skill's questions give, several of each template. */
function partsOf(id: string) {
  const skill = SKILLS.find((one) => one.id === id);
  if (!skill) throw new Error(`no skill ${id}`);
  const rng = new Rng(7);
  return skill.templates.flatMap((template) =>
    Array.from({ length: DRAWS }, () =>
      questionPart(finishQuestion(skill, template.id, template.ask({ rng, locale }), locale), locale),
    ),
  );
}

describe('questionPart', () => {
  it('is true by mathjs for every skill of the map that gives one', () => {
    let giving = 0;
    for (const { id } of SKILLS) {
      const parts = partsOf(id).filter((part) => part !== null);
      if (parts.length > 0) giving++;
      for (const { left, sign, right } of parts) {
        const said = left.map((cell) => cell.expression).join(' ');
        expect(fractionMath.evaluate(`(${said}) ${sign} (${right.expression})`), `${id}: ${said}`).toBe(true);
        expect(left.map((cell) => cell.text).join(' ')).not.toBe(right.text);
      }
    }
    expect(giving).toBeGreaterThan(150);
  });

  it.each([
    ['add.2d2d', /^\d+ \+ \d+ = \d+$/],
    ['pct.of.easy', /^\d+% × \d+ = [\d.]+$/],
    ['place.words.100', /^\d+ = [a-z-]+$/],
    ['time.clock.five', /^clock face (\d+:\d\d) = \1$/],
    ['dec.compare', /^[\d.]+ > [\d.]+$/],
    ['frac.nonunit-of', /^\d\/\d+ × \d+ = \d+$/],
  ])('writes questions of %s as their children read them', (id, wanted) => {
    const texts = partsOf(id).flatMap((part) =>
      part === null
        ? []
        : [
            [
              ...part.left.map((cell) => cell.text),
              part.sign === '==' ? '=' : part.sign,
              part.right.text,
            ].join(' '),
          ],
    );
    expect(texts.length).toBeGreaterThan(1);
    for (const text of texts) expect(text).toMatch(wanted);
  });

  it('leaves out what has nothing to work out, and numbers that the question does not name', () => {
    for (const part of [...partsOf('mult.zero-one'), ...partsOf('place.odd-even'), ...partsOf('shape.name')])
      expect(part).toBeNull();
  });
});
