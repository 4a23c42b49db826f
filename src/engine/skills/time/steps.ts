// Moving on a clock by steps: full hours first, then to the next full hour.

/** Steps by full hours first, then to the next full hour, then on. */
export function stepsForward(start: number, minutes: number, show: (time: number) => string): string[] {
  const hours = Math.floor(minutes / 60);
  const rest = minutes % 60;
  const steps: string[] = [];
  let now = start;
  if (hours > 0) {
    steps.push(`${show(now)} + ${hours}\u00a0h = ${show(now + hours * 60)}`);
    now += hours * 60;
  }
  if (rest > 0) {
    const toHour = 60 - (now % 60);
    if (rest > toHour) {
      steps.push(`${show(now)} + ${toHour}\u00a0min = ${show(now + toHour)}`);
      steps.push(`${show(now + toHour)} + ${rest - toHour}\u00a0min = ${show(now + rest)}`);
    } else steps.push(`${show(now)} + ${rest}\u00a0min = ${show(now + rest)}`);
  }
  return steps;
}

/** 1 when the minutes alone run past a full hour, else 0. */
export function crossings(start: number, minutes: number): number {
  return (start % 60) + (minutes % 60) >= 60 ? 1 : 0;
}

/** Curriculum codes of finding how long something lasts. */
export const ELAPSED = {
  ac9: ['AC9M4M03'],
  england: ['NC-Y3-measure-7'],
  ccss: ['3.MD.A.1', '4.MD.A.2'],
} as const;
