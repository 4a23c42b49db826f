// The strands of primary mathematics, in the order in which screens and prints list them.

export const STRANDS = [
  { id: 'place-value', title: 'Place value' },
  { id: 'addition', title: 'Addition' },
  { id: 'subtraction', title: 'Subtraction' },
  { id: 'multiplication', title: 'Multiplication' },
  { id: 'division', title: 'Division' },
  { id: 'fractions', title: 'Fractions' },
  { id: 'decimals', title: 'Decimals' },
  { id: 'percentages', title: 'Percentages' },
  { id: 'money', title: 'Money' },
  { id: 'time', title: 'Time' },
  { id: 'measures', title: 'Measures' },
  { id: 'shape', title: 'Shape and angle' },
  { id: 'algebra', title: 'Patterns and algebra' },
  { id: 'data', title: 'Data and chance' },
] as const;

export type StrandId = (typeof STRANDS)[number]['id'];

/** The strand's name on screen and paper. */
export function strandTitle(id: StrandId): string {
  return STRANDS.find((strand) => strand.id === id)?.title ?? id;
}
