// The words of a wish that need nothing of the skill map, so that a form can show them without it.

/** Which part of a class the questions are pitched at: the lower works about a year below, the upper about a year above. */
export const PITCHES = ['lower', 'middle', 'upper'] as const;
export type Pitch = (typeof PITCHES)[number];

/** "graded" goes from easy to hard, "mixed" in any order. */
export const SUPPLY_ORDERS = ['graded', 'mixed'] as const;
export type SupplyOrder = (typeof SUPPLY_ORDERS)[number];
