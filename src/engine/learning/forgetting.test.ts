import { createEmptyCard, fsrs, generatorParameters, type Grade } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { daysUntil, type Memory, type RecallGrade, remember, retrievability } from './forgetting.js';

const DAY_MS = 86_400_000;

describe('FSRS-6 memory', () => {
  it('gives the published retrievability and intervals', () => {
    // Values of ts-fsrs 5.4.2 with its default weights, stability 10 days.
    const tabled: readonly (readonly [number, number])[] = [
      [0, 1],
      [1, 0.98568241],
      [5, 0.94034429],
      [10, 0.9],
      [30, 0.8093881],
      [100, 0.69282664],
    ];
    for (const [days, recall] of tabled)
      expect(Math.abs(retrievability(days, 10) - recall)).toBeLessThan(1e-6);
    const intervals: readonly (readonly [number, number])[] = [
      [0.95, 4.0256],
      [0.9, 10],
      [0.85, 19.0643],
      [0.8, 33.1596],
    ];
    for (const [floor, days] of intervals) expect(daysUntil(floor, 10)).toBeCloseTo(days, 3);
  });

  it('gives the published first stabilities and difficulties', () => {
    const tabled: readonly (readonly [RecallGrade, number, number])[] = [
      [1, 0.212, 6.4133],
      [2, 1.2931, 5.1122],
      [3, 2.3065, 2.1181],
      [4, 8.2956, 1],
    ];
    for (const [grade, stability, difficulty] of tabled) {
      const memory = remember(null, grade, 100);
      expect(memory.stabilityDays).toBeCloseTo(stability, 4);
      expect(memory.difficulty).toBeCloseTo(difficulty, 4);
    }
  });

  it.each([
    [
      'five good answers, each when the interval is over',
      [3, 3, 3, 3, 3],
      [2.3065, 13.8269, 56.9567, 196.2353, 586.4835],
      [3, 14, 57, 196, 586],
    ],
    [
      'a forgotten answer between',
      [3, 3, 1, 3, 4],
      [2.3065, 13.8269, 1.7264, 5.1238, 19.1317],
      [3, 14, 2, 5, 19],
    ],
  ] as const)('follows the published review sequence: %s', (_, grades, stabilities, gaps) => {
    // "How run": default weights, no fuzz, no short-term steps; the next answer comes after the rounded interval.
    let memory: Memory | null = null;
    let day = 0;
    grades.forEach((grade, i) => {
      memory = remember(memory, grade, day);
      expect(memory.stabilityDays).toBeCloseTo(stabilities[i] as number, 3);
      day += gaps[i] as number;
    });
  });

  it('agrees with ts-fsrs on long mixed sequences', () => {
    const scheduler = fsrs(generatorParameters({ enable_fuzz: false, enable_short_term: false }));
    let worst = 0;
    for (let run = 0; run < 40; run++) {
      let card = createEmptyCard(new Date(0));
      let memory: Memory | null = null;
      let day = 0;
      for (let i = 0; i < 12; i++) {
        const grade = (1 + ((run * 7 + i * i * 3 + run * i) % 4)) as RecallGrade;
        card = scheduler.next(card, new Date(day * DAY_MS), grade as Grade).card;
        memory = remember(memory, grade, day);
        worst = Math.max(
          worst,
          Math.abs(memory.stabilityDays / card.stability - 1),
          Math.abs(memory.difficulty - card.difficulty),
        );
        day += 1 + ((run * 5 + i * 11) % 40);
      }
    }
    // The package rounds its state to 8 decimals after every answer.
    expect(worst).toBeLessThan(1e-6);
  });
});
