// The answers behind a standing, newest first, and what each of them moved.
import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from '@tanstack/react-router';
import type { EvidenceView } from '#api/understanding.js';
import { sentencesOf } from '../../app/client.js';
import { evidenceQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { MathText } from '../../parts/math-text.js';
import { movedInWords } from './chances.js';
import styles from './skill-row.module.css';

export function Evidence({ childId, skillId }: { readonly childId: string; readonly skillId: string }) {
  const { classId } = useParams({ from: '/class/$classId' });
  const { data, error } = useQuery(evidenceQuery(childId, skillId));
  if (error) {
    const { message, hint } = sentencesOf(error);
    return (
      <p className={styles.evidence} role="alert">
        {message} {hint}
      </p>
    );
  }
  if (!data) return <p className={styles.evidence}>Looking up the answers…</p>;
  return (
    <div className={styles.evidence}>
      <p>
        {data.sentence}{' '}
        <Link to="/class/$classId/skills" params={{ classId }} search={{ skill: skillId }}>
          What this skill asks
        </Link>
      </p>
      <Answers title="Answers to this skill" answers={data.answers.filter(({ isOwn }) => isOwn)} />
      <Answers
        title="Answers to the skills nearest to it, which move this one a little"
        answers={data.answers.filter(({ isOwn }) => !isOwn)}
      />
    </div>
  );
}

type Answer = EvidenceView['answers'][number];

function Answers({ title, answers }: { readonly title: string; readonly answers: readonly Answer[] }) {
  const words = useWords();
  if (answers.length === 0) return null;
  return (
    <table className={styles.answers}>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">Day</th>
          <th scope="col">Question</th>
          <th scope="col">Answer</th>
          <th scope="col">The child</th>
          <th scope="col">What it moved</th>
        </tr>
      </thead>
      <tbody>
        {answers.map((answer) => (
          <tr key={`${answer.date}/${answer.text}`}>
            <td>{words.shortDate(answer.date)}</td>
            <td>
              <MathText text={answer.text} />
            </td>
            <td>
              <MathText text={answer.answer} />
            </td>
            <td>
              {givenInWords(answer)}
              {answer.findings.map(({ misconception, does }) => (
                <small key={misconception}>It looks as if the child {does}.</small>
              ))}
            </td>
            <td>{movedInWords(answer.moved)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function givenInWords({ state, typed }: Answer): string {
  if (state === 'blank') return 'left it blank';
  if (typed === '') return state === 'right' ? 'right' : 'not right';
  return state === 'right' ? `right: ${typed}` : `wrote ${typed}`;
}
