import { chosenPlays, chosenSchemes } from './choose-matchups.ts';
import type { Conditions } from './conditions.ts';
import type { Io } from './io.ts';
import type { OpenPlaybook } from './open-playbook.ts';
import { repeatLines } from './repeat-lines.ts';
import { reportsJson } from './report-json.ts';
import { reportNames } from './report-names.ts';
import { howToRead, reportText } from './report-text.ts';
import { simulatePlays } from './simulate-plays.ts';

export interface TestChoice {
  /** One play's id; every play when `undefined`. */
  readonly plays: string | undefined;
  /** Scheme ids with commas between them, or "all". */
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
  const schemes = chosenSchemes(opened.playbook, choice.against);
  const simulated = await simulatePlays(io, opened, plays, schemes, conditions, 'looks');
  const reports = simulated.map(({ report }) => report);
  if (choice.json) {
    io.out(reportsJson(reports));
    return;
  }
  for (const [index, report] of reports.entries()) {
    io.out(`${reportText(report, reportNames(opened.playbook, plays[index] ?? ''))}\n\n\n`);
  }
  io.out(`${howToRead()}\n\n`);
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
