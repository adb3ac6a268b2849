import { chosenFoes, chosenPlays } from './choose-matchups.ts';
import type { Conditions } from './conditions.ts';
import type { Io } from './io.ts';
import type { OpenPlaybook } from './open-playbook.ts';
import { repeatLines } from './repeat-lines.ts';
import { reportsJson } from './report-json.ts';
import { reportNames } from './report-names.ts';
import { howToRead, reportText } from './report-text.ts';
import { simulatePlays } from './simulate-plays.ts';

export interface TestChoice {
  /** Ids of plays with commas between them; every play when `undefined`. */
  readonly plays: string | undefined;
  /** Scheme ids with commas between them, an opponent's id, or "all". */
  readonly against: string;
  readonly json: boolean;
}

/** Tests plays against schemes and prints what was found, as tables or as JSON. `command` is how to ask for it again. */
export async function testPlays(
  io: Io,
  opened: OpenPlaybook,
  choice: TestChoice,
  conditions: Conditions,
  command: readonly string[],
): Promise<void> {
  const plays = chosenPlays(opened.playbook, choice.plays);
  const foes = chosenFoes(opened.playbook, choice.against);
  const simulated = await simulatePlays(io, opened, plays, foes, conditions, 'looks');
  const reports = simulated.map(({ report }) => report);
  if (choice.json) {
    io.out(reportsJson(simulated));
    return;
  }
  for (const [index, { report, whole }] of simulated.entries()) {
    io.out(`${reportText(report, reportNames(opened.playbook, plays[index] ?? ''), whole)}\n\n\n`);
  }
  io.out(`${howToRead(reports)}\n\n`);
  const words = [...command, ...(choice.plays === undefined ? [] : ['--play', choice.plays])];
  io.out(
    repeatLines(
      io.program,
      choice.against === 'all' ? words : [...words, '--against', choice.against],
      conditions,
      reports,
    ),
  );
}
