// One strip of a chain as it looks: what leads to it on the left, what it asks on the right.
import type { ChainCard } from '#engine/activities/chain/chain.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { MathText } from '../parts/math-text.js';
import { FittedFigure } from './fitted-figure.js';
import styles from './chain-table.module.css';

interface Props {
  readonly card: ChainCard;
  readonly locale: LocaleId;
  readonly isLaid: boolean;
}

export function StripFace({ card, locale, isLaid }: Props) {
  const { answer, question } = card;
  return (
    <span
      className={styles.face}
      data-face=""
      data-joined={isLaid}
      data-start={answer === null}
      data-finish={question === null}
    >
      <span className={answer ? styles.answer : styles.word} data-holds="">
        {answer ? (
          <>
            <span className="unseen">Answer </span>
            <MathText text={answer.text} />
          </>
        ) : (
          'Start'
        )}
        <span className="unseen">. </span>
      </span>
      {question ? (
        <span className={styles.asked} data-holds="">
          <span className={styles.text}>
            <span className="unseen">Asks: </span>
            <MathText text={question.text} />
          </span>
          {question.figure && (
            <FittedFigure figure={question.figure} locale={locale} className={styles.figure} />
          )}
        </span>
      ) : (
        <span className={`${styles.asked} ${styles.word}`}>Finish</span>
      )}
      <span className={styles.label}>
        <span className="unseen">. Strip </span>
        {card.label}
      </span>
    </span>
  );
}
