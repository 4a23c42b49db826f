import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shownNames } from './shown-names.js';

const child = (givenName: string, familyName = '', alias = '') => ({ givenName, familyName, alias });
const fold = (text: string) => text.toLocaleLowerCase('en');

describe('shownNames', () => {
  it.each([
    ['given names alone', [child('Mara', 'Tan'), child('Noah', 'Lee')], ['Mara', 'Noah']],
    ['as many letters as needed', [child('Mara', 'Tan'), child('Mara', 'Teo')], ['Mara Ta', 'Mara Te']],
    ['one without family name', [child('Mara'), child('Mara', 'Tan')], ['Mara', 'Mara T']],
    ['one name within another', [child('Mara', 'Ta'), child('Mara', 'Tan')], ['Mara Ta', 'Mara Tan']],
    ['capitals aside', [child('mara', 'tan'), child('MARA', 'Lee')], ['mara t', 'MARA L']],
    ['a short name instead', [child('Mara', 'Tan', 'Mimi'), child('Mara', 'Lee')], ['Mimi', 'Mara']],
    [
      'a short name that another bears',
      [child('Tamara', 'Ng', 'Mara'), child('Mara', 'Lee')],
      ['Mara', 'Mara L'],
    ],
    [
      'a short name like a shortened one',
      [child('A', 'B', 'Mara T'), child('Mara', 'Tan'), child('Mara', 'Lee')],
      ['Mara T', 'Mara Ta', 'Mara L'],
    ],
    ['names of two words', [child('Jo', 'de Groot'), child('Jo', 'de Haan')], ['Jo de G', 'Jo de H']],
    [
      'emoji in one piece',
      [child('Fox', '👩🏽‍🚀 One'), child('Fox', '👩🏽‍🔬 Two')],
      ['Fox 👩🏽‍🚀', 'Fox 👩🏽‍🔬'],
    ],
    ['namesakes alike', [child('Mara', 'Tan'), child('Mara', 'Tan')], ['Mara Tan', 'Mara Tan']],
  ])('shows %s', (_, children, shown) => {
    expect(shownNames(children)).toEqual(shown);
  });

  it('shows two children alike only when their whole names are alike, whatever the class', () => {
    const word = fc.oneof(
      fc.constantFrom('Mara', 'mara', 'M', 'Ta', 'Tan', 'de G'),
      fc.string({ unit: 'grapheme', maxLength: 3 }).map((text) => text.trim()),
    );
    const anyChild = fc.record({
      givenName: word.filter((text) => text !== ''),
      familyName: word,
      alias: fc.oneof({ weight: 4, arbitrary: fc.constant('') }, { weight: 1, arbitrary: word }),
    });
    const whole = ({ givenName, familyName, alias }: ReturnType<typeof child>) =>
      fold(alias || `${givenName} ${familyName}`.trim());
    fc.assert(
      fc.property(fc.array(anyChild, { maxLength: 30 }), (children) => {
        const shown = shownNames(children);
        expect(shown).toHaveLength(children.length);
        const wholeByShown = new Map<string, string>();
        children.forEach((one, at) => {
          const name = shown[at] ?? '';
          expect(name).toBe(name.trim());
          expect(`${one.givenName} ${one.familyName}`.startsWith(name) || name === one.alias).toBe(true);
          const other = wholeByShown.get(fold(name));
          if (other !== undefined) expect(other).toBe(whole(one));
          wholeByShown.set(fold(name), whole(one));
        });
      }),
      { numRuns: 500, seed: 20260508 },
    );
  });

  it('never makes a name longer than another child makes it', () => {
    expect(shownNames([child('Mara', 'Tan')])).toEqual(['Mara']);
  });
});
