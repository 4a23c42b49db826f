// A share of the class in the words of a staff room.

/** "nearly everyone", "about half", "one or two": who a rung is meant for. Reads after "for ". */
export function targetInWords(share: number): string {
  if (share >= 0.93) return 'nearly everyone';
  if (share >= 0.78) return 'most of the class';
  if (share >= 0.6) return 'about two in three';
  if (share >= 0.45) return 'about half';
  if (share >= 0.28) return 'about one in three';
  if (share >= 0.14) return 'a few';
  return 'one or two';
}
