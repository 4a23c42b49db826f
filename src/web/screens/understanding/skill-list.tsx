// The class skill by skill: one table a strand, with who needs teaching by name.
import { Link } from '@tanstack/react-router';
import type { UnderstandingView } from '#api/understanding.js';
import { useWords } from '../../app/use-words.js';
import { shareInTenths } from './chances.js';
import type { StrandGroup } from './shown-skills.js';
import styles from './skill-list.module.css';

interface Props {
  readonly view: UnderstandingView;
  readonly strands: readonly StrandGroup[];
  readonly classId: string;
}

export function SkillList({ view, strands, classId }: Props) {
  const words = useWords();
  const ofClass = new Map(view.class.map((standing) => [standing.skillId, standing]));
  return (
    <div className={styles.lists}>
      {strands.map(({ id, title, skills }) => (
        <table key={id} className={styles.list}>
          <caption>{title}</caption>
          <thead>
            <tr>
              <th scope="col">Skill</th>
              <th scope="col">Right in the class</th>
              <th scope="col">Secure</th>
              <th scope="col">Growing</th>
              <th scope="col">Not sure</th>
              <th scope="col">Need teaching</th>
            </tr>
          </thead>
          <tbody>
            {skills.map((skill) => {
              const standing = ofClass.get(skill.id);
              if (!standing) return null;
              return (
                <tr key={skill.id}>
                  <th scope="row">
                    {skill.title} <small>{words.year(skill.year)}</small>
                  </th>
                  <td>{shareInTenths(standing.chance)}</td>
                  <td>{standing.counts.secure}</td>
                  <td>{standing.counts.growing}</td>
                  <td>{standing.counts['not yet sure']}</td>
                  <td>
                    <Names view={view} ids={standing.needTeaching} skillId={skill.id} classId={classId} />
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      ))}
    </div>
  );
}

interface NamesProps {
  readonly view: UnderstandingView;
  readonly ids: readonly string[];
  readonly skillId: string;
  readonly classId: string;
}

function Names({ view, ids, skillId, classId }: NamesProps) {
  const children = ids.flatMap((id) => view.children.filter(({ childId }) => childId === id));
  if (children.length === 0) return <>nobody</>;
  return (
    <ul className={styles.names}>
      {children.map(({ childId, shownAs }) => (
        <li key={childId}>
          <Link
            to="/class/$classId/understanding"
            params={{ classId }}
            search={{ child: childId, skill: skillId }}
            preload={false}
          >
            {shownAs}
          </Link>
        </li>
      ))}
    </ul>
  );
}
