// A skill: one thing a child can be asked in a warm-up. One file per strand lists them; map.ts joins the files.
import type { StrandId } from '../curriculum/strands.js';
import type { Template } from '../questions/draft.js';

export interface Skill {
  /** Dotted, stable for ever: "add.2d2d.carry". */
  readonly id: string;
  /** Short and plain, as a teacher says it: "Add two-digit numbers with carrying". */
  readonly title: string;
  /** Year of introduction (Australian year; 0 is Foundation). */
  readonly year: number;
  /** Year by whose end it is expected to be fluent. */
  readonly fluentYear: number;
  readonly strand: StrandId;
  /**
   * The idea that a child meets, where skills of several names or strands ask much the same; a board spreads such ideas.
   * Left out, the first two parts of the id name it.
   */
  readonly family?: string;
  /** Ids of skills that come before it. The whole map is connected and has no cycles. */
  readonly prerequisites: readonly string[];
  readonly codes: {
    readonly ac9: readonly string[];
    readonly england: readonly string[];
    readonly ccss: readonly string[];
  };
  /** Shift of the plain case in logits where a skill is known to be easier or harder than its year suggests. */
  readonly shift?: number;
  readonly templates: readonly [Template, ...Template[]];
}
