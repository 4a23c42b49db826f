// Answers one by one, each with the thinking that leads to it.
import type { Board, Rung } from '#engine/activities/board/board.js';
import { strategyFigure } from '#engine/figures/strategy.js';
import type { LocaleId } from '#engine/numbers/locale.js';
import { FigureView } from '../parts/figure-view.js';
import { MathText } from '../parts/math-text.js';
import styles from './display.module.css';

interface Props {
  readonly boards: readonly Board[];
  readonly rung: number;
  readonly isShown: boolean;
}

export function RevealPage({ boards, rung, isShown }: Props) {
  return (
    <div className={styles.reveal}>
      {boards.map((board) => {
        const found = board.rungs.find((one) => one.rung === rung);
        return found ? (
          <Revealed
            key={board.years.join()}
            rung={found}
            locale={board.locale}
            isShown={isShown}
            isBeside={boards.length > 1}
          />
        ) : null;
      })}
    </div>
  );
}

function Revealed({
  rung,
  locale,
  isShown,
  isBeside,
}: {
  readonly rung: Rung;
  readonly locale: LocaleId;
  readonly isShown: boolean;
  readonly isBeside: boolean;
}) {
  const { question } = rung;
  const drawn = strategyFigure(question);
  return (
    <section className={styles.revealed} aria-live="polite">
      <p className={styles.asked}>
        <span className={styles.place}>{rung.rung}</span>
        <span>
          <MathText text={question.text} />
        </span>
      </p>
      <div className={styles.worked}>
        <div className={styles.found}>
          {question.figure && (
            <FigureView figure={question.figure} locale={locale} scale={isBeside ? 5 : 7} />
          )}
          {isShown && (
            <p className={styles.answer}>
              <MathText text={question.answer.text} />
            </p>
          )}
        </div>
        {isShown && (
          <div className={styles.found}>
            <ol className={styles.steps}>
              {question.strategy.map((step) => (
                <li key={step}>
                  <MathText text={step} />
                </li>
              ))}
            </ol>
            {drawn && <FigureView figure={drawn} locale={locale} scale={isBeside ? 6 : 10} />}
          </div>
        )}
      </div>
    </section>
  );
}
