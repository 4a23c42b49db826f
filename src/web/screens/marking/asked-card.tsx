// Above the grid, always in sight: the focused question with its answer, the keys, and whether everything is saved.
import { memo } from 'react';
import { measureFigure } from '#engine/figures/draw.js';
import type { FigureSpec } from '#engine/figures/figure.js';
import type { Rung } from '#engine/activities/board/board.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { FigureView } from '../../parts/figure-view.js';
import { MathText } from '../../parts/math-text.js';
import type { MarkingDesk } from './marking-desk.js';
import styles from './marking.module.css';
import type { OutboxState } from './outbox.js';
import { SavedState } from './saved-state.js';

const FIGURE_HEIGHT_PX = 68;
const FIGURE_WIDTH_PX = 220;
const LARGEST_SCALE = 2.2;

const KEYS: readonly (readonly [keys: readonly string[], does: string])[] = [
  [['Space'], 'right'],
  [[','], 'blank'],
  [['x'], 'wrong'],
  [['7', '5', 'Enter'], 'what was written'],
  [['Enter'], 'all open ones right, next child'],
  [['Shift', 'Enter'], 'rest blank, next child'],
  [['⌫'], 'open again'],
  [['Ctrl', 'Z'], 'take back'],
  [['Alt', 'A'], 'away'],
];

interface Props {
  readonly rung: Rung;
  readonly locale: LocaleId;
  readonly outbox: OutboxState;
  readonly desk: MarkingDesk;
}

export function AskedCard({ rung, locale, outbox, desk }: Props) {
  return (
    <section className={styles.card} aria-label="Question in focus">
      <Asked rung={rung} locale={locale} />
      <div className={styles.cardFoot}>
        <ul className={styles.keys} aria-label="Keys">
          {KEYS.map(([keys, does]) => (
            <li key={does}>
              {keys.map((key) => (
                <kbd key={key}>{key}</kbd>
              ))}{' '}
              {does}
            </li>
          ))}
        </ul>
        <SavedState outbox={outbox} desk={desk} />
      </div>
    </section>
  );
}

/** Drawn again only when the focus comes to another rung. */
export const Asked = memo(function Asked({
  rung: { rung, question },
  locale,
}: {
  readonly rung: Rung;
  readonly locale: LocaleId;
}) {
  return (
    <div className={styles.asked}>
      <span className={styles.askedPlace}>
        <span className="unseen">Question </span>
        {rung}
      </span>
      <p className={styles.askedText}>
        <MathText text={question.text} />
      </p>
      {question.figure && (
        <FigureView figure={question.figure} locale={locale} scale={fittingScale(question.figure, locale)} />
      )}
      <p className={styles.askedAnswer}>
        <span className={styles.askedLabel}>Answer</span>
        <MathText text={question.answer.text} />
      </p>
    </div>
  );
});

function fittingScale(figure: FigureSpec, locale: LocaleId): number {
  const { widthMm, heightMm } = measureFigure(figure, { locale });
  return Math.min(LARGEST_SCALE, FIGURE_HEIGHT_PX / heightMm, FIGURE_WIDTH_PX / widthMm);
}
