import { lazy, type ReactNode, Suspense, useCallback, useMemo, useState } from 'react';
import type { Play, Read } from '../../engine/index.ts';
import {
  addBeatAfter,
  addLastTen,
  addRead,
  changeTrigger,
  type Playbook,
  type PlayEntry,
  passTo,
  ruleCodeOf,
  type ScriptName,
} from '../../playbook/index.ts';
import { drawnField, playSteps } from '../../render/index.ts';
import type { LookAnswer } from '../answers/answers-snapshot.ts';
import { awaitsGuess } from '../answers/awaits-guess.ts';
import { useAnswers } from '../answers/use-answers.ts';
import { Button } from '../controls/button.tsx';
import { useLook } from '../look/look.ts';
import { PlayControls } from '../playback/play-controls.tsx';
import { seek } from '../playback/playhead.ts';
import { useHeldWhile } from '../playback/use-held-while.ts';
import { LayerBar } from '../schemes/layer-bar.tsx';
import { LookList } from '../schemes/look-list.tsx';
import { OverallLine } from '../schemes/overall-line.tsx';
import { readOfLook } from '../schemes/read-of-look.ts';
import { schemeChoices, usualSchemes } from '../schemes/scheme-choices.ts';
import { SchemesPane } from '../schemes/schemes-pane.tsx';
import { eventTimes } from '../schemes/script-moment.ts';
import { useHeat } from '../schemes/use-heat.ts';
import { useShownTrial } from '../schemes/use-shown-trial.ts';
import { useSpan } from '../schemes/use-span.ts';
import { useWatchedTrial } from '../schemes/use-watched-trial.ts';
import { WatchField } from '../schemes/watch-field.tsx';
import { useDesk } from '../shell/desk.tsx';
import { TempoPane } from '../tempo/tempo-pane.tsx';
import { beatAt, type TempoOrder } from '../tempo/tempo-tool.ts';
import styles from './play-screen.module.css';
import { useScreen } from './screen-state.ts';
import { ofScript } from './script-step.ts';
import { SetPanel } from './set-panel.tsx';
import { StepBar } from './step-bar.tsx';
import { StepPanel } from './step-panel.tsx';
import { useIsNarrow } from './use-is-narrow.ts';
import { useLiveAsk } from './use-live-ask.ts';
import type { PlayEditor } from './use-play-editor.ts';
import { useStageInView } from './use-stage-in-view.ts';
import { useTempoChart } from './use-tempo-chart.ts';
import { WriteField } from './write-field.tsx';

const SchemePicker = lazy(() => import('../schemes/scheme-picker.tsx'));

export interface PlayDeskProps {
  readonly playbook: Playbook;
  readonly editor: PlayEditor;
  readonly play: Play;
}

