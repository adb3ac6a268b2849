import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoPlaybook } from './demo.ts';
import { applyAll, changes } from './edited-playbook.fixture.ts';
import { conflictId, type MergeChoice, mergePlaybooks } from './merge-playbooks.ts';

const playbook = changes.map((list) => applyAll(demoPlaybook, list));
const three = fc.tuple(changes, changes, changes).map(([shared, left, right]) => {
  const base = applyAll(demoPlaybook, shared);
  return { base, mine: applyAll(base, left), theirs: applyAll(base, right) };
});

describe('mergePlaybooks', () => {
  test('of three equal ones is the same', () => {
    fc.assert(
      fc.property(playbook, (x) => {
        expect(mergePlaybooks(x, x, structuredClone(x))).toEqual({ merged: x, conflicts: [] });
        expect(mergePlaybooks(undefined, x, structuredClone(x))).toEqual({ merged: x, conflicts: [] });
      }),
    );
  });

  test('takes all that one side did when the other did nothing, its order too', () => {
    fc.assert(
      fc.property(three, ({ base, mine }) => {
        expect(mergePlaybooks(base, mine, base)).toEqual({ merged: mine, conflicts: [] });
        expect(mergePlaybooks(base, base, mine)).toEqual({ merged: mine, conflicts: [] });
        expect(mergePlaybooks(base, mine, structuredClone(mine))).toEqual({ merged: mine, conflicts: [] });
      }),
    );
  });

  test('finds the same conflicts from the other side', () => {
    fc.assert(
      fc.property(three, fc.boolean(), ({ base, mine, theirs }, withBase) => {
        const from = withBase ? base : undefined;
        const seen = (one: typeof mine, other: typeof mine, turned: boolean) =>
          mergePlaybooks(from, one, other)
            .conflicts.map((conflict) => ({
              id: conflictId(conflict),
              left: turned ? conflict.theirs : conflict.mine,
              right: turned ? conflict.mine : conflict.theirs,
              choices: conflict.choices,
            }))
            .sort((a, b) => (a.id < b.id ? -1 : 1));
        expect(seen(theirs, mine, true)).toEqual(seen(mine, theirs, false));
      }),
    );
  });

  test('holds every part of a conflict as it was chosen, and the conflicts stay the same', () => {
    fc.assert(
      fc.property(
        three,
        fc.array(fc.constantFrom<MergeChoice>('mine', 'theirs', 'both'), { minLength: 40, maxLength: 40 }),
        ({ base, mine, theirs }, wishes) => {
          const { conflicts } = mergePlaybooks(base, mine, theirs);
          const choices = new Map(conflicts.map((conflict, i) => [conflictId(conflict), wishes[i % wishes.length]!]));
          const result = mergePlaybooks(base, mine, theirs, choices);
          expect(result.conflicts).toEqual(conflicts);
          const parts: readonly unknown[] = [
            ...result.merged.plays,
            ...result.merged.team.roster,
            ...(result.merged.opponents ?? []),
          ];
          for (const conflict of conflicts) {
            if (conflict.kind !== 'play' && conflict.kind !== 'player' && conflict.kind !== 'opponent') continue;
            const wish = choices.get(conflictId(conflict))!;
            const choice = conflict.choices.includes(wish) ? wish : 'mine';
            if (choice !== 'theirs' && conflict.mine !== undefined) expect(parts).toContain(conflict.mine);
            if (choice === 'theirs' && conflict.theirs !== undefined) expect(parts).toContain(conflict.theirs);
            if (choice === 'both') {
              const copies = parts.filter((part) => {
                const { id: _i, name: _n, ...rest } = part as { id?: string; name: string };
                const { id: _j, name: _m, ...want } = conflict.theirs as { id?: string; name: string };
                return JSON.stringify(rest) === JSON.stringify(want);
              });
              expect(copies.length).toBeGreaterThan(0);
            }
          }
        },
      ),
    );
  });

  test('loses nothing that only one side has, and takes no part from nowhere', () => {
    fc.assert(
      fc.property(three, ({ mine, theirs }) => {
        const { merged } = mergePlaybooks(undefined, mine, theirs);
        const ids = (list: readonly { id: string }[]) => new Set(list.map(({ id }) => id));
        expect(ids(merged.plays)).toEqual(new Set([...ids(mine.plays), ...ids(theirs.plays)]));
        const known: readonly unknown[] = [...mine.plays, ...theirs.plays];
        for (const play of merged.plays) expect(known).toContain(play);
      }),
    );
  });
});
