import { type ReactNode, useMemo } from 'react';
import {
  addPractice,
  changePractice,
  type Playbook,
  type PlaybookEdit,
  type Practice,
  removePractice,
} from '../../playbook/index.ts';
import { type PracticeQuestion, plannedFrom, withSkill } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import { PickList } from '../controls/pick-list.tsx';
import panel from '../opponents/panel.module.css';
import { useScreen } from '../play/screen-state.ts';
import { SearchLine } from '../reads/search-line.tsx';
import { type SearchKind, useSearch } from '../reads/use-search.ts';
import { useDesk } from '../shell/desk.tsx';
import { type DraftPlan, draftId, withDraft } from './practice/draft-plan.ts';
import { type AskedPlan, findPlan, type PlanNews } from './practice/find-plan.ts';
import { PlanChoices } from './practice/plan-choices.tsx';
import { type ChangePlan, PlanEditor } from './practice/plan-editor.tsx';
import { planQuestion, questionText } from './practice/plan-question.ts';
import { type PlanSearch, usePlans } from './practice/plan-state.ts';
import { progressWords } from './progress-words.ts';
import type { TeachPanelProps } from './teach-panel.ts';
import shared from './tools.module.css';

const kind: SearchKind<AskedPlan, PlanNews> = { run: findPlan, change: usePlans.getState().change };

/** What to do with the minutes of a practice, by what is worth most; made, changed, kept and printed. */
export default function PracticePanel({ playbook, play }: TeachPanelProps): ReactNode {
  const plans = usePlans();
  const side = useScreen((state) => state.side);
  const { also, opponent } = plans;
  const question = useMemo(
    () => planQuestion(playbook, { play: play.id, also, opponent, side }),
    [playbook, play.id, also, opponent, side],
  );
  const text = useMemo(() => questionText(playbook, question), [playbook, question]);
  const { find, stop } = useSearch(kind, text);
  const players = plans.players ?? turnoutOf(playbook);
  const isFound = plans.found?.question === text;
  const kept = playbook.practices ?? [];
  const shown = kept.find(({ id }) => id === plans.shown);
  const begin = (): void => {
    plans.change({ drafts: [], shown: undefined, said: '' });
    find({ playbook, question, text, withSkill: plans.withSkill });
  };
  return (
    <section className={panel.panel} aria-label="A practice plan">
      <PlanChoices playbook={playbook} play={play} players={players} />
      <div className={shared.choices}>
        {plans.search.kind === 'finding' ? (
          <Button onClick={stop}>Stop</Button>
        ) : (
          <Button tone="main" onClick={begin}>
            {isFound ? 'Make it anew' : 'Make a plan'}
          </Button>
        )}
        {kept.length > 0 && (
          <PickList
            label="Kept plans"
            value={shown?.id ?? ''}
            options={[
              { value: '', text: isFound ? 'the new one' : 'none' },
              ...kept.map(({ id, name, date }) => ({
                value: id,
                text: date === undefined ? name : `${name}, ${date}`,
              })),
            ]}
            onChange={(id) => plans.change({ shown: id === '' ? undefined : id, said: '' })}
          />
        )}
      </div>
      <SearchLine
        label="How far the plan is"
        words={progressWords(plans.search)}
        progress={plans.search.kind === 'finding' ? plans.search : undefined}
        said={saidOf(plans.search, isFound || shown !== undefined, play.name)}
      />
      {shown !== undefined ? (
        <KeptPlan key={shown.id} playbook={playbook} practice={shown} />
      ) : (
        isFound && <Draft playbook={playbook} question={question} players={players} />
      )}
    </section>
  );
}

