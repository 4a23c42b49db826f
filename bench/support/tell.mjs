// How a benchmark hands its figures over: to bench/run.mjs as messages, or as lines when it is run by itself.
import process from 'node:process';

/**
 * Tells one row of the table. `measured` and `beside` are figures with their unit; `target` is what was asked for, with
 * `met` true or false; `beside` is what another tool needs for the same, measured in the same run.
 */
export function tell({ what, measured, target = '', met = null, beside = '' }) {
  const row = { what, measured, target, met, beside };
  if (process.send) process.send(row);
  else
    console.log(
      [what, measured, target, met === null ? '' : met ? 'met' : 'not met', beside]
        .filter(Boolean)
        .join(' | '),
    );
}

/** A count of milliseconds as a person reads it. */
export function ms(value) {
  if (value >= 10_000) return `${(value / 1000).toFixed(1)} s`;
  if (value >= 1000) return `${(value / 1000).toFixed(2)} s`;
  if (value >= 100) return `${value.toFixed(0)} ms`;
  return value >= 1 ? `${value.toFixed(1)} ms` : `${(1000 * value).toFixed(0)} µs`;
}

/** A whole number with thousands set apart. */
export function count(value) {
  return Math.round(value).toLocaleString('en-AU').replaceAll(',', ' ');
}
