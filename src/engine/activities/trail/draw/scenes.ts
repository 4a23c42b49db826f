// Every scene by its name.
import type { ThemeId, Trail } from '../trail.js';
import type { Scene } from './scene.js';
import { HARBOUR } from './scenes/harbour.js';
import { HIVE } from './scenes/hive.js';
import { KITE } from './scenes/kite.js';
import { LANTERN } from './scenes/lantern.js';
import { PICNIC } from './scenes/picnic.js';
import { RAILWAY } from './scenes/railway.js';
import { REEF } from './scenes/reef.js';
import { ROCKET } from './scenes/rocket.js';

export const SCENES: Readonly<Record<ThemeId, Scene>> = {
  lantern: LANTERN,
  harbour: HARBOUR,
  kite: KITE,
  picnic: PICNIC,
  rocket: ROCKET,
  hive: HIVE,
  railway: RAILWAY,
  reef: REEF,
};

/** What the child does, in one sentence. */
export function storyOf({ theme }: Pick<Trail, 'theme'>): string {
  return SCENES[theme].story;
}
