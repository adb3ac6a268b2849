import { type ControlOdds, controlOdds } from '../../src/engine/index.ts';
import { type Group, nearRow, printedRow, type Row } from './row.ts';

/** Constants of the open tutorial implementation, and of Spearman 2018. */
const tutorial = { rate: 4.3, kappa: 1, sigma: 0.45 };
const paper = { rate: 3.99, kappa: 1.72, sigma: 0.54 };

/** Arrival times of both sides and the ball's, s; the control ODE converged with DOP853. */
const races = [
  { name: 'A symmetric', attack: [1.7], defence: [1.7], start: 0, exact: [0.5, 0.5], paper: 0.367647 },
  { name: 'B defender nearer', attack: [1.7], defence: [1.5], start: 0, exact: [0.366004, 0.633996], paper: 0.257209 },
  {
    name: 'C receiver on the spot',
    attack: [0.7],
    defence: [1.5],
    start: 1,
    exact: [0.785311, 0.214689],
    paper: 0.648388,
  },
  { name: 'D defender farther', attack: [0.7], defence: [2.3], start: 1, exact: [0.974694, 0.025306], paper: 0.928165 },
  {
    name: 'E receiver running',
    attack: [1.14],
    defence: [1.7],
    start: 1,
    exact: [0.783566, 0.216434],
    paper: 0.639387,
  },
  {
    name: 'F two on two',
    attack: [0.96, 1.435391],
    defence: [1.077359, 1.831371],
    start: 0.745356,
    exact: [0.603093, 0.396907],
    paper: 0.462532,
  },
] as const;

/** Without spread of arrival: P = 1 - e^{-la D} + e^{-la D} la / (la + ld), the attacker first by D .2 s. */
const limits = [
  { attack: 1, defence: 1.2, la: 4.3, ld: 4.3, value: 0.788418959 },
  { attack: 1.2, defence: 1, la: 4.3, ld: 4.3, value: 0.211581041 },
  { attack: 1, defence: 1.2, la: 3.99, ld: 6.8628, value: 0.71529667 },
] as const;

/** Odds of being there .5 s after the arrival time. */
const logistic = [
  { sigma: 0.45, value: 0.88239753 },
  { sigma: 0.54, value: 0.84283087 },
] as const;

const ode = 'control ODE (Spearman et al. 2017), DOP853';

export function controlGroup(): Group {
  return {
    id: 'control',
    title: 'Control of a ball',
    about:
      "Spearman's control equation with the constants of the open tutorial (4.3 /s, .45 s) and of the 2018 paper (3.99 /s, kappa 1.72, .54 s).",
    rows: [...races.flatMap(raceRows), ...limits.map(limitRow), ...logistic.map(logisticRow)],
  };
}

function still(times: readonly number[]) {
  return times.map((time) => () => time);
}

function raceOdds(race: (typeof races)[number], { rate, kappa, sigma }: typeof tutorial): ControlOdds {
  return controlOdds(
    { arrivals: still(race.attack), rate },
    { arrivals: still(race.defence), rate: rate * kappa },
    sigma,
    race.start,
  );
}

function raceRows(race: (typeof races)[number]): readonly Row[] {
  const ours = raceOdds(race, tutorial);
  const id = `control-${race.name.slice(0, 1)}`;
  return [
    printedRow({ id: `${id}-attack`, what: `${race.name}: attack`, source: ode }, race.exact[0], ours.attack, 6),
    printedRow({ id: `${id}-defence`, what: `${race.name}: defence`, source: ode }, race.exact[1], ours.defence, 6),
    printedRow(
      { id: `${id}-paper`, what: `${race.name}: attack, constants of 2018`, source: ode },
      race.paper,
      raceOdds(race, paper).attack,
      6,
    ),
  ];
}

function limitRow({ attack, defence, la, ld, value }: (typeof limits)[number], index: number): Row {
  const ours = controlOdds({ arrivals: still([attack]), rate: la }, { arrivals: still([defence]), rate: ld }, 0.002, 0);
  return nearRow(
    {
      id: `control-limit-${index}`,
      what: `no spread of arrival, rates ${la} and ${ld} (2 ms stand for none)`,
      source: 'closed form',
    },
    value,
    ours.attack,
    1e-4,
    6,
  );
}

function logisticRow({ sigma, value }: (typeof logistic)[number]): Row {
  const step = 1e-4;
  const ours = controlOdds({ arrivals: still([0]), rate: 1 }, { arrivals: [], rate: 0 }, sigma, 0.5, step);
  return nearRow(
    { id: `arrival-spread-${sigma}`, what: `there .5 s late, spread ${sigma} s`, source: 'closed form' },
    value,
    ours.attack / step,
    5e-5,
    6,
  );
}
