// Collecting rows and problems while a roster is read, with the checks that all formats share.
import type { NewChild, RosterProblem, RosterReading } from '#api/class.js';
import { faultOfName, tidyName } from './name-rules.js';

export const MOST_CHILDREN = 60;

interface Cell {
  readonly text: string;
  readonly column: string;
}

export class RosterReader {
  readonly #children: (NewChild & { row: number })[] = [];
  readonly #problems: RosterProblem[] = [];
  readonly #seen = new Map<string, number>();

  problem(row: number, column: string, message: string, hint: string): void {
    this.#problems.push({ row, column, message, hint });
  }

  /** Adds a child, or the problems that keep it out. `year` null: already reported. */
  child(row: number, given: Cell, family: Cell, alias: Cell, year: number | null): void {
    const before = this.#problems.length;
    const names = {
      givenName: tidyName(given.text),
      familyName: tidyName(family.text),
      alias: tidyName(alias.text),
    };
    const fault = faultOfName(names.givenName);
    if (fault) this.problem(row, given.column, fault.message, fault.hint);
    for (const [cell, name] of [
      [family, names.familyName],
      [alias, names.alias],
    ] as const) {
      const wrong = name === '' ? null : faultOfName(name);
      if (wrong) this.problem(row, cell.column, wrong.message, wrong.hint);
    }
    if (names.alias.length > 40) {
      this.problem(row, alias.column, 'This short name is longer than 40 letters.', 'Choose a shorter one.');
    }
    if (year === null || this.#problems.length > before) return;
    const key = `${names.givenName}|${names.familyName}`.toLocaleLowerCase('en');
    const earlier = this.#seen.get(key);
    if (earlier !== undefined) {
      this.problem(
        row,
        given.column,
        `The same name stands in row ${earlier} already.`,
        'Delete one of the two, or add a letter to tell two children apart.',
      );
      return;
    }
    if (this.#children.length === MOST_CHILDREN) {
      this.problem(
        row,
        '',
        `A class holds at most ${MOST_CHILDREN} children.`,
        'Import one class at a time.',
      );
      return;
    }
    this.#seen.set(key, row);
    this.#children.push({ ...names, year, row });
  }

  finish(format: RosterReading['format'], className = ''): RosterReading {
    if (this.#children.length === 0 && this.#problems.length === 0) {
      this.problem(0, '', 'There are no names here yet.', 'Paste one child’s name on each line.');
    }
    return { format, className, children: this.#children, problems: this.#problems.slice(0, 200) };
  }
}
