import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type BatchEntry, historyOf } from './mark-history.js';

it('offers what a list of past states, with a finger on the present one, would offer', () => {
  const steps = fc.array(fc.constantFrom('record', 'undo', 'redo'), {
    minLength: 1,
    maxLength: 40,
    size: 'max',
  });
  fc.assert(
    fc.property(steps, (wanted) => {
      const entries: BatchEntry[] = [];
      // recorded[i] led from state i to state i + 1; the finger is on state `at`.
      let recorded: number[] = [];
      let at = 0;
      for (const action of wanted) {
        const batch = entries.length + 1;
        const target = action === 'record' ? null : (recorded[action === 'undo' ? at - 1 : at] ?? null);
        if (action === 'record') {
          recorded = [...recorded.slice(0, at), batch];
          at++;
        } else if (target === null) {
          continue;
        } else {
          at += action === 'undo' ? -1 : 1;
        }
        entries.push({ batch, action, target });
        expect(historyOf(entries)).toEqual({
          undoable: recorded[at - 1] ?? null,
          redoable: recorded[at] ?? null,
        });
      }
    }),
  );
});
