// A chain as it lies when all is right: strip after strip, each with its answer on the left and the next question.
import type { Chain } from '#engine/activities/chain/chain.js';
import { FigureView } from '../../parts/figure-view.js';
import { MathText } from '../../parts/math-text.js';
import styles from './pieces.module.css';

/** Questions longer than this are set in smaller letters, as on paper. */
const LONG = 44;

export function ChainView({ chain }: { readonly chain: Chain }) {
  return (
    <ol className={styles.strips} aria-label="Strips in the right order">
      {chain.cards.map(({ label, answer, question }) => (
        <li
          key={label}
          className={`${styles.strip} ${answer ? styles.leads : ''} ${question ? styles.follows : ''}`}
        >
          <span className={answer ? styles.answer : styles.end}>
            {answer ? <MathText text={answer.text} /> : 'Start'}
          </span>
          <span
            className={
              question ? `${styles.asked} ${question.text.length > LONG ? styles.long : ''}` : styles.end
            }
          >
            {question ? (
              <>
                <span>
                  <MathText text={question.text} />
                </span>
                {question.figure && <FigureView figure={question.figure} locale={chain.locale} scale={1.7} />}
              </>
            ) : (
              'Finish'
            )}
          </span>
          <span className={styles.letter}>
            <span className="unseen">Letter </span>
            {label}
          </span>
        </li>
      ))}
    </ol>
  );
}