/** One play under the coach's hands: the field, its steps over time and in words, and what it does against every scheme. */
export function PlayDesk({ playbook, editor, play }: PlayDeskProps): ReactNode {
  const { player } = useDesk();
  const screen = useScreen();
  const { step, mode, scheme, side, layers, change } = screen;
  const isNarrow = useIsNarrow();
  const { stage, bring } = useStageInView();
  const palette = useLook((state) => state.shown);
  const [pending, setPending] = useState<PlayEntry>();
  const [picking, setPicking] = useState(false);
  const [shooter, setShooter] = useState('');
  const field = useMemo(() => drawnField(ruleCodeOf(playbook).markings), [playbook]);
  // In the last ten seconds other steps and reads take the place of the play's own; all else stays.
  const shownPlay = useMemo(() => ofScript(play, screen.script), [play, screen.script]);
  const beats = useMemo(() => playSteps(shownPlay).map(({ beat }) => beat), [shownPlay]);
  const choices = useMemo(() => schemeChoices(playbook), [playbook]);
  const schemes = useMemo(
    () => screen.chosen?.filter((id) => choices.some((choice) => choice.id === id)) ?? usualSchemes(choices),
    [screen.chosen, choices],
  );
  const schemeNames = useMemo(() => Object.fromEntries(choices.map(({ id, name }) => [id, name])), [choices]);
  useLiveAsk({ editor, playbook, pending, schemes, side });

  const answers = useAnswers();
  useHeldWhile(player, pending !== undefined || awaitsGuess(answers));
  const answer = answers.schemes.find((one) => one.scheme === scheme) ?? answers.schemes[0];
  const shown = useShownTrial(answer, screen.trial);
  const chart = useTempoChart(shownPlay, screen.script, editor, answer, mode === 'watch' ? shown : undefined);
  const marks = useMemo(() => (answer?.script == null ? [] : eventTimes(answer.script)), [answer?.script]);
  const spots = play.spots.map(({ id }) => id);
  const shooterSpot = spots.includes(shooter) ? shooter : shooterOf(play);
  const heat = useHeat(
    layers.has('heat') && mode === 'watch',
    answer?.scheme,
    spots.indexOf(shooterSpot),
    editor.entry,
  );
  const watchedTrial = mode === 'watch' ? screen.trial : undefined;
  useSpan(player, answers.schemes, shown, watchedTrial);
  useWatchedTrial(player, watchedTrial, shown);

  const beat = beats[step - 1];
  const addStep = (): void => {
    const after = beat?.id ?? beats.at(-1)?.id ?? '';
    const made = editor.apply('add a step', (entry, ground) => addBeatAfter(entry, ground, after));
    if (made !== undefined) change({ step: (beat === undefined ? beats.length : step) + 1, mode: 'write' });
  };
  const asRead = (look: LookAnswer): Read => readOfLook(look, beatAt(chart, look.opens));
  const teach = (read: Read): boolean =>
    editor.apply(`teach ${read.carrier} a read`, (entry, ground) => addRead(entry, ground, 'main', read)) !== undefined;
  const chooseScript = (script: ScriptName): void => {
    if (script === 'lastTen' && play.lastTen === undefined) {
      if (editor.apply('give the last ten seconds steps of their own', (entry) => addLastTen(entry)) === undefined)
        return;
    }
    change({ script, step: script === 'lastTen' ? 1 : 0, mode: 'write', selected: undefined });
  };
  const onTempo = (order: TempoOrder): void => {
    switch (order.kind) {
      case 'seek':
        player.change((head) => ({ ...seek(head, order.time), running: false }));
        return;
      case 'choose':
        change({
          step: beats.findIndex(({ id }) => id === order.beat) + 1,
          ...(order.spot !== undefined && { selected: order.spot }),
        });
        return;
      case 'shiftCall': {
        const trigger = beats.find(({ id }) => id === order.beat)?.when;
        if (trigger?.kind !== 'call') return;
        const seconds = Math.max(0.1, Math.round((trigger.seconds + order.by) * 10) / 10);
        editor.apply(`move the call "${order.beat}"`, (entry, ground) =>
          changeTrigger(entry, ground, order.beat, { ...trigger, seconds }),
        );
        return;
      }
      case 'throw':
        editor.apply(`throw to ${order.to}`, (entry, ground) => passTo(entry, ground, order.beat, order.to));
        return;
      default:
        exhaustive(order);
    }
  };
  return (
    <div className={styles.desk}>
      <section ref={stage} className={styles.stage} aria-label="The field">
        {mode === 'watch' && screen.trial !== undefined && (
          <p className={styles.trial}>
            {screen.trial.words}
            <Button onClick={() => change({ trial: undefined })}>Back to the one before</Button>
          </p>
        )}
        {mode === 'watch' && (
          <LayerBar
            layers={layers}
            onLayers={(next) => change({ layers: next })}
            spots={spots}
            shooter={shooterSpot}
            onShooter={setShooter}
          />
        )}
        <div className={styles.field} data-tour="field">
          {mode === 'write' ? (
            <WriteField editor={editor} play={shownPlay} field={field} onPending={setPending} />
          ) : (
            <WatchField shown={shown} player={player} field={field} palette={palette} layers={layers} heat={heat} />
          )}
        </div>
        <div>
          {/* Who presses Play wants to see it run: on the large field too. */}
          <PlayControls player={player} marks={marks} onStart={() => change({ mode: 'watch' })} />
        </div>
        <StepBar
          beats={beats.map((each) => each.id)}
          step={step}
          onStep={(next) => change({ step: next, mode: 'write' })}
          onAdd={addStep}
          script={screen.script}
          hasLastTen={play.lastTen !== undefined}
          onScript={chooseScript}
        />
        <TempoPane chart={chart} player={player} palette={palette} onOrder={onTempo} />
      </section>
      <aside className={styles.panel} aria-label={mode === 'write' ? 'This step in words' : 'What comes open'}>
        {mode === 'watch' && answer !== undefined && (
          <LookList
            answer={answer}
            name={schemeNames[answer.scheme] ?? answer.scheme}
            reads={play.reads}
            asRead={asRead}
            onTeach={teach}
            onWatch={bring}
          />
        )}
        {mode === 'write' && beat !== undefined && <StepPanel editor={editor} play={shownPlay} beat={beat} />}
        {mode === 'write' && beat === undefined && <SetPanel editor={editor} play={play} />}
      </aside>
      <section className={styles.schemes} aria-label="Against the schemes" data-tour="schemes">
        <SchemesPane
          field={field}
          palette={palette}
          names={schemeNames}
          onPick={useCallback(() => setPicking(true), [])}
          onWatch={bring}
          isOld={!editor.reading.isWhole}
        />
      </section>
      {isNarrow && mode === 'write' && (
        <div className={styles.foot}>
          <OverallLine overall={answers.overall} />
        </div>
      )}
      <Suspense fallback={null}>
        {picking && (
          <SchemePicker
            onClose={() => setPicking(false)}
            choices={choices}
            chosen={schemes}
            onChange={(chosen) => change({ chosen })}
          />
        )}
      </Suspense>
    </div>
  );
}

/** Whose shot the play is for: the last one that it asks for, else that of the man who starts it. */
function shooterOf(play: Play): string {
  const shots = play.beats.flatMap(({ actions }) => actions.filter(({ kind }) => kind === 'shot'));
  return shots.at(-1)?.by ?? play.start.ball;
}

function exhaustive(order: never): never {
  throw new TypeError(`unknown order: ${JSON.stringify(order)}`);
}
