import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type TextPiece, textPieces } from './rich-text.js';

const NBSP = '\u00a0';

function joined(pieces: readonly TextPiece[]): string {
  return pieces
    .map((piece) =>
      't' in piece
        ? piece.t
        : 'gap' in piece
          ? '\u25a1'
          : `${piece.whole ? `${piece.whole} ` : ''}${piece.n}/${piece.d}`,
    )
    .join('')
    .replaceAll(NBSP, ' ');
}

describe('textPieces', () => {
  it.each([
    ['3/4 of 20', [{ whole: '', n: '3', d: '4' }, { t: ' of 20' }]],
    [
      '1 3/4 + 5/8',
      [{ whole: '1', n: '3', d: '4' }, { t: `${NBSP}+${NBSP}` }, { whole: '', n: '5', d: '8' }],
    ],
    ['47 + \u25a1 = 100', [{ t: `47${NBSP}+${NBSP}` }, { gap: true }, { t: `${NBSP}=${NBSP}100` }]],
    ['2/8 = ?/4', [{ whole: '', n: '2', d: '8' }, { t: `${NBSP}=${NBSP}` }, { whole: '', n: '?', d: '4' }]],
    ['___ tens', [{ gap: true }, { t: ' tens' }]],
    ['18 cm', [{ t: `18${NBSP}cm` }]],
    ['12 500', [{ t: `12${NBSP}500` }]],
    ['on 25/11/2026', [{ t: 'on 25/11/2026' }]],
    ['about 1.3/4', [{ t: 'about 1.3/4' }]],
    ['km/h', [{ t: 'km/h' }]],
  ])('%s', (text, pieces) => expect(textPieces(text)).toEqual(pieces));

  it('lets a long sum break, but only after an operator', () => {
    const [piece] = textPieces('(47 + 3) \u00d7 4 \u2212 120 \u00f7 5 + 7 \u00d7 8');
    expect(
      piece &&
        't' in piece &&
        piece.t
          .split(' ')
          .slice(0, -1)
          .every((part) => /[+\u2212\u00d7\u00f7]$/u.test(part)),
    ).toBe(true);
  });

  it('keeps the last two words of a sentence together', () => {
    const [piece] = textPieces('How far is it all the way around the pond in m?');
    expect(piece && 't' in piece && piece.t.endsWith(`in${NBSP}m?`)).toBe(true);
  });

  it('changes nothing but the kind of spaces', () => {
    const part = fc.constantFrom(
      '47',
      '3/4',
      '1 3/4',
      '+',
      '=',
      '\u00f7',
      '\u25a1',
      'sheep',
      'cm',
      '1 000',
      '(',
      '7:45',
      '.',
    );
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 30 }), (parts) => {
        const text = parts.join(' ');
        expect(joined(textPieces(text))).toBe(text);
      }),
    );
  });
});
