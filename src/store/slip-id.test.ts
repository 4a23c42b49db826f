import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeSlipId, parseSlipId, SLIP_ID_BYTES } from './slip-id.js';

const slipId = fc.uint8Array({ minLength: SLIP_ID_BYTES, maxLength: SLIP_ID_BYTES }).map(makeSlipId);
const CHARACTERS = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';

describe('a slip id', () => {
  it('fits the alphanumeric mode of the smallest QR code at its highest but one correction level', () => {
    // ISO/IEC 18004, version 1: 16 alphanumeric characters at level Q (from memory).
    fc.assert(fc.property(slipId, (id) => id.length <= 15 && /^[0-9A-Z]+$/.test(id)));
  });

  it('is read however it is typed', () => {
    fc.assert(
      fc.property(slipId, (id) => {
        expect(parseSlipId(` ${id.slice(0, 4).toLowerCase()}-${id.slice(4, 8)} ${id.slice(8)}\n`)).toBe(id);
      }),
    );
  });

  it('is refused with any one character wrong', () => {
    fc.assert(
      fc.property(slipId, fc.nat(11), fc.constantFrom(...CHARACTERS), (id, at, character) => {
        fc.pre(id[at] !== character);
        expect(parseSlipId(id.slice(0, at) + character + id.slice(at + 1))).toBeNull();
      }),
    );
  });

  it('is refused with any two characters exchanged', () => {
    fc.assert(
      fc.property(slipId, fc.nat(11), fc.nat(11), (id, a, b) => {
        fc.pre(id[a] !== id[b]);
        const swapped = [...id];
        [swapped[a], swapped[b]] = [swapped[b] as string, swapped[a] as string];
        expect(parseSlipId(swapped.join(''))).toBeNull();
      }),
    );
  });

  it('has no character that looks like another', () => {
    for (const doubtful of '01ILO') expect(CHARACTERS).not.toContain(doubtful);
    fc.assert(fc.property(slipId, (id) => [...id].every((character) => CHARACTERS.includes(character))));
  });
});
