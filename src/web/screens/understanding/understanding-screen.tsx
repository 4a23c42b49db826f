// Understanding: what the marks say of the class and of each child, with how sure it is and what it rests on.
import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { ToggleButton } from 'react-aria-components';
import { sentencesOf } from '../../app/client.js';
import { understandingQuery } from '../../app/queries.js';
import { ChoiceRow } from '../../parts/choice-row.js';
import { Notice } from '../../parts/notice.js';
import { ChildPart } from './child-part.js';
import { SkillList } from './skill-list.js';
import { SkillMap } from './skill-map.js';
import { StandingLegend } from './standing-legend.js';
import { shownSkills } from './shown-skills.js';
import styles from './understanding.module.css';

export function UnderstandingScreen() {
  const { classId } = useParams({ from: '/class/$classId/understanding' });
  const search = useSearch({ from: '/class/$classId/understanding' });
  const navigate = useNavigate();
  const understanding = useQuery(understandingQuery(classId));
  const [form, setForm] = useState('map');
  const [isAll, setIsAll] = useState(false);

  if (understanding.error) {
    const { message, hint } = sentencesOf(understanding.error);
    return (
      <div className={styles.screen}>
        <h1 className={styles.title}>Understanding</h1>
        <Notice tone="look" title={message}>
          {hint}
        </Notice>
      </div>
    );
  }
  if (!understanding.data)
    return (
      <div className={styles.screen}>
        <h1 className={styles.title}>Understanding</h1>
        <p className={styles.waiting}>Reading the marks…</p>
      </div>
    );
  const view = understanding.data;
  if (view.markedBoards === 0)
    return (
      <div className={styles.screen}>
        <h1 className={styles.title}>Understanding</h1>
        <p className={styles.empty}>
          Nothing is marked yet. Mark one board, and this page says which skills the class has and who needs
          what.{' '}
          <Link to="/class/$classId/marking" params={{ classId }}>
            Mark a board
          </Link>
        </p>
      </div>
    );

  const child = view.children.find(({ childId }) => childId === search.child);
  if (child)
    return (
      <ChildPart
        key={child.childId}
        child={child}
        view={view}
        classId={classId}
        openSkill={search.skill ?? null}
        onSkill={(skill) =>
          void navigate({
            to: '/class/$classId/understanding',
            params: { classId },
            search: skill === null ? { child: child.childId } : { child: child.childId, skill },
            replace: true,
            resetScroll: false,
          })
        }
        onChild={(childId) =>
          void navigate({
            to: '/class/$classId/understanding',
            params: { classId },
            search: { child: childId },
            replace: true,
          })
        }
      />
    );

  const strands = shownSkills(view, isAll);
  return (
    <div className={styles.screen}>
      <section className={styles.summary} aria-labelledby="understanding-title">
        <h1 id="understanding-title" className={styles.title}>
          Understanding
        </h1>
        <p className={styles.basis}>
          From the marks of {view.markedBoards === 1 ? 'one day' : `${view.markedBoards} days`}. Prompts to
          look, not verdicts: you know the children.
        </p>
        {view.sentences.length > 0 ? (
          <ol className={styles.sentences}>
            {view.sentences.map(({ text, childId, skillId }) => (
              <li key={text}>
                {text}{' '}
                <Link
                  to="/class/$classId/understanding"
                  params={{ classId }}
                  search={{
                    ...(childId === null ? {} : { child: childId }),
                    ...(skillId === null ? {} : { skill: skillId }),
                  }}
                >
                  See why
                </Link>
              </li>
            ))}
          </ol>
        ) : (
          <p>Nothing stands out so far. The table below shows what the marks say.</p>
        )}
      </section>
      <section aria-labelledby="map-title" className={styles.mapPart}>
        <div className={styles.bar}>
          <h2 id="map-title" className={styles.subtitle}>
            {form === 'map' ? 'Children and skills' : 'Skills of the class'}
          </h2>
          <div className={styles.choices}>
            <ChoiceRow
              label="Shown as"
              choices={[
                { id: 'map', label: 'Every child' },
                { id: 'list', label: 'The class, skill by skill' },
              ]}
              chosen={form}
              onChoose={setForm}
            />
            <ToggleButton className={styles.toggle ?? ''} isSelected={isAll} onChange={setIsAll}>
              {isAll ? 'All skills shown' : 'Show skills not asked yet'}
            </ToggleButton>
          </div>
        </div>
        <StandingLegend hasSmall={form === 'map'} />
        {form === 'map' ? (
          <SkillMap view={view} strands={strands} classId={classId} />
        ) : (
          <SkillList view={view} strands={strands} classId={classId} />
        )}
      </section>
    </div>
  );
}
