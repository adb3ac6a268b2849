import type { ReactNode } from 'react';
import type { SchemeBelief } from '../../engine/index.ts';
import type { Opponent, Playbook } from '../../playbook/index.ts';
import { percent, reasonOfMark, reasonOfTick, signWords } from '../../render/index.ts';
import type { ScoutQuestion } from '../../teach/index.ts';
import { Button } from '../controls/button.tsx';
import panel from '../opponents/panel.module.css';
import { schemeInfo } from '../opponents/scheme-info.ts';
import { useApply } from '../opponents/use-apply.ts';
import { acceptBelief, isTaken } from './accept-belief.ts';
import styles from './belief-panel.module.css';
import { useFilm } from './film-state.ts';
import { PriorEditor } from './prior-editor.tsx';
import type { BeliefNews, ReadChance } from './use-belief.ts';

export interface BeliefPanelProps {
  readonly playbook: Playbook;
  readonly opponent: Opponent;
  readonly question: ScoutQuestion;
  readonly news: BeliefNews;
  /** Shows the moment of a mark. */
  readonly onShow: (chance: string, time: number, defender: number) => void;
}

/** Reasons that are shown; the others say less. */
const mostReasons = 6;

/** Which scheme the marks speak for, how surely, and which man at which moment says so. */
export function BeliefPanel(props: BeliefPanelProps): ReactNode {
  const { playbook, opponent, question, news } = props;
  return (
    <section className={panel.panel} aria-label="What they play, by the marks">
      <h3 className={panel.title}>What they play, by the marks</h3>
      <div role="status">
        <p className={panel.quiet}>{statusWords(playbook, news)}</p>
      </div>
      {news.kind === 'found' && <Found {...props} news={news} />}
      <PriorEditor playbook={playbook} opponent={opponent} question={question} />
    </section>
  );
}

type FoundNews = Extract<BeliefNews, { kind: 'found' }>;

function Found(props: BeliefPanelProps & { readonly news: FoundNews }): ReactNode {
  const { playbook, opponent, question, news } = props;
  const apply = useApply();
  const { belief, manUps } = news;
  const taken = { belief, before: question.schemes, chances: manUps.map(({ chance }) => chance.id) };
  const isSaid = !news.isOld && isTaken(playbook, opponent, taken);
  return (
    <>
      {unlikeWords(playbook, question, manUps, belief)}
      {belief.alike.length > 0 && <p>{alikeWords(playbook, question, belief)}</p>}
      <Bars playbook={playbook} belief={belief} isOld={news.isOld} />
      <p className={panel.quiet}>{expectWords(manUps.length)}</p>
      <Reasons {...props} belief={belief} manUps={manUps} />
      <div className={panel.tools}>
        <Button
          tone="main"
          disabled={news.isOld || isSaid}
          onClick={() =>
            apply(`take the marks for what ${opponent.name} plays`, (book) => acceptBelief(book, opponent, taken))
          }
        >
          Take this for what they play
        </Button>
        {isSaid && <span className={panel.quiet}>Their page says so already: marks count once.</span>}
      </div>
    </>
  );
}

/** What the shares are of. */
function expectWords(manUps: number): string {
  const until = 'How often each is to be expected in their next man-up, now and before the marks.';
  return manUps === 1
    ? `${until} One man-up says less of the next than of itself: which scheme it looks like stands beside it in the list.`
    : `${until} Which scheme each man-up looks like stands beside it in the list.`;
}

function statusWords(playbook: Playbook, news: BeliefNews): string {
  switch (news.kind) {
    case 'nothing':
      return 'Mark the ball and the defenders at a moment, or tick what was seen: the schemes are then weighed here.';
    case 'working':
      return 'The schemes are being weighed.';
    case 'failed':
      return `The schemes could not be weighed: ${news.reason}.`;
    case 'found': {
      const [first, second] = sorted(news.belief);
      if (first === undefined) return '';
      const name = schemeInfo(playbook, first.scheme)?.name ?? first.scheme;
      const old = news.isOld ? ' The newest marks are being weighed.' : '';
      if (doTheyMix(news.belief))
        return `The man-ups do not look like one scheme: they seem to mix. Most often ${name}, ${percent(first.share)}.${old}`;
      const sure =
        first.share >= 0.9 ? 'Almost surely' : first.share >= 0.6 ? 'Most likely' : 'Not sure yet; likeliest';
      const other =
        second === undefined || first.share >= 0.9 ? '' : `, then ${schemeInfo(playbook, second.scheme)?.name}`;
      return `${sure}: ${name}, ${percent(first.share)}${other}.${old}`;
    }
    default:
      return exhaustive(news);
  }
}

/** Whether it is likelier that they mix than that all man-ups are of one scheme. */
function doTheyMix({ manUps, oneScheme }: SchemeBelief): boolean {
  return manUps.length > 1 && oneScheme < 0.5;
}

/** Surer than this of a man-up by itself, and it clearly looks like that scheme. */
const clearly = 0.6;

/** Man-ups that clearly look like another scheme than the one that is likeliest: one scheme may still be likelier than a mix, and yet it is to be told. */
function unlikeWords(
  playbook: Playbook,
  { schemes }: ScoutQuestion,
  manUps: readonly ReadChance[],
  belief: SchemeBelief,
): ReactNode {
  const { manUps: readings, between, alike } = belief;
  const [first] = between;
  const others = readings.flatMap(({ share_byScheme }, at) => {
    const most = share_byScheme.indexOf(Math.max(...share_byScheme));
    if (most === first || alike.includes(most) || share_byScheme[most]! < clearly) return [];
    const id = schemes[most]?.id ?? '';
    return [`Man-up ${manUps[at]?.number} looks like ${schemeInfo(playbook, id)?.name ?? id}.`];
  });
  if (others.length === 0 || readings.length < 2) return null;
  const doubt = doTheyMix(belief) ? '' : ' They may mix: mark more man-ups to tell.';
  return <p>{`${others.join(' ')}${doubt}`}</p>;
}

