// Turns of phrase about patterns that differ from country to country.
import type { Locale } from '../../numbers/locale.js';

/** "in 8s", or "by 8s" in American classrooms: how a pattern counts or goes up. Common practice. */
export function inSteps(step: string, locale: Locale): string {
  return `${locale.id === 'en-US' ? 'by' : 'in'} ${step}s`;
}
