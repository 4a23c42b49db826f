// Times on a 12-hour dial, in minutes: 0 is 12:00, 719 is 11:59.

/** The full hours of a time on the dial, 0 to 11. */
export function hourOf(time: number): number {
  return Math.floor(time / 60);
}

/** Curriculum codes of telling the time to the minute. */
export const TO_THE_MINUTE = { ac9: ['AC9M3M04'], england: ['NC-Y3-measure-5'], ccss: ['3.MD.A.1'] } as const;
