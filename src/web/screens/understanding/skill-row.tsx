// One skill of one child, which opens to the answers behind it.
import { Disclosure, DisclosurePanel, Heading, Button as AriaButton } from 'react-aria-components';
import { useEffect, useRef } from 'react';
import type { SkillInfo, SkillStanding } from '#api/understanding.js';
import { useWords } from '../../app/use-words.js';
import { chanceInWords, rangeInWords, surenessInWords } from './chances.js';
import { Evidence } from './evidence.js';
import { RangeBar } from './range-bar.js';
import { StandingGlyph } from './standing-glyph.js';
import styles from './skill-row.module.css';

interface Props {
  readonly childId: string;
  readonly skill: SkillInfo;
  readonly standing: SkillStanding;
  readonly isOpen: boolean;
  readonly onToggle: (isOpen: boolean) => void;
}

export function SkillRow({ childId, skill, standing, isOpen, onToggle }: Props) {
  const words = useWords();
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isOpen) row.current?.scrollIntoView({ block: 'center' });
  }, [isOpen]);
  return (
    <li ref={row} className={styles.skillRow}>
      <Disclosure isExpanded={isOpen} onExpandedChange={onToggle}>
        <Heading level={4} className={styles.skillHead ?? ''}>
          <AriaButton slot="trigger" className={styles.skillButton ?? ''}>
            <StandingGlyph state={standing.state} isSmall={standing.answers === 0} />
            <span className={styles.skillTitle}>
              {skill.title}{' '}
              <small>
                {words.year(skill.year)}
                {standing.answers === 0
                  ? ', not asked yet'
                  : `, ${standing.answers} ${standing.answers === 1 ? 'answer' : 'answers'}`}
              </small>
            </span>
            <span className={styles.skillState}>
              {standing.state}
              <small>{surenessInWords(standing)}</small>
            </span>
            <RangeBar range={standing} />
            <span className={styles.skillChance}>
              {chanceInWords(standing.chance)}
              <small>{rangeInWords(standing)}</small>
            </span>
            <span className={styles.chevron} aria-hidden="true" />
          </AriaButton>
        </Heading>
        <DisclosurePanel>{isOpen && <Evidence childId={childId} skillId={skill.id} />}</DisclosurePanel>
      </Disclosure>
    </li>
  );
}
