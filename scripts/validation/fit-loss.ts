import type { ChanceSettings, Estimate } from '../../src/engine/index.ts';
import { measure, type ProMeasures } from './pro-measures.ts';
import { playProMix } from './pro-mix.ts';
import { sixtySeconds } from './pro-table.ts';

/** One fitted number: how far ours lies from theirs. */
export interface Miss {
  readonly name: string;
  readonly theirs: number;
  readonly ours: number;
  /** Distance in standard errors of theirs and ours together. */
  readonly errors: number;
}

export interface Loss {
  /** Sum of squares of the misses' standard errors. */
  readonly total: number;
  readonly misses: readonly Miss[];
}

/**
 * How far the pro mix with these settings is from the fitted numbers of the 60 s column; nothing else of the table is looked at.
 * The draws are the same for all settings, so that two losses differ by the settings alone.
 */
export function fitLoss(settings: Partial<ChanceSettings>, trials: number): Loss {
  const logs = playProMix(sixtySeconds.seconds, trials, settings).flatMap((cell) => cell.logs);
  const ours = measure(logs);
  const misses = targets.map((target) => missOf(target, ours));
  return { total: misses.reduce((sum, { errors }) => sum + errors * errors, 0), misses };
}

interface Target {
  readonly name: string;
  readonly theirs: number;
  /** Standard error of theirs. */
  readonly error: number;
  readonly of: (ours: ProMeasures) => Estimate;
}

const { penalties, conversion, shotsPerChance, anyShot, onTarget, saves, firstShot } = sixtySeconds;
const shots = penalties * shotsPerChance.value;

const targets: readonly Target[] = [
  {
    name: 'conversion',
    theirs: conversion.value,
    error: shareError(conversion.value, penalties),
    of: (ours) => ours.conversion,
  },
  // Shots a chance have about the variance of a Poisson count: 1.16 a chance.
  {
    name: 'shots a chance',
    theirs: shotsPerChance.value,
    error: Math.sqrt(shotsPerChance.value / penalties),
    of: (ours) => ours.shotsPerChance,
  },
  {
    name: 'chances with a shot',
    theirs: anyShot.value,
    error: shareError(anyShot.value, penalties),
    of: (ours) => ours.anyShot,
  },
  { name: 'on target', theirs: onTarget.value, error: shareError(onTarget.value, shots), of: (ours) => ours.onTarget },
  {
    name: 'saves',
    theirs: saves.value,
    error: shareError(saves.value, shots * onTarget.value),
    of: (ours) => ours.saves,
  },
  // Quartiles 14 s apart over 409 first shots give .6 s; scorekeepers' clocks are seconds wrong, all in one direction or another.
  { name: 'first shot, median', theirs: firstShot.median, error: 1, of: (ours) => ours.firstShotMedian },
];

function shareError(value: number, tries: number): number {
  return Math.sqrt((value * (1 - value)) / tries);
}

function missOf({ name, theirs, error, of }: Target, ours: ProMeasures): Miss {
  const { mean, low, high } = of(ours);
  // Without a single shot there is no median: as bad as can be, and still a number to compare.
  if (!Number.isFinite(mean)) return { name, theirs, ours: mean, errors: worst };
  const own = (high - low) / (2 * 1.96);
  return { name, theirs, ours: mean, errors: (mean - theirs) / Math.hypot(error, own) };
}

const worst = 100;
