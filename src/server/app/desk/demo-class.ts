// The invented class: who is in it.

export const DEMO_CLASS_NAME = 'Lantern Room 4/5 (demo)';

/** Given names in use in many places; family names made up. */
export const DEMO_CHILDREN: readonly (readonly [given: string, family: string])[] = [
  ['Amara', 'Brindlewick'],
  ['Noah', 'Fernhollow'],
  ['Priya', 'Quillmere'],
  ['Leo', 'Dapplestone'],
  ['Mei', 'Tarnbridge'],
  ['Tomas', 'Wrenfield'],
  ['Zahra', 'Oakspindle'],
  ['Finn', 'Marlowick'],
  ['Isla', 'Copperbeck'],
  ['Kai', 'Thistledown'],
  ['Ruby', 'Larkhollow'],
  ['Omar', 'Pebblewright'],
  ['Ava', 'Sanderling'],
  ['Jarrah', 'Mossgate'],
  ['Lucia', 'Hazelmoor'],
  ['Ethan', 'Driftway'],
  ['Nina', 'Cloudesley'],
  ['Sami', 'Barleycroft'],
  ['Grace', 'Willowmarch'],
  ['Arlo', 'Stonewhistle'],
  ['Hana', 'Brightwater'],
  ['Mateo', 'Ashenfold'],
  ['Willa', 'Rushlight'],
  ['Idris', 'Kettlewell'],
  ['Poppy', 'Nightingate'],
  ['Theo', 'Merrivale'],
  ['Noor', 'Silverthorn'],
];
