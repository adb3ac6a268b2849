import { landmarksOf, menOnField, ruleCodes, toMetres } from '../../src/engine/index.ts';
import { factRow, type Group, nearRow, type Row } from './row.ts';

/** Men down, then who is in that half; derived from the offside counts (6 and 7, men in the box counted). */
const menDown = [
  { down: 0, other: 0, defenders: 6, attackers: 6, waiting: 0 },
  { down: 1, other: 0, defenders: 5, attackers: 6, waiting: 0 },
  { down: 2, other: 0, defenders: 4, attackers: 6, waiting: 0 },
  { down: 3, other: 0, defenders: 3, attackers: 6, waiting: 0 },
  { down: 1, other: 1, defenders: 5, attackers: 5, waiting: 0 },
  { down: 4, other: 0, defenders: 3, attackers: 6, waiting: 1 },
] as const;

const { ncaa, nfhs, worldLacrosse } = ruleCodes;
const field = landmarksOf(ncaa.markings);

/** Yards of the classic college field, and the world body's end line in metres. */
const lengths = [
  {
    id: 'end-line',
    what: 'goal line to end line, yd',
    theirs: 15,
    ours: -field.endLine,
    source: 'kids.britannica.com',
  },
  {
    id: 'restraining',
    what: 'goal line to restraining line, yd',
    theirs: 20,
    ours: field.restrainingLine,
    source: 'crylax.org n=72532',
  },
  {
    id: 'between-goals',
    what: 'between the goals, yd',
    theirs: 80,
    ours: 2 * field.midfieldLine,
    source: 'britannica, trumarkathletics.com',
  },
  {
    id: 'field-width',
    what: 'field width, yd',
    theirs: 60,
    ours: 2 * field.sideline,
    source: 'NCAA 2025 Rule 1, quoted',
  },
  {
    id: 'box-width',
    what: 'box width, yd',
    theirs: 40,
    ours: 2 * (field.boxSide ?? Number.NaN),
    source: 'trumarkathletics.com',
  },
  { id: 'crease', what: 'crease radius, yd', theirs: 3, ours: field.creaseRadius, source: 'crylax.org n=72532: 9 ft' },
  {
    id: 'goal',
    what: 'goal width, yd',
    theirs: 2,
    ours: field.rightPost.x - field.leftPost.x,
    source: 'trumarkathletics.com: 6 ft',
  },
  {
    id: 'world-end-line',
    what: 'World Lacrosse: goal line to end line, m',
    theirs: 12,
    ours: toMetres(worldLacrosse.markings.goalToEndLine.value),
    source: 'worldlacrosse.sport',
  },
] as const;

export function rulesGroup(): Group {
  return {
    id: 'rules',
    title: 'Rules',
    about:
      "Field, penalties and how many may be where. No current rulebook could be opened: values come from officials' pages and quotes, and the playbook says which to confirm.",
    rows: [...lengths.map(lengthRow), ...menDown.map(menRow), ...penaltyRows()],
  };
}

function lengthRow({ id, what, theirs, ours, source }: (typeof lengths)[number]): Row {
  return nearRow({ id: `field-${id}`, what, source }, theirs, ours, 1e-9, 2);
}

function menRow({ down, other, defenders, attackers, waiting }: (typeof menDown)[number]): Row {
  const words = (men: { defenders: number; attackers: number; waiting: number }) =>
    `${men.attackers} v ${men.defenders}${men.waiting > 0 ? `, ${men.waiting} waits` : ''}`;
  const theirs = words({ defenders, attackers, waiting });
  const ours = words(menOnField(nfhs, down, other));
  return factRow(
    {
      id: `men-${down}-${other}`,
      what: `${down} down against ${other} down`,
      source: 'inlaxref.org; umloa.org rule 7',
    },
    theirs,
    ours,
    theirs === ours,
  );
}

function penaltyRows(): readonly Row[] {
  const personal = nfhs.penalties.personal.value.join(', ');
  return [
    factRow(
      { id: 'technical', what: 'technical foul, s', source: 'inlaxref.org, fouls and penalties' },
      '30',
      `${nfhs.penalties.technical.value}`,
      nfhs.penalties.technical.value === 30,
    ),
    factRow(
      { id: 'personal', what: 'personal foul, s', source: 'inlaxref.org, fouls and penalties' },
      '60, 120, 180',
      personal,
      personal === '60, 120, 180',
    ),
    factRow(
      { id: 'release', what: 'one goal releases all releasable penalties', source: 'umloa.org rule 7' },
      'yes',
      nfhs.penalties.goalReleasesAll.value ? 'yes' : 'no',
      nfhs.penalties.goalReleasesAll.value,
    ),
    factRow(
      { id: 'young', what: '8U and 10U are never a man up', source: 'uslacrosse.org 2020' },
      'yes',
      ruleCodes.usal10U.penalties.playedShort.value || ruleCodes.usal8U.penalties.playedShort.value ? 'no' : 'yes',
      !ruleCodes.usal10U.penalties.playedShort.value && !ruleCodes.usal8U.penalties.playedShort.value,
    ),
    factRow(
      {
        id: 'shot-clock',
        what: 'NCAA shot clock; after a penalty at or below 60',
        source: 'usalacrosse.com 2022; docslib.org',
      },
      '80; 60',
      `${ncaa.shotClock.value?.seconds}; ${ncaa.shotClock.value?.afterPenalty.atOrBelow}`,
      ncaa.shotClock.value?.seconds === 80 && ncaa.shotClock.value.afterPenalty.atOrBelow === 60,
    ),
  ];
}
