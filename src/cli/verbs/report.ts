// afterbell report
import { strandTitle, type StrandId } from '#engine/curriculum/strands.js';
import { understandingView } from '#server/app/desk/understanding.js';
import type { SkillStanding } from '#api/understanding.js';
import { chooseClass } from '../class-choice.js';
import { withServices } from '../data-folder.js';
import { UsageFailure, valueOf } from '../failure.js';
import { printJson, printText } from '../output.js';

export async function report(options: { class?: string; child?: string; json?: boolean }): Promise<void> {
  const view = await withServices(async (services) =>
    valueOf(await understandingView(services, (await chooseClass(services, options.class)).id)),
  );
  const child =
    options.child === undefined
      ? null
      : view.children.find(
          ({ childId, shownAs }) =>
            childId === options.child || shownAs.toLowerCase() === options.child?.toLowerCase(),
        );
  if (child === undefined)
    throw new UsageFailure(
      `There is no child “${options.child}” in this class. "afterbell class export" lists the names.`,
    );
  if (options.json) {
    printJson(child ? { skills: view.skills, child } : view);
    return;
  }
  const lines = (standings: readonly SkillStanding[]) => {
    for (const { skillId, state, chance, low, high, answers } of standings) {
      const skill = view.skills.find(({ id }) => id === skillId);
      if (!skill || answers === 0) continue;
      printText(
        `${state.padEnd(9)} ${percent(chance)} (${percent(low)} to ${percent(high)}, ${answers} answers)  ${strandTitle(skill.strand as StrandId)}: ${skill.title}`,
      );
    }
  };
  if (child) {
    printText(`${child.shownAs}, ${child.answers} answers`);
    lines(child.skills);
    for (const { does, seen, chances } of child.findings)
      printText(
        `It looks as if the child ${does} (${seen} of ${chances} chances). A prompt to look, not a diagnosis.`,
      );
    return;
  }
  for (const { text } of view.sentences) printText(text);
  for (const { skillId, chance, counts, answers } of view.class) {
    const skill = view.skills.find(({ id }) => id === skillId);
    if (!skill || answers === 0) continue;
    printText(
      `${percent(chance)}  ${counts.secure} secure, ${counts.growing} growing, ${counts['needs teaching']} need teaching, ${counts['not yet sure']} not yet sure  ${strandTitle(skill.strand as StrandId)}: ${skill.title}`,
    );
  }
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