/** Schemes between which the marks say nothing, and what would. */
function alikeWords(playbook: Playbook, { schemes }: ScoutQuestion, { alike, between: [first] }: SchemeBelief): string {
  const nameOf = (at: number): string => schemeInfo(playbook, schemes[at]?.id ?? '')?.name ?? schemes[at]?.id ?? '';
  return `Nothing marked so far tells ${nameOf(first)} from ${alike.map(nameOf).join(' or ')}: they stand alike with this set and this ball. Mark the ball at other men.`;
}

function Bars({
  playbook,
  belief,
  isOld,
}: {
  readonly playbook: Playbook;
  readonly belief: SchemeBelief;
  readonly isOld: boolean;
}): ReactNode {
  return (
    <table className={styles.table} data-old={isOld}>
      <thead>
        <tr>
          <th scope="col">Scheme</th>
          <th scope="col">
            <span className="spoken">Bar of its share</span>
          </th>
          <th scope="col">Now</th>
          <th scope="col">Before</th>
        </tr>
      </thead>
      <tbody>
        {sorted(belief).map(({ scheme, share, before }) => (
          <tr key={scheme} data-scheme={scheme}>
            <th scope="row">{schemeInfo(playbook, scheme)?.name ?? scheme}</th>
            <td className={styles.bar}>
              <svg width="100%" height="12" aria-hidden="true">
                <rect width="100%" height="12" className={styles.empty} />
                <rect width={`${100 * share}%`} height="12" className={styles.full} />
                <line x1={`${100 * before}%`} x2={`${100 * before}%`} y2="12" className={styles.before} />
              </svg>
            </td>
            <td className={styles.share}>{shareWords(share)}</td>
            <td className={styles.quiet}>{shareWords(before)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Who is who in the reasons. */
function namesOf(playbook: Playbook, question: ScoutQuestion) {
  return {
    schemes: question.schemes.map(({ id }) => {
      const info = schemeInfo(playbook, id);
      return { name: info?.name ?? id, men: info?.men.map((man) => man.name) ?? [] };
    }),
  };
}

type ReasonsProps = BeliefPanelProps & {
  readonly belief: SchemeBelief;
  readonly manUps: readonly ReadChance[];
};

function Reasons(props: ReasonsProps): ReactNode {
  return (
    <>
      <MarkReasons {...props} />
      <TickReasons {...props} />
    </>
  );
}

function MarkReasons({ playbook, question, belief, manUps, onShow }: ReasonsProps): ReactNode {
  const lit = useFilm((state) => state.lit);
  const names = namesOf(playbook, question);
  const shown = belief.reasons.slice(0, mostReasons).flatMap((reason) => {
    const read = manUps[reason.film];
    const moment = read?.film?.moments[reason.moment];
    return read === undefined || moment === undefined
      ? []
      : [{ reason, read, time: moment.time, ball: read.spots[moment.ball] ?? '' }];
  });
  if (shown.length === 0) return null;
  return (
    <>
      <h4 className={styles.subtitle}>Which man says so</h4>
      <ul className={styles.reasons}>
        {shown.map(({ reason, read: { chance, spots, number }, time, ball }) => (
          <li key={`${chance.id} ${time} ${reason.mark}`}>
            <button
              type="button"
              className={styles.reason}
              aria-pressed={lit?.chance === chance.id && lit.time === time && lit.defender === reason.mark}
              onClick={() => onShow(chance.id, time, reason.mark)}
            >
              {reasonOfMark(reason, ball, { ...names, spots })}
              {manUps.length > 1 && ` Man-up ${number}.`}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** What was ticked, and how much each tick says; those that say nothing are named too. */
function TickReasons({ playbook, question, belief, manUps }: ReasonsProps): ReactNode {
  const names = { ...namesOf(playbook, question), spots: [] };
  const said = belief.tickReasons.slice(0, mostReasons).flatMap((reason) => {
    const read = manUps[reason.manUp];
    const tick = read?.ticks[reason.tick];
    if (read === undefined || tick === undefined) return [];
    const where = manUps.length > 1 ? ` Man-up ${read.number}.` : '';
    const words = `${reasonOfTick(reason, tick.seen, signWords(tick.sign), names)}${where}`;
    return [{ key: `${reason.manUp} ${tick.sign}`, words }];
  });
  const ticks = manUps.reduce((sum, one) => sum + one.ticks.length, 0);
  if (ticks === 0) return null;
  const silent = ticks - belief.tickReasons.length;
  return (
    <>
      <h4 className={styles.subtitle}>What the ticks say</h4>
      <ul className={styles.ticks}>
        {said.map(({ key, words }) => (
          <li key={key}>{words}</li>
        ))}
      </ul>
      {silent > 0 && (
        <p className={panel.quiet}>
          {silent === ticks ? 'None of the ticks tells' : `${silent} of ${ticks} ticks hardly tell`} the two likeliest
          schemes apart with this set.
        </p>
      )}
    </>
  );
}

function sorted({ schemes }: SchemeBelief): SchemeBelief['schemes'] {
  return [...schemes].sort((one, other) => other.share - one.share);
}

function shareWords(share: number): string {
  return share > 0 && share < 0.005 ? 'under 1 %' : percent(share);
}

function exhaustive(news: never): never {
  throw new TypeError(`unknown news: ${JSON.stringify(news)}`);
}
