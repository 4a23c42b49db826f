// afterbell plan
import { dayView } from '#server/app/desk/day.js';
import { chooseClass } from '../class-choice.js';
import { withServices } from '../data-folder.js';
import { valueOf } from '../failure.js';
import { readDate } from '../options.js';
import { printJson, printText } from '../output.js';

export async function plan(options: { class?: string; date?: string; json?: boolean }): Promise<void> {
  if (options.date !== undefined) readDate('--date', options.date);
  const view = await withServices(async (services) => {
    const { id } = await chooseClass(services, options.class);
    return valueOf(await dayView(services, id, options.date ?? services.clock().today));
  });
  if (options.json) {
    printJson(view);
    return;
  }
  printText(`${view.date}  ${view.dayLabel}\n${view.sentence}`);
  for (const { id, group, board } of view.sheets) {
    printText(
      `\n${group === 'class' ? 'Whole class' : `Year ${group}`}, ${board.side}, number ${board.number}   (sheet ${id})`,
    );
    for (const { rung, question } of board.rungs)
      printText(`${String(rung).padStart(3)}  ${question.text}   ${question.answer.text}`);
  }
}
