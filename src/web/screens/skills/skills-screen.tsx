// Skills: everything that Afterbell can ask, to look through, to understand, and to print a page of.
import { useQuery } from '@tanstack/react-query';
import { useNavigate, useParams, useSearch } from '@tanstack/react-router';
import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { STRANDS } from '#engine/curriculum/strands.js';
import { findSkills } from '#engine/skills/find-skills.js';
import { skillById } from '#engine/skills/map.js';
import type { StandardView } from '#api/standard.js';
import { standardQuery } from '../../app/queries.js';
import { useWords } from '../../app/use-words.js';
import { MyQuestions } from './my-questions.js';
import { PracticeDesk } from './practice-desk.js';
import { SkillFinder } from './skill-finder.js';
import { SkillOverview } from './skill-overview.js';
import { SkillPage } from './skill-page.js';
import type { SkillsSearch } from './skills-search.js';
import styles from './skills.module.css';

/** Until the standard has come, skills are found by their titles. */
const NO_STATEMENTS: StandardView['rows'] = [];

export function SkillsScreen() {
  const { classId } = useParams({ from: '/class/$classId/skills' });
  const search = useSearch({ from: '/class/$classId/skills' });
  const navigate = useNavigate();
  const { locale } = useWords();
  const standard = useQuery(standardQuery(locale)).data;
  const statements = standard?.rows ?? NO_STATEMENTS;
  // The address is told with the next choice, not with every letter.
  const [typed, setTyped] = useState(search.find ?? '');
  const wanted = {
    words: typed,
    year: search.year ?? null,
    strand: STRANDS.find(({ id }) => id === search.strand)?.id ?? null,
  };
  // The list follows the typing when there is time for it; the letters never wait.
  const words = useDeferredValue(wanted.words);
  const { year, strand } = wanted;
  const found = useMemo(
    () => findSkills({ words, years: year === null ? null : [year], strand }, statements),
    [words, year, strand, statements],
  );
  const skill = search.skill === undefined ? null : skillById(search.skill);
  const sheet = (search.sheet ?? []).flatMap((id) => skillById(id) ?? []);
  const place = useRef<HTMLHeadingElement>(null);
  const shown = search.own ? 'own' : search.desk ? 'desk' : (skill?.id ?? null);
  const before = useRef(shown);
  useEffect(() => {
    if (shown === before.current) return;
    before.current = shown;
    // What was chosen in the list appears beside it: the reader is taken there.
    place.current?.focus();
  }, [shown, before]);

  const go = (
    change: { readonly [K in keyof SkillsSearch]?: SkillsSearch[K] | undefined },
    replace = true,
  ) => {
    const next = Object.fromEntries(
      Object.entries({ ...search, find: typed, ...change }).filter(
        ([, value]) => value !== undefined && value !== '' && !(Array.isArray(value) && value.length === 0),
      ),
    ) as SkillsSearch;
    void navigate({
      to: '/class/$classId/skills',
      params: { classId },
      search: next,
      replace,
      resetScroll: false,
    });
  };
  const ids = sheet.map(({ id }) => id);
  const putOn = (id: string) => (ids.includes(id) ? ids : [...ids, id]);
  return (
    <div className={`${styles.screen} ${shown === null ? '' : styles.hasPage}`}>
      <SkillFinder
        wanted={wanted}
        found={found}
        chosen={search.desk || search.own ? null : (skill?.id ?? null)}
        sheet={ids}
        onWords={setTyped}
        onYear={(next) => go({ year: next ?? undefined })}
        onStrand={(next) => go({ strand: next ?? undefined })}
        onChoose={(id) => go({ skill: id, desk: undefined, own: undefined }, false)}
        onSheet={() => go({ desk: true, own: undefined }, false)}
        onOwn={() => go({ own: true, desk: undefined }, false)}
      />
      <div className={styles.page}>
        {search.own ? (
          <MyQuestions classId={classId} headingRef={place} onBack={() => go({ own: undefined }, false)} />
        ) : search.desk && sheet.length > 0 ? (
          <PracticeDesk
            classId={classId}
            skills={sheet}
            headingRef={place}
            onBack={() => go({ desk: undefined, skill: skill ? skill.id : undefined })}
            onRemove={(id) => {
              const left = ids.filter((one) => one !== id);
              go(left.length > 0 ? { sheet: left } : { sheet: undefined, desk: undefined });
            }}
          />
        ) : skill ? (
          <SkillPage
            key={skill.id}
            skill={skill}
            standard={standard ?? null}
            classId={classId}
            headingRef={place}
            search={search}
            isOnSheet={ids.includes(skill.id)}
            onBack={() => go({ skill: undefined }, false)}
            onPrint={() => go({ sheet: putOn(skill.id), desk: true }, false)}
            onSheet={(isOn) => go({ sheet: isOn ? putOn(skill.id) : ids.filter((one) => one !== skill.id) })}
          />
        ) : (
          <SkillOverview classId={classId} sheet={search.sheet} onTake={() => setTyped('')} />
        )}
      </div>
    </div>
  );
}
