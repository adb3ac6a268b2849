import { useCallback } from 'react';
import { type Chance, changeChance, type Opponent, type Playbook } from '../../playbook/index.ts';
import { useApply } from '../opponents/use-apply.ts';
import { usePlaybook } from '../shell/desk.tsx';
import { timeNow, useFilm } from './film-state.ts';
import type { Marked, MarkOrder } from './film-tool.ts';
import { type MarkedBy, type MomentEdit, markMan } from './moment-edits.ts';

export interface Marking {
  /** The man-up that is marked; undefined before one is chosen. */
  readonly chance: Chance | undefined;
  /** Seconds since it began. */
  readonly time: number;
  readonly edit: (label: string, edit: (chance: Chance) => MomentEdit) => void;
  readonly order: (order: MarkOrder, by: MarkedBy) => void;
}

/** Man-ups against an opponent: those of his own man-up unit are another matter. */
export function scoutedChances({ chances = [] }: Playbook, opponent: Opponent): readonly Chance[] {
  return chances.filter((chance) => chance.opponent === opponent.id && chance.side !== 'theirs');
}

/** The man-up that is being marked, and its edits: each one step of undo. */
export function useMarking(opponent: Opponent): Marking {
  const playbook = usePlaybook();
  const apply = useApply();
  const id = useFilm((state) => state.chance);
  const time = useFilm(timeNow);
  const chance = scoutedChances(playbook, opponent).find((one) => one.id === id);
  const edit = useCallback(
    (label: string, change: (chance: Chance) => MomentEdit) => {
      apply(label, (book) => {
        const now = book.chances?.find((one) => one.id === id);
        if (id === undefined || now === undefined)
          return { kind: 'refused', reason: 'Choose a man-up first, or begin one.' };
        const changed = change(now);
        return changed.kind === 'refused' ? changed : changeChance(book, id, () => changed.chance);
      });
    },
    [apply, id],
  );
  const order = useCallback(
    (what: MarkOrder, by: MarkedBy) => edit(orderWords(what), (now) => markMan(now, time, what, by)),
    [edit, time],
  );
  return { chance, time, edit, order };
}

/** What somebody is called who is marked: "Defender 2". */
export function markedName(who: Marked): string {
  switch (who.kind) {
    case 'ball':
      return 'Ball';
    case 'defender':
      return `Defender ${who.at + 1}`;
    case 'attacker':
      return `Attacker ${who.at + 1}`;
    default:
      return exhaustive(who);
  }
}

/** The same the other way; undefined for what is no such name. */
export function markedOfName(name: string): Marked | undefined {
  if (name === 'Ball') return { kind: 'ball' };
  const [, kind, number] = /^(Defender|Attacker) (\d+)$/.exec(name) ?? [];
  if (number === undefined) return undefined;
  return { kind: kind === 'Defender' ? 'defender' : 'attacker', at: Number(number) - 1 };
}

function orderWords(order: MarkOrder): string {
  if (order.kind === 'move') return `move ${markedName(order.who).toLowerCase()}`;
  return order.what === 'ball' ? 'mark the ball' : `mark ${order.what === 'attacker' ? 'an attacker' : 'a defender'}`;
}

function exhaustive(who: never): never {
  throw new TypeError(`unknown mark: ${JSON.stringify(who)}`);
}
