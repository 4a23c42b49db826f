// One rung: question, answer, for how many it is meant, why it stands here, and the two things a teacher may do with it.
import { ToggleButton } from 'react-aria-components';
import type { Rung } from '#engine/activities/board/board.js';
import { MINIMUM_RUNGS } from '#engine/learning/counted.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { Button } from '../../parts/button.js';
import { FigureView } from '../../parts/figure-view.js';
import { MathText } from '../../parts/math-text.js';
import { childrenWho } from '../../parts/shares.js';
import styles from './today.module.css';

interface Props {
  readonly rung: Rung;
  readonly locale: LocaleId;
  readonly childCount: number;
  readonly isNarrow: boolean;
  readonly isFixed: boolean;
  readonly onLock: (keep: boolean) => void;
  readonly onSwap: () => void;
}

export function RungRow({ rung, locale, childCount, isNarrow, isFixed, onLock, onSwap }: Props) {
  const { question, why, predicted, rung: place, locked = false } = rung;
  return (
    <li className={`${styles.rung} ${isNarrow ? styles.narrow : ''}`}>
      <span className={styles.place} aria-hidden="true">
        {place}
      </span>
      <div className={styles.asked}>
        <p className={styles.question}>
          <span className="unseen">Question {place}. </span>
          <MathText text={question.text} />
        </p>
        {question.figure && <FigureView figure={question.figure} locale={locale} scale={2.2} />}
        <p className={styles.why}>{why}</p>
      </div>
      <p className={styles.answer}>
        <span className="unseen">Answer: </span>
        <MathText text={question.answer.text} />
      </p>
      <p className={styles.share}>
        <span className={styles.gauge} aria-hidden="true">
          <span style={{ inlineSize: `${Math.round(predicted * 100)}%` }} />
        </span>
        {childrenWho(predicted, childCount)}
      </p>
      {!isFixed && (
        <div className={styles.actions}>
          <ToggleButton
            className={styles.keep ?? ''}
            isSelected={locked}
            onChange={onLock}
            aria-label={`Keep question ${place}`}
          >
            {locked ? 'Kept' : 'Keep'}
          </ToggleButton>
          <Button weight="quiet" onPress={onSwap} aria-label={`Swap question ${place}`}>
            Swap
          </Button>
        </div>
      )}
      {place === MINIMUM_RUNGS && <p className={styles.minimum}>Everyone to here</p>}
    </li>
  );
}
