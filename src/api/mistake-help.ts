// What may help with each typical mistake, by the id of its misconception.
import { z } from 'zod';

export const MistakeHelp = z.record(z.string(), z.string());
export type MistakeHelp = z.infer<typeof MistakeHelp>;
