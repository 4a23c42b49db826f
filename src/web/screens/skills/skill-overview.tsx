// What there is, before a skill is chosen: how many skills by strand and year, each number a way in.
import { Link } from '@tanstack/react-router';
import { STRANDS } from '#engine/curriculum/strands.js';
import { SCHOOL_YEARS } from '#engine/curriculum/years.js';
import { SKILLS } from '#engine/skills/map.js';
import { useWords } from '../../app/use-words.js';
import styles from './skills.module.css';

interface Props {
  readonly classId: string;
  readonly sheet: string[] | undefined;
  /** A number was taken: what was typed no longer counts. */
  readonly onTake: () => void;
}

export function SkillOverview({ classId, sheet, onTake }: Props) {
  const words = useWords();
  const kept = sheet ? { sheet } : {};
  return (
    <section className={styles.overview} aria-labelledby="overview-title">
      <h2 id="overview-title" className={styles.subtitle}>
        Everything Afterbell can ask
      </h2>
      <p className={styles.soft}>
        Choose a skill in the list to see what it asks, what comes before it and what may go wrong, and to
        print a page of it. A number below takes you to those skills.
      </p>
      <table className={styles.counts}>
        <caption className="unseen">
          Skills by strand and the {words.yearWord.toLowerCase()} they begin in
        </caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">Strand</span>
            </th>
            {SCHOOL_YEARS.map((year) => (
              <th key={year} scope="col">
                <span className="unseen">{words.year(year)}</span>
                <span aria-hidden="true">{words.yearShort(year)}</span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {STRANDS.map(({ id, title }) => (
            <tr key={id}>
              <th scope="row">
                <Link
                  to="/class/$classId/skills"
                  params={{ classId }}
                  search={{ ...kept, strand: id }}
                  onClick={onTake}
                  aria-label={`${title}, all ${words.yearWord.toLowerCase()}s`}
                >
                  {title}
                </Link>
              </th>
              {SCHOOL_YEARS.map((year) => {
                const count = SKILLS.filter((skill) => skill.strand === id && skill.year === year).length;
                return (
                  <td key={year}>
                    {count > 0 && (
                      <Link
                        to="/class/$classId/skills"
                        params={{ classId }}
                        search={{ ...kept, strand: id, year }}
                        onClick={onTake}
                        aria-label={`${title}, ${words.year(year)}: ${count} ${count === 1 ? 'skill' : 'skills'}`}
                      >
                        {count}
                      </Link>
                    )}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
