// Shares of a class in words and in children, the way a teacher counts.

/** "about 26 of 27"; in words when the class is empty. */
export function childrenWho(share: number, count: number): string {
  if (count === 0) return shareInWords(share);
  const children = Math.round(share * count);
  return `about ${children} of ${count}`;
}

/** The share in words alone. */
export function shareInWords(share: number): string {
  if (share >= 0.93) return 'nearly everyone';
  if (share >= 0.75) return 'most children';
  if (share >= 0.58) return 'more than half';
  if (share >= 0.42) return 'about half';
  if (share >= 0.22) return 'some children';
  if (share >= 0.1) return 'a few children';
  return 'one or two children';
}
