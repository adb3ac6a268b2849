import { UserRoundX } from 'lucide-react';
import type { ReactNode } from 'react';
import type { Player } from '../../playbook/index.ts';
import { Button } from '../controls/button.tsx';
import styles from './roster-cards.module.css';
import { absentColumn } from './roster-columns.ts';
import { nameOf } from './roster-problems.ts';
import { useTeam } from './team-state.ts';
import { crosseWords, handWords, levelWords, roleWords, skillNames, skillWords } from './team-words.ts';
import type { RosterEditor } from './use-roster.ts';

/** The roster for a phone: a card a man, which opens all of him. */
export function RosterCards({ editor }: { readonly editor: RosterEditor }): ReactNode {
  const change = useTeam((state) => state.change);
  return (
    <ul className={styles.cards}>
      {editor.roster.map((player, index) => {
        const row = editor.keys[index]!;
        const problems = [...(editor.problems[index]?.values() ?? [])];
        return (
          <li key={row} className={styles.card} data-absent={player.absent === true}>
            <button type="button" className={styles.open} onClick={() => change({ open: row })}>
              <span className={styles.number}>{player.number}</span>
              <span className={styles.who}>
                <span className={styles.name}>{nameOf(player)}</span>
                <span className={styles.about}>{aboutText(player)}</span>
                {problems.map((text) => (
                  <span key={text} className={styles.problem}>
                    {text}
                  </span>
                ))}
              </span>
            </button>
            <Button
              tone="plain"
              pressed={player.absent === true}
              aria-label={`${nameOf(player)} is absent today`}
              icon={<UserRoundX aria-hidden="true" />}
              onClick={() =>
                editor.edit(row, player.absent === true ? 'note the return' : 'note the absence', (man) =>
                  absentColumn.put(man, man.absent !== true),
                )
              }
            />
          </li>
        );
      })}
    </ul>
  );
}

/** Who he is in a line: "Left, attack, pole; shoot 5, feed 4". */
function aboutText(player: Player): string {
  const { hand, role, crosse, level, grades } = player;
  const who = [
    player.absent === true ? 'Absent today' : undefined,
    hand === 'both' ? 'Both hands' : `${handWords[hand]} hand`,
    role && (role === 'lsm' ? roleWords[role] : roleWords[role].toLowerCase()),
    crosse !== undefined && crosse !== 'short' && role !== crosse ? crosseWords[crosse].toLowerCase() : undefined,
    level && levelWords[level],
  ].filter((word) => word !== undefined);
  const best = skillNames
    .filter((skill) => (grades?.[skill] ?? 0) >= 4)
    .sort((one, other) => (grades?.[other] ?? 0) - (grades?.[one] ?? 0))
    .slice(0, 3)
    .map((skill) => `${skillWords[skill].name.toLowerCase()} ${grades?.[skill]}`);
  return [who.join(', '), best.join(', ')].filter((text) => text !== '').join(' · ');
}
