// afterbell grade
import { z } from 'zod';
import { Question } from '#api/question.js';
import { gradeAnswers } from '#engine/questions/grade.js';
import { readJson } from '../input.js';
import { readLocale } from '../options.js';
import { printJson, printText } from '../output.js';

const Given = z.object({ question: Question, given: z.string().max(200) });
const Answers = z.union([
  z.array(Given),
  z.object({ items: z.array(Given) }).transform(({ items }) => items),
]);

export function grade(options: { answers: string; locale: string; json?: boolean }): void {
  const answers = readJson(options.answers, Answers);
  const grading = gradeAnswers(answers, readLocale(options.locale));
  if (options.json) {
    printJson(grading);
    return;
  }
  for (const { question, given, verdict } of grading.items) {
    printText(
      `${verdict.padEnd(5)}  ${question.text}   ${given === '' ? '(blank)' : given}${verdict === 'right' ? '' : `   right: ${question.answer.text}`}`,
    );
  }
  printText(`\n${grading.right} right, ${grading.wrong} wrong, ${grading.blank} blank`);
  for (const { does, seen, chances } of grading.misconceptions) {
    if (does) printText(`It looks as if the child ${does} (${seen} of ${chances} chances).`);
  }
}
