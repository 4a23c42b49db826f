// Slip ids: short enough for the smallest QR code, typed by hand without doubt, wrong ones recognised, nobody named.

/** Digits and capitals without 0, 1, I, L and O; 31 of them, a prime, so that the check below catches what it claims. */
const ALPHABET = '23456789ABCDEFGHJKMNPQRSTUVWXYZ';
const PRIME = ALPHABET.length;
/** 11 random characters (54 bits) and the check character. */
const LENGTH = 12;

/** Random bytes that `makeSlipId` needs. */
export const SLIP_ID_BYTES = 2 * (LENGTH - 1);

/**
 * The character that makes the weighted sum of all characters (weights 1 to 12) divisible by 31. Since 31 is prime and
 * exceeds the length, any one wrong character and any two exchanged ones change the sum.
 */
function checkCharacter(body: string): string {
  let sum = 0;
  for (let i = 0; i < body.length; i++) sum += (i + 1) * ALPHABET.indexOf(body.charAt(i));
  // LENGTH * check ≡ -sum (mod 31): try the 31 values rather than invert.
  for (let check = 0; check < PRIME; check++) {
    if ((sum + LENGTH * check) % PRIME === 0) return ALPHABET.charAt(check);
  }
  throw new Error('unreachable: 12 has an inverse modulo 31');
}

/** A slip id from SLIP_ID_BYTES random bytes. */
export function makeSlipId(random: Uint8Array): string {
  if (random.length !== SLIP_ID_BYTES) throw new RangeError(`${SLIP_ID_BYTES} random bytes are needed`);
  let body = '';
  // Two bytes a character keep the favour of any character below 0.05 %.
  for (let i = 0; i < random.length; i += 2) {
    body += ALPHABET.charAt((((random[i] as number) << 8) | (random[i + 1] as number)) % PRIME);
  }
  return body + checkCharacter(body);
}

/** The id in what was typed or scanned (case, spaces and hyphens aside), or null when it is not a slip id. */
export function parseSlipId(typed: string): string | null {
  const id = typed.toUpperCase().replace(/[\s-]/g, '');
  if (id.length !== LENGTH || [...id].some((character) => !ALPHABET.includes(character))) return null;
  return checkCharacter(id.slice(0, -1)) === id.slice(-1) ? id : null;
}
