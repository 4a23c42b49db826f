// Patterns in a child's wrong answers, always as a prompt to look and with the answers that show them.
import type { ChildStanding } from '#api/understanding.js';
import styles from './child.module.css';
import shared from './understanding.module.css';

export function ChildFindings({ child }: { readonly child: ChildStanding }) {
  if (child.findings.length === 0) return null;
  return (
    <section className={styles.findings} aria-labelledby="findings-title">
      <h2 id="findings-title" className={shared.subtitle}>
        Worth a look
      </h2>
      <ul>
        {child.findings.map(({ misconception, does, help, seen, chances, examples }) => (
          <li key={misconception}>
            <p>
              <strong>It looks as if the child {does}.</strong> Seen {seen} of {chances} times that it could
              show. {help}
            </p>
            <ul className={styles.examples} aria-label="Answers that show it">
              {examples.map((example) => (
                <li key={example}>{example}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      <p className={styles.caution}>
        A prompt to look, not a diagnosis: a few written answers cannot tell why. Ask the child to say how
        they worked it out. If you are worried, talk to your school’s learning support or other specialists
        and follow the school’s own steps.
      </p>
    </section>
  );
}
