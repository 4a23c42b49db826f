// Spinners for questions about chance.

/** Colours that look different as words and as greys. */
export const COLOURS = ['red', 'blue', 'green', 'yellow'] as const;

/** A spinner with `wanted` of `all` equal parts in one colour. */
export function spinner(wanted: number, all: number, colour: string, other: string) {
  return {
    kind: 'spinner' as const,
    sectors: Array.from({ length: all }, (_, i) => (i < wanted ? colour : other)),
  };
}
