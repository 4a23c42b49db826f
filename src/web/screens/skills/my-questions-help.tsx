// How a question is written, on demand.
import { STRANDS } from '#engine/curriculum/strands.js';
import styles from './my-questions.module.css';

const PARTS: readonly (readonly [name: string, about: string, example: string])[] = [
  ['Question', 'Sums in braces are worked out; {n} is the number.', 'How far is {n} from the next ten?'],
  ['Answer', 'A sum, or words in quotes.', '10 - n mod 10'],
  ['Typical slips', 'Wrong answers you expect, with ; between them.', 'n mod 10; n'],
  ['The way there', 'Steps with ; between them.', '{n} + {10 - n mod 10} is the next ten'],
  ['Only when', 'Numbers it suits.', 'n mod 10 > 0'],
  ['Year', 'F or 1 to 6; 3 if left out.', '2'],
  ['Strand', 'A strand of the skill map; Patterns and algebra if left out.', STRANDS[0].title],
];

export function MyQuestionsHelp() {
  return (
    <details className={styles.help}>
      <summary>How to write a question</summary>
      <p>
        A line has up to seven parts with an upright bar | between them. Only the question and its answer must
        be there.
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">What it says</th>
            <th scope="col">For example</th>
          </tr>
        </thead>
        <tbody>
          {PARTS.map(([name, about, example]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{about}</td>
              <td>
                <code>{example}</code>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        Sums: <code>+ - * /</code>, <code>^</code> for powers, <code>mod</code> for what is left over,
        brackets, <code>round(n, 10)</code>, <code>floor</code>, <code>ceil</code>, <code>min</code>,{' '}
        <code>max</code>, <code>abs</code>, <code>gcd</code>, <code>lcm</code>, and{' '}
        <code>if(n mod 2 = 0, 'even', 'odd')</code>. Write <code>2 * n</code>, not 2n. A CSV file needs a
        heading row with the columns question and answer; slips, way, when, year and strand may follow.
      </p>
    </details>
  );
}
