// Keys of the display: a keyboard's and a clicker's (which sends PageDown, PageUp and "b" or ".").
import type { Press } from './phases.js';

const KEYS: Readonly<Record<string, Press['kind']>> = {
  ArrowRight: 'next',
  ArrowDown: 'next',
  PageDown: 'next',
  ' ': 'next',
  Enter: 'next',
  ArrowLeft: 'back',
  ArrowUp: 'back',
  PageUp: 'back',
  Backspace: 'back',
  l: 'last-call',
  b: 'last-call',
  '.': 'last-call',
  p: 'pause',
  r: 'reveal',
  Home: 'restart',
};

/** What a key means on the display, or null when it means nothing there. */
export function pressOf(key: string): Press['kind'] | null {
  return KEYS[key] ?? KEYS[key.toLowerCase()] ?? null;
}
