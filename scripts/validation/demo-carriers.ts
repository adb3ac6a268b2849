import { carriersOfPlay, type Play, type SchemeChances, schemesFor } from '../../src/engine/index.ts';
import { demoPlaybook, demoText, toEnginePlay } from '../../src/playbook/index.ts';
import { expectKind, readsEffort, type TrialPool, type TrialSetup } from '../../src/worker/index.ts';

/** What is learnt from and what is measured in share no luck: not even the trials that the design was chosen on, which had seed 1. */
export const learnSeed = 2;
export const heldSeed = 3;

/** One man of a demo play with the ball, and what he could do in many chances. */
export interface DemoCarrier {
  readonly play: Play;
  /** Offense index. */
  readonly man: number;
  /** Words for the page: `Lantern, TL`. */
  readonly name: string;
  /** Letters for a row's id: `lantern-TL`. */
  readonly id: string;
  /** His man-ups are numbered from here on: no two carriers share luck. */
  readonly first: number;
  readonly learn: readonly SchemeChances[];
  readonly held: readonly SchemeChances[];
}

/** Every man to whom a demo play brings the ball, against each five-man scheme: `trials` man-ups of each to learn from and as many to measure in. */
export async function gatherDemo(pool: TrialPool, trials: number): Promise<readonly DemoCarrier[]> {
  const asked = demoPlaybook.plays.flatMap(({ id }) => {
    const play = toEnginePlay(demoPlaybook, id, 'right');
    return carriersOfPlay(play).map((spot) => ({ play, spot, man: play.spots.findIndex((one) => one.id === spot) }));
  });
  const carriers: DemoCarrier[] = [];
  for (const [at, { play, spot, man }] of asked.entries()) {
    const first = at * trials;
    const range = { from: first, to: first + trials };
    const [learn, held] = [
      await gather(pool, play, man, learnSeed, range),
      await gather(pool, play, man, heldSeed, range),
    ];
    carriers.push({ play, man, name: `${play.name}, ${spot}`, id: `${play.id}-${spot}`, first, learn, held });
  }
  return carriers;
}

/** What a man could do in some man-ups against every scheme; the outcomes of `horizon` seconds, as the studies count them when absent. */
export async function gather(
  pool: TrialPool,
  play: Play,
  man: number,
  seed: number,
  range: { readonly from: number; readonly to: number },
  horizon = readsEffort(1).horizon,
): Promise<readonly SchemeChances[]> {
  const schemes = schemesFor(5).map(({ id }) => id);
  const answers = await pool.answer(
    schemes.map((scheme) => ({
      kind: 'decisions',
      setup: setupOf(play, scheme, seed),
      carrier: man,
      range,
      horizon,
    })),
  );
  return answers.map((answer, at) => {
    const { chances } = expectKind(answer, 'decisions');
    return { scheme: schemes[at]!, weight: 1, trials: range.to - range.from, chances };
  });
}

/** The demo team's play from the right side, everything as the playbook has it. */
export function setupOf(play: Play, scheme: string, seed: number): TrialSetup {
  return { document: demoText, play: play.id, scheme, side: 'right', penalty: null, level: null, seed };
}
