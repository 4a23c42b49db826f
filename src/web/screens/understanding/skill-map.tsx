// Children by skills: a table whose cells are small squares, each a link to what it rests on.
import { Link, useNavigate } from '@tanstack/react-router';
import { memo } from 'react';
import type { ChildStanding, ClassStanding, SkillStanding, UnderstandingView } from '#api/understanding.js';
import { useWords } from '../../app/use-words.js';
import { chanceInWords } from './chances.js';
import type { StrandGroup } from './shown-skills.js';
import { StandingGlyph } from './standing-glyph.js';
import styles from './skill-map.module.css';

interface Props {
  readonly view: UnderstandingView;
  readonly strands: readonly StrandGroup[];
  readonly classId: string;
}

export function SkillMap({ view, strands, classId }: Props) {
  const words = useWords();
  const skills = strands.flatMap((strand) => strand.skills);
  const ofClass = new Map(view.class.map((standing) => [standing.skillId, standing]));
  return (
    <div
      className={styles.scroller}
      role="region"
      aria-label="Table of children and skills"
      // What scrolls must be reachable by keyboard.
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
      tabIndex={0}
    >
      <table className={styles.map}>
        <thead>
          <tr>
            <th scope="row">
              <span className="unseen">Strand</span>
            </th>
            {strands.map(({ id, title, skills: own }) => (
              <th key={id} scope="colgroup" colSpan={own.length} className={styles.strand}>
                {title}
              </th>
            ))}
          </tr>
          <tr>
            <th scope="col" className={styles.childHead}>
              Child
            </th>
            {strands.map(({ skills: own }) =>
              own.map(({ id, title, year }, index) => (
                <th key={id} scope="col" className={index === 0 ? styles.strandStart : undefined}>
                  <span className={styles.skillName}>
                    {title} <small>{words.yearShort(year)}</small>
                  </span>
                </th>
              )),
            )}
          </tr>
        </thead>
        <tbody>
          <tr className={styles.classRow}>
            <th scope="row">
              Class <small>secure</small>
            </th>
            {skills.map(({ id }) => (
              <ClassCell key={id} standing={ofClass.get(id)} childCount={view.children.length} />
            ))}
          </tr>
          {view.children.map((child) => (
            <ChildRow key={child.childId} child={child} strands={strands} classId={classId} />
          ))}
        </tbody>
      </table>
    </div>
  );
}

function ClassCell({
  standing,
  childCount,
}: {
  readonly standing: ClassStanding | undefined;
  readonly childCount: number;
}) {
  if (!standing) return <td>–</td>;
  const secure = standing.counts.secure ?? 0;
  return (
    <td title={`${secure} of ${childCount} secure, ${standing.needTeaching.length} need teaching`}>
      <span aria-hidden="true">{secure}</span>
      <span className="unseen">
        {secure} of {childCount} secure, {standing.needTeaching.length} need teaching
      </span>
    </td>
  );
}

interface RowProps {
  readonly child: ChildStanding;
  readonly strands: readonly StrandGroup[];
  readonly classId: string;
}

const ChildRow = memo(function ChildRow({ child, strands, classId }: RowProps) {
  const navigate = useNavigate();
  const standings = new Map(child.skills.map((standing) => [standing.skillId, standing]));
  return (
    <tr>
      <th scope="row">
        <Link
          to="/class/$classId/understanding"
          params={{ classId }}
          search={{ child: child.childId }}
          preload={false}
        >
          {child.shownAs}
        </Link>
        {child.findings.length > 0 && (
          <span className={styles.lookMark} title="A pattern worth a look">
            <span className="unseen">, a pattern worth a look</span>
          </span>
        )}
      </th>
      {strands.map(({ skills }) =>
        skills.map(({ id, title }, index) => {
          const standing = standings.get(id);
          return (
            <td key={id} className={index === 0 ? styles.strandStart : undefined}>
              {standing && (
                <a
                  href={`/class/${classId}/understanding?child=${child.childId}&skill=${id}`}
                  // Hundreds of stops on the way of Tab would help nobody: the child's name leads to the same answers.
                  tabIndex={-1}
                  onClick={(event) => {
                    // A click that asks for a new tab is left to the browser.
                    if (event.ctrlKey || event.metaKey || event.shiftKey) return;
                    event.preventDefault();
                    const search = { child: child.childId, skill: id };
                    // The opened skill scrolls itself into view.
                    void navigate({
                      to: '/class/$classId/understanding',
                      params: { classId },
                      search,
                      resetScroll: false,
                    });
                  }}
                  className={styles.cell}
                  aria-label={cellInWords(child.shownAs, title, standing)}
                  title={`${title}: ${standing.state}, ${chanceInWords(standing.chance)}`}
                >
                  <StandingGlyph state={standing.state} isSmall={standing.answers === 0} />
                </a>
              )}
            </td>
          );
        }),
      )}
    </tr>
  );
});

function cellInWords(name: string, title: string, { state, answers }: SkillStanding): string {
  return `${name}, ${title}: ${state}${answers === 0 ? ', not asked yet' : ''}`;
}
