// One child: what may be behind wrong answers, and every skill with its chance, its range and the answers it rests on.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { ToggleButton } from 'react-aria-components';
import type { ChildStanding, SkillStanding, UnderstandingView } from '#api/understanding.js';
import { useWords } from '../../app/use-words.js';
import { Button } from '../../parts/button.js';
import { STANDINGS } from './chances.js';
import { ChildFindings } from './child-findings.js';
import { groupByStrand } from './shown-skills.js';
import { SkillRow } from './skill-row.js';
import { StandingGlyph } from './standing-glyph.js';
import styles from './child.module.css';
import shared from './understanding.module.css';

interface Props {
  readonly child: ChildStanding;
  readonly view: UnderstandingView;
  readonly classId: string;
  readonly openSkill: string | null;
  readonly onSkill: (skillId: string | null) => void;
  readonly onChild: (childId: string) => void;
}

export function ChildPart({ child, view, classId, openSkill, onSkill, onChild }: Props) {
  const words = useWords();
  const standings = new Map<string, SkillStanding>(child.skills.map((one) => [one.skillId, one]));
  const isAsked = (skillId: string) => (standings.get(skillId)?.answers ?? 0) > 0;
  const [isAll, setIsAll] = useState(openSkill !== null && !isAsked(openSkill));
  const shown = view.skills.filter(({ id }) => isAll || isAsked(id) || id === openSkill);
  return (
    <article className={styles.child} aria-labelledby="child-title">
      <nav className={styles.childBar} aria-label="Children">
        <Link to="/class/$classId/understanding" params={{ classId }}>
          ← The whole class
        </Link>
        <label className={styles.childChoice}>
          <span>Child</span>
          <select value={child.childId} onChange={(event) => onChild(event.target.value)}>
            {view.children.map(({ childId, shownAs }) => (
              <option key={childId} value={childId}>
                {shownAs}
              </option>
            ))}
          </select>
        </label>
        <Button onPress={() => window.print()}>Print this page</Button>
      </nav>
      <header className={styles.childTop}>
        <h1 id="child-title" className={shared.title}>
          {child.shownAs}
        </h1>
        <p className={shared.basis}>
          {words.year(child.year)}.{' '}
          {child.answers === 0
            ? 'No answer is marked yet; everything below is told from the year level.'
            : `This page rests on ${child.answers} ${child.answers === 1 ? 'answer' : 'answers'}.`}
        </p>
        <ul className={styles.counts} aria-label="Skills asked so far">
          {STANDINGS.map((state) => {
            const count = child.skills.filter((one) => one.state === state && one.answers > 0).length;
            return (
              <li key={state}>
                <StandingGlyph state={state} />
                {count} {state === 'needs teaching' && count !== 1 ? 'need teaching' : state}
              </li>
            );
          })}
        </ul>
      </header>
      <ChildFindings child={child} />
      <section aria-labelledby="skills-title" className={styles.skills}>
        <div className={shared.bar}>
          <h2 id="skills-title" className={shared.subtitle}>
            Skills
          </h2>
          <ToggleButton className={shared.toggle ?? ''} isSelected={isAll} onChange={setIsAll}>
            {isAll ? 'All skills shown' : 'Show skills not asked yet'}
          </ToggleButton>
        </div>
        <p className={styles.how}>
          The thick mark is the best guess of how many plain questions in 100 would be right; the thin line
          shows where it most likely lies, four times in five. A long line means that little is known yet:
          more answers make it shorter.
        </p>
        {groupByStrand(shown).map(({ id, title, skills }) => (
          <div key={id} className={styles.strandPart}>
            <h3>{title}</h3>
            <ul>
              {skills.map((skill) => {
                const standing = standings.get(skill.id);
                return (
                  standing && (
                    <SkillRow
                      key={skill.id}
                      childId={child.childId}
                      skill={skill}
                      standing={standing}
                      isOpen={skill.id === openSkill}
                      onToggle={(isOpen) => onSkill(isOpen ? skill.id : null)}
                    />
                  )
                );
              })}
            </ul>
          </div>
        ))}
      </section>
    </article>
  );
}
