// One skill: what it is and asks, what comes before and after, what may go wrong, and where the curriculum has it.
import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { type RefObject, useMemo } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { StandardView } from '#api/standard.js';
import { strandTitle } from '#engine/curriculum/strands.js';
import { SKILLS, skillById } from '#engine/skills/map.js';
import type { Skill } from '#engine/skills/skill.js';
import { mistakeHelpQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { Examples } from './examples.js';
import type { SkillsSearch } from './skills-search.js';
import { typicalSlips } from './typical-slips.js';
import styles from './skills.module.css';

interface Props {
  readonly skill: Skill;
  /** Null until it has come. */
  readonly standard: StandardView | null;
  readonly classId: string;
  readonly search: SkillsSearch;
  readonly headingRef: RefObject<HTMLHeadingElement | null>;
  readonly isOnSheet: boolean;
  readonly onBack: () => void;
  readonly onPrint: () => void;
  readonly onSheet: (isOn: boolean) => void;
}

export function SkillPage({
  skill,
  standard,
  classId,
  search,
  headingRef,
  isOnSheet,
  onBack,
  onPrint,
  onSheet,
}: Props) {
  const words = useWords();
  const before = skill.prerequisites.flatMap((id) => skillById(id) ?? []);
  const after = SKILLS.filter(({ prerequisites }) => prerequisites.includes(skill.id));
  const { data: helpWith } = useQuery(mistakeHelpQuery);
  const slips = useMemo(() => typicalSlips(skill, words.locale), [skill, words.locale]);
  const statements = (standard?.rows ?? []).flatMap(({ statement, skills }) =>
    skills.includes(skill.id) ? [statement] : [],
  );
  const fluent =
    skill.fluentYear > skill.year
      ? `begins in ${words.year(skill.year)}, fluent by the end of ${words.year(skill.fluentYear)}`
      : words.year(skill.year);
  return (
    <article className={styles.skill} aria-labelledby="skill-title">
      <div className={styles.head}>
        <p className={styles.back}>
          <Button weight="quiet" onPress={onBack}>
            All skills
          </Button>
        </p>
        <div>
          <h2 id="skill-title" ref={headingRef} tabIndex={-1} className={styles.subtitle}>
            {skill.title}
          </h2>
          <p className={styles.soft}>
            {strandTitle(skill.strand)}, {fluent}
          </p>
        </div>
        <div className={styles.acts}>
          <ToggleButton className={styles.toggle ?? ''} isSelected={isOnSheet} onChange={onSheet}>
            {isOnSheet ? 'On the sheet' : 'Put on the sheet'}
          </ToggleButton>
          <Button weight="main" onPress={onPrint}>
            Print a practice sheet
          </Button>
          <Link
            to="/class/$classId/make"
            params={{ classId }}
            search={{ source: 'chosen', skills: [skill.id] }}
          >
            Make a set with it
          </Link>
        </div>
      </div>
      <Examples skill={skill} />
      <div className={styles.ways}>
        <Neighbours
          title="Comes after"
          none="Nothing: a child can begin here."
          skills={before}
          classId={classId}
          search={search}
        />
        <Neighbours
          title="Leads to"
          none="Nothing further on the map."
          skills={after}
          classId={classId}
          search={search}
        />
      </div>
      <section aria-labelledby="slips-title" className={styles.part}>
        <h3 id="slips-title">What may go wrong</h3>
        {slips.length === 0 ? (
          <p className={styles.soft}>
            No typical mistake is known here: a wrong answer tells little about how the child thought.
          </p>
        ) : (
          <ul className={styles.slips}>
            {slips.map(({ id, does }) => (
              <li key={id}>
                <p>The child {does}.</p>
                <p className={styles.soft}>{helpWith?.[id]}</p>
              </li>
            ))}
          </ul>
        )}
      </section>
      <section aria-labelledby="codes-title" className={styles.part}>
        <h3 id="codes-title">{standard?.name ?? 'In the curriculum'}</h3>
        {standard === null ? (
          <p className={styles.soft}>Looking it up…</p>
        ) : statements.length === 0 ? (
          <p className={styles.soft}>No statement of this curriculum asks for it.</p>
        ) : (
          <dl className={styles.codes}>
            {statements.map(({ code, year, summary }) => (
              <div key={code}>
                <dt>
                  {code} <small>{words.year(year)}</small>
                </dt>
                <dd>{summary}</dd>
              </div>
            ))}
          </dl>
        )}
        <p className={styles.small}>In our own words; the published text is the one that counts.</p>
      </section>
    </article>
  );
}

interface NeighboursProps {
  readonly title: string;
  readonly none: string;
  readonly skills: readonly Skill[];
  readonly classId: string;
  readonly search: SkillsSearch;
}

function Neighbours({ title, none, skills, classId, search }: NeighboursProps) {
  const words = useWords();
  return (
    <section aria-label={title} className={styles.part}>
      <h3>{title}</h3>
      {skills.length === 0 ? (
        <p className={styles.soft}>{none}</p>
      ) : (
        <ul className={styles.links}>
          {skills.map(({ id, title: name, year }) => (
            <li key={id}>
              <Link
                to="/class/$classId/skills"
                params={{ classId }}
                search={{ ...search, skill: id }}
                resetScroll={false}
              >
                {name}
              </Link>{' '}
              <small>{words.year(year)}</small>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
