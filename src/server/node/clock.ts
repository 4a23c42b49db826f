// The one clock. Tests and demonstrations may fix the day with AFTERBELL_TODAY.

/** Today where the teacher is, as YYYY-MM-DD, and this moment in UTC. */
export function readClock(fixedDay: string | undefined): { today: string; now: string } {
  const moment = new Date();
  const pad = (value: number) => String(value).padStart(2, '0');
  const today = `${moment.getFullYear()}-${pad(moment.getMonth() + 1)}-${pad(moment.getDate())}`;
  return { today: fixedDay ?? today, now: moment.toISOString() };
}
