// The questions of a set to read through, and to swap where a set allows it.
import type { SkillChoice } from '#api/make.js';
import { isOwnId } from '#engine/own-questions/own-question.js';
import { Button } from '../../parts/button.js';
import { FigureView } from '../../parts/figure-view.js';
import { MathText } from '../../parts/math-text.js';
import styles from './pieces.module.css';
import { canSwap, questionRows } from './question-rows.js';
import type { Activity } from './worker/messages.js';

interface Props {
  readonly activity: Activity;
  readonly skills: readonly SkillChoice[];
  readonly onSwap: (place: number) => void;
}

export function QuestionList({ activity, skills, onSwap }: Props) {
  const isSwappable = canSwap(activity);
  return (
    <table className={styles.questions}>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">Place</span>
          </th>
          <th scope="col">Question</th>
          <th scope="col">Answer</th>
          <th scope="col">Skill</th>
          {isSwappable && (
            <th scope="col">
              <span className="unseen">Another question</span>
            </th>
          )}
        </tr>
      </thead>
      <tbody>
        {questionRows(activity).map(({ place, where, question, answer }) => (
          <tr key={place}>
            <th scope="row">{where}</th>
            <td>
              <span className={styles.asks}>
                <span>
                  <MathText text={question.text} />
                </span>
                {question.figure && (
                  <FigureView figure={question.figure} locale={activity.locale} scale={1.8} />
                )}
              </span>
            </td>
            <td className={styles.key}>
              <MathText text={answer.text} />
            </td>
            <td className={styles.skill}>
              {isOwnId(question.skill)
                ? 'My question'
                : skills.find(({ id }) => id === question.skill)?.title}
            </td>
            {isSwappable && (
              <td>
                <Button weight="quiet" aria-label={`Swap question ${where}`} onPress={() => onSwap(place)}>
                  Swap
                </Button>
              </td>
            )}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