/** A plan that was made and is not kept: it follows minutes and turnout until the coach changes it by hand. */
function Draft({
  playbook,
  question,
  players,
}: {
  readonly playbook: Playbook;
  readonly question: PracticeQuestion;
  readonly players: number;
}): ReactNode {
  const { store } = useDesk();
  const { found, drafts, minutes, keeper, session, change } = usePlans();
  const name = useMemo(() => planName(playbook, question, minutes, session), [playbook, question, minutes, session]);
  const planned = useMemo((): DraftPlan => {
    const wishes = { name, minutes, players, keeper, session };
    return withSkill(plannedFrom(playbook, question, wishes, found?.findings ?? []), found?.skill);
  }, [playbook, question, name, minutes, players, keeper, session, found]);
  const last = drafts.at(-1);
  // What was set by hand stays; what there is of time and men follows what was chosen.
  const draft: DraftPlan = last === undefined ? planned : { ...last, minutes, players };
  const onChange: ChangePlan = (_, edit) => {
    const { id: _id, ...edited } = edit({ ...draft, id: draftId });
    change({ drafts: withDraft(drafts, edited), said: '' });
  };
  const keep = (): void => {
    const edit = addPractice(store.playbook, draft);
    if (edit.kind === 'refused') {
      change({ said: edit.reason });
      return;
    }
    store.edit('keeping a practice plan', () => edit.playbook);
    change({ shown: edit.id, drafts: [], said: 'Kept in the playbook.' });
  };
  return (
    <PlanEditor
      playbook={playbook}
      practice={{ ...draft, id: draftId }}
      onChange={onChange}
      tools={
        <>
          <Button tone="main" onClick={keep}>
            Keep it in the playbook
          </Button>
          {last !== undefined && (
            <Button onClick={() => change({ drafts: drafts.slice(0, -1), said: '' })}>Take the last change back</Button>
          )}
        </>
      }
    />
  );
}

/** A plan of the playbook: each change is a step of undo. */
function KeptPlan({ playbook, practice }: { readonly playbook: Playbook; readonly practice: Practice }): ReactNode {
  const { store } = useDesk();
  const change = usePlans((state) => state.change);
  const apply = (label: string, edit: (before: Playbook) => PlaybookEdit, joins?: string): void => {
    const result = edit(store.playbook);
    if (result.kind === 'refused') {
      change({ said: result.reason });
      return;
    }
    change({ said: '' });
    store.edit(label, () => result.playbook, joins === undefined ? {} : { joins });
  };
  const { id } = practice;
  return (
    <PlanEditor
      playbook={playbook}
      practice={practice}
      onChange={(label, edit, joins) =>
        apply(label, (before) => changePractice(before, id, edit), joins === undefined ? undefined : `${id} ${joins}`)
      }
      tools={
        <Button
          tone="risky"
          onClick={() => {
            apply('deleting a practice plan', (before) => removePractice(before, id));
            change({ shown: undefined, said: 'Deleted; Undo brings it back.' });
          }}
        >
          Delete the plan
        </Button>
      }
    />
  );
}

function turnoutOf({ team }: Playbook): number {
  return team.roster.filter(({ crosse, absent }) => crosse !== 'goalkeeper' && absent !== true).length;
}

function planName(
  { plays }: Playbook,
  question: PracticeQuestion,
  minutes: number,
  session: 'first' | 'second',
): string {
  const names = question.plays.map((id) => plays.find((play) => play.id === id)?.name ?? id);
  return `${names.join(', ').slice(0, 60)}: ${minutes} minutes${session === 'second' ? ', second session' : ''}`;
}

function saidOf(search: PlanSearch, isThere: boolean, play: string): string {
  switch (search.kind) {
    case 'finding':
      return `What is worth practising in ${play} is being tried; the plan comes when that is known.`;
    case 'stopped':
      return isThere ? '' : 'Stopped. Nothing was made.';
    case 'failed':
      return `That did not work: ${search.reason}. Make the plan once more.`;
    case 'idle':
      return isThere ? '' : 'The plan is made by what the looks and reads of the play are worth in the simulation.';
    default:
      return exhaustive(search);
  }
}

function exhaustive(search: never): never {
  throw new TypeError(`unknown search: ${JSON.stringify(search)}`);
}
