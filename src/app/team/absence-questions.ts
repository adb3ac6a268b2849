import type { Playbook, PlayEntry, Side, SideLineUp } from '../../playbook/index.ts';
import { type Ask, usualSeed } from '../answers/ask.ts';
import type { SideQuestion } from '../answers/side-answers.ts';
import { withStandIns } from '../play/stand-ins.ts';
import { schemeChoices, usualSchemes } from '../schemes/scheme-choices.ts';

/** The name of the question what a man's absence costs on one side of a play. */
export function absenceId(side: Side, number: number): string {
  return `${side} without ${number}`;
}

/** What each of the best six costs when he is missing: a question for each man who can be replaced, on each side. */
export function absenceQuestions(
  playbook: Playbook,
  play: PlayEntry,
  lineUps: readonly SideLineUp[],
): readonly SideQuestion[] {
  return lineUps.flatMap((lineUp): readonly SideQuestion[] => {
    if (lineUp.kind !== 'lineUp') return [];
    const { side } = lineUp;
    const against = askOf(playbook, play, side);
    return lineUp.absences.flatMap(({ number, loss }) =>
      loss === undefined
        ? []
        : [{ id: absenceId(side, number), ask: askOf(withAbsent(playbook, [number], true), play, side), against }],
    );
  });
}

/** What those who are away today cost the play, all together: as they are against as if they were back. */
export function awayQuestion(playbook: Playbook, play: PlayEntry, side: Side, away: readonly number[]): SideQuestion {
  return {
    id: `${side} away ${away.join(' ')}`,
    ask: askOf(playbook, play, side),
    against: askOf(withAbsent(playbook, away, false), play, side),
  };
}

/** The playbook as if these men were away, or here. */
export function withAbsent(playbook: Playbook, numbers: readonly number[], absent: boolean): Playbook {
  const roster = playbook.team.roster.map((player) => {
    if (!numbers.includes(player.number)) return player;
    const { absent: _, ...present } = player;
    return absent ? { ...present, absent } : present;
  });
  return { ...playbook, team: { ...playbook.team, roster } };
}

// Against the usual schemes, by anybody of the level: what own schemes and opponents say is no part of it. Where six are not here, usual men
// play with the rest, as on the Play screen.
function askOf({ format, version, team, sets, settings }: Playbook, play: PlayEntry, side: Side): Ask {
  const { team: unit } = withStandIns(team);
  const playbook: Playbook = {
    format,
    version,
    team: unit,
    ...(sets && { sets }),
    plays: [play],
    ...(settings && { settings }),
  };
  const schemes = usualSchemes(schemeChoices(playbook));
  return { playbook, play: play.id, schemes, side, penalty: null, level: null, seed: usualSeed };
}
