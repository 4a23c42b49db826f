// Typical wrong methods with clock times. Times are minutes on a 12-hour dial (0 = 12:00 to 719 = 11:59).
import type { Answer } from '../question.js';

/** "3:25" from hour and minute as a child would write them, however impossible ("3:72"); "03:72" on a 24-hour clock. */
export function clockText(hour: number, minute: number, dial: 12 | 24 = 12): string {
  return `${String(hour).padStart(dial === 24 ? 2 : 1, '0')}:${String(minute).padStart(2, '0')}`;
}

/** A written time that no clock shows, as an answer without a value. */
export function impossibleTime(hour: number, minute: number, dial: 12 | 24 = 12): Answer {
  return { kind: 'time', text: clockText(hour, minute, dial), value: null };
}

/** The time read when the long hand is taken for the hour and the short hand for the minutes, to 5 minutes. */
export function handsSwapped(time: number): number {
  const hour = Math.floor(time / 60) % 12;
  const minute = time % 60;
  const readHour = Math.round(minute / 5) % 12;
  // The number that the short hand is nearest to; halfway between two, the one it has passed.
  const readMinute = Math.ceil(hour + minute / 60 - 0.5) * 5;
  return onDial(readHour * 60 + (readMinute % 60));
}

/** The time read when the hour is taken from the number that the short hand is nearest to, once past the half hour. */
export function nearestHourRead(time: number): number {
  return time % 60 >= 30 ? onDial(time + 60) : time;
}

/** The time read when the number at the long hand is taken for the minutes: 3:25 as 3:05, 3:01 as 3:12. */
export function minuteNumberRead(time: number): number {
  const minute = time % 60;
  return onDial(time - minute + (Math.round(minute / 5) || 12));
}

/** Hour and minute when time is added as if it were written in hundredths: 3:25 + 47 min = 3:72, 3:80 + 30 = 4:10. */
export function addedInHundreds(start: number, minutes: number): { hour: number; minute: number } {
  const total = (Math.floor(start / 60) || 12) * 100 + (start % 60) + minutes;
  return { hour: ((Math.floor(total / 100) + 11) % 12) + 1, minute: total % 100 };
}

/** 3:40 as 340. */
function readAsHundreds(time: number): number {
  return Math.floor(time / 60) * 100 + (time % 60);
}

/** Minutes between two times when both are read as numbers of hundredths and subtracted: 3:40 to 4:15 = 75. */
export function differenceInHundreds(start: number, end: number): number {
  return readAsHundreds(end) - readAsHundreds(start);
}

/** Minutes between two times when the smaller is taken from the larger in hours and in minutes: 3:40 to 5:15 = 2 h 25 min. */
export function hourByHour(start: number, end: number): number {
  return (Math.floor(end / 60) - Math.floor(start / 60)) * 60 + Math.abs((end % 60) - (start % 60));
}

/** The same time as minutes 0 (12:00) to 719 (11:59) on a 12-hour dial. */
export function onDial(time: number): number {
  return ((time % 720) + 720) % 720;
}
