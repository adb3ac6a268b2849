import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { schemeList, sets } from '../engine/index.ts';
import { demoPlaybook, demoText, serializePlaybook } from '../playbook/index.ts';
import { type Ran, runRecorded } from './recorded-io.fixture.ts';
import { tableWidth } from './table.ts';

let folder = '';
let demo = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'sliderule-'));
  demo = join(folder, 'demo.json');
  writeFileSync(demo, demoText);
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** The demo with an opponent, and one of whom nothing is known. */
const withOpponents = {
  ...demoPlaybook,
  opponents: [
    { id: 'them', name: 'Them', schemes: { 'box-zone': 1, jump: 3 }, discipline: { all: 'loose' } },
    { id: 'new', name: 'New' },
  ],
};

function sliderule(args: readonly string[], signal: AbortSignal = new AbortController().signal): Promise<Ran> {
  return runRecorded(args, { signal });
}

function widest(text: string): number {
  return Math.max(...text.split('\n').map((line) => line.length));
}

describe('help', () => {
  it.each([
    ['check'],
    ['draw'],
    ['test'],
    ['compare'],
    ['reads'],
    ['trace'],
    ['schemes'],
    ['sets'],
    ['demo'],
    ['open'],
    ['practice'],
    ['quiz'],
    ['call'],
    ['season'],
  ])('%s has a description and examples that name it', async (command) => {
    const { code, out } = await sliderule([command, '--help']);
    expect(code).toBe(0);
    expect(out).toContain(`Usage: sliderule ${command}`);
    expect(out.split('Examples:')[1]).toContain(`sliderule ${command}`);
    expect(widest(out)).toBeLessThanOrEqual(tableWidth);
  });

  it('lists every command', async () => {
    const { code, out } = await sliderule(['--help']);
    expect(code).toBe(0);
    for (const name of [
      'check',
      'draw',
      'sheet',
      'practice',
      'quiz',
      'call',
      'season',
      'test',
      'compare',
      'reads',
      'trace',
      'schemes',
      'sets',
      'demo',
      'open',
    ]) {
      expect(out).toMatch(new RegExp(`^ {2}${name}\\b`, 'm'));
    }
  });

  it('prints itself on standard error when nothing was asked', async () => {
    const { code, out, err } = await sliderule([]);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('Usage: sliderule');
  });
});

describe('bad use: exit code 2 and one plain sentence', () => {
  it.each([
    [['tset', 'DEMO'], "unknown command 'tset' Did you mean test?"],
    [['test'], "missing required argument 'file'"],
    [['test', 'DEMO', '--fast'], "unknown option '--fast'"],
    [['test', 'DEMO', 'more'], 'too many arguments'],
    [['test', 'nowhere.json'], 'cannot read nowhere.json: there is no such file'],
    [['check', 'nowhere.json'], 'cannot read nowhere.json: there is no such file'],
    [
      ['test', 'DEMO', '--play', 'lanten'],
      'unknown play: lanten (expected lantern, quarry, ferry). Did you mean lantern?',
    ],
    [['test', 'DEMO', '--against', 'box-zon'], 'Did you mean box-zone?'],
    [['test', 'DEMO', '--against', ','], 'missing scheme after --against'],
    [['test', 'DEMO', '--trials', '0'], 'invalid --trials: 0'],
    [['test', 'DEMO', '--penalty', 'long'], 'invalid --penalty: long'],
    [['reads', 'DEMO'], 'name one of lantern, quarry, ferry after --play'],
    [['reads', 'DEMO', '--play', 'lantern', '--carrier', 'XX'], 'unknown spot: XX (expected'],
    [['reads', 'DEMO', '--play', 'lantern', '--card', '5'], 'invalid --card: 5'],
    [
      ['reads', 'DEMO', '--play', 'lantern', '--against', 'jump', '--carrier', 'WR', '--trials', '20'],
      'brings WR the ball in too few',
    ],
    [['trace', 'DEMO'], 'missing --play (one of lantern, quarry, ferry) and --against (one of box-zone,'],
    [['trace', 'DEMO', '--against', 'box-zone'], 'missing --play (one of lantern, quarry, ferry).'],
    [['trace', 'DEMO', '--play', 'lantern', '--against', 'nothing'], 'unknown scheme or opponent: nothing'],
    [['trace', 'DEMO', '--play', 'lantern', '--against', 'all'], 'name one of'],
    [['trace', 'DEMO', '--play', 'lantern,ferry', '--against', 'jump'], 'name lantern or ferry after --play'],
    [['test', 'DEMO', '--play', ','], 'missing play after --play'],
    [['compare', 'DEMO', '--play', 'lantern,fery'], 'unknown play: fery'],
    [['test', 'THEM', '--against', 'them,jump'], 'them is an opponent, who has schemes of his own'],
    [['test', 'THEM', '--against', 'new'], 'New has no schemes yet'],
    [['trace', 'DEMO', '--play', 'lantern', '--against', 'box-zone', '--trial', '-1'], 'invalid --trial: -1'],
    [['trace', 'DEMO', '--play', 'lantern', '--against', 'box-zone', '--every', '0'], 'invalid --every: 0'],
    [['open', '--port', 'usual'], 'invalid --port: usual (expected a whole number from 0 to 65535).'],
    [['open', '--port', '65536'], 'invalid --port: 65536'],
    [['open'], 'the workbench is not built yet. To build it, in the folder of the program: npm run build'],
  ])('%j', async (args, sentence) => {
    writeFileSync(join(folder, 'them.json'), JSON.stringify(withOpponents));
    const files: Readonly<Record<string, string>> = { DEMO: demo, THEM: join(folder, 'them.json') };
    const { code, out, err } = await sliderule(args.map((word) => files[word] ?? word));
    expect(err.replace(/\s+/g, ' ')).toContain(sentence);
    expect(err).not.toMatch(/\n\s+at /);
    expect([code, out]).toEqual([2, '']);
  });
});

describe('check', () => {
  it('is content with the demo', async () => {
    const { code, out } = await sliderule(['check', demo]);
    expect(code).toBe(0);
    expect(out).toContain('Tamarack Harriers, 14U: 3 plays, 10 players.');
  });

  it('says everything that is wrong, and exits with 1', async () => {
    const bad = {
      ...demoPlaybook,
      plays: demoPlaybook.plays.map((play) => ({ ...play, start: { ...play.start, ball: 'Q' } })),
    };
    writeFileSync(demo, serializePlaybook(bad));
    const { code, out, err } = await sliderule(['check', demo]);
    expect([code, err]).toEqual([1, '']);
    expect(out.match(/^\d+:\d+ error /gm)?.length).toBe(3);
    expect(out).toContain('3 errors');
  });

  it.each([
    ['an empty file', ''],
    ['something else', 'dear diary'],
    ['a list', '[1, 2]'],
    ['deep nesting', '['.repeat(10_000)],
    ['a hostile name', '{"__proto__": {"polluted": true}}'],
  ])('survives %s', async (_, content) => {
    writeFileSync(demo, content);
    const { code, out } = await sliderule(['check', demo]);
    expect(code).toBe(1);
    expect(out).toMatch(/error/);
  });

  it('never lets a file command the terminal', async () => {
    writeFileSync(demo, serializePlaybook({ ...demoPlaybook, team: { ...demoPlaybook.team, name: 'A\u001b[2Jteam' } }));
    const { out, err } = await sliderule(['check', demo]);
    expect(out + err).not.toContain('\u001b');
  });
});

describe('schemes and sets', () => {
  it('lists every scheme within 80 columns', async () => {
    const { code, out } = await sliderule(['schemes']);
    expect(code).toBe(0);
    for (const scheme of schemeList) expect(out).toContain(scheme.id);
    expect(widest(out)).toBeLessThanOrEqual(tableWidth);
  });

  it('lists every set within 80 columns', async () => {
    const { code, out } = await sliderule(['sets']);
    expect(code).toBe(0);
    for (const id of Object.keys(sets)) expect(out).toContain(id);
    expect(widest(out)).toBeLessThanOrEqual(tableWidth);
  });
});

describe('demo DIR', () => {
  it('writes a playbook that passes its own check', async () => {
    const { code, out } = await sliderule(['demo', join(folder, 'mine')]);
    expect(code).toBe(0);
    expect(out).toContain(`sliderule check ${join(folder, 'mine', 'playbook.json')}`);
    expect((await sliderule(['check', join(folder, 'mine', 'playbook.json')])).code).toBe(0);
  });

  it('refuses to replace one', async () => {
    writeFileSync(join(folder, 'playbook.json'), 'mine');
    const { code, err } = await sliderule(['demo', folder]);
    expect(code).toBe(2);
    expect(err).toContain('already there');
    expect(readFileSync(join(folder, 'playbook.json'), 'utf8')).toBe('mine');
  });
});

describe('draw', () => {
  const plays = demoPlaybook.plays.map(({ id }) => id);

  it('draws the set and every beat of every play into a new folder', async () => {
    const out = join(folder, 'drawn');
    const ran = await sliderule(['draw', demo, '--out', out]);
    expect([ran.code, ran.err]).toEqual([0, '']);
    const names = readdirSync(out);
    const beats = demoPlaybook.plays.flatMap((play) => [...play.beats, ...(play.lastTen?.beats ?? [])]).length;
    expect(names).toHaveLength(beats + plays.length);
    expect(names).toContain('lantern-00-set.svg');
    expect(names).toContain('lantern-01-swing.svg');
    expect(names).toContain('lantern-07-last-ten-pinch.svg');
    const swing = readFileSync(join(out, 'lantern-01-swing.svg'), 'utf8');
    expect(swing).toContain('Step 1, when the set is up: TR passes to TL.');
    expect(swing).toContain('looking in.');
  });

  it('draws chosen plays, and their mirror image', async () => {
    const out = join(folder, 'left');
    const { code } = await sliderule(['draw', demo, '--play', 'ferry', '--side', 'left', '--out', out]);
    expect(code).toBe(0);
    expect(readdirSync(out).every((name) => name.startsWith('ferry-left-'))).toBe(true);
  });

  it('never draws into a full folder, nor a play that is not there', async () => {
    expect(await sliderule(['draw', demo, '--out', folder])).toMatchObject({ code: 2, out: '' });
    const { code, err } = await sliderule(['draw', demo, '--play', 'fery', '--out', join(folder, 'x')]);
    expect(code).toBe(2);
    expect(err).toContain('Did you mean ferry?');
    expect(readdirSync(folder)).toEqual(['demo.json']);
  });
});

describe('reads', () => {
  it('puts a card for one man and what it is worth on paper', async () => {
    const words = ['reads', demo, '--play', 'ferry', '--against', 'box-zone,jump', '--trials', '60', '--card', '1'];
    const { code, out } = await sliderule(words);
    expect(code).toBe(0);
    expect(out).toContain('Ferry, P with the ball.');
    expect(out).toMatch(/the best decisions that are known +0\.\d\d \(0\.\d\d-0\.\d\d\)/);
    expect(out).toMatch(/\n1\. If .+\.\n(.*\n)?Otherwise .+\./);
    expect(out).toContain('--carrier P --against box-zone,jump --card 1');
    expect(widest(out.split('\n\nSame numbers again')[0] ?? '')).toBeLessThanOrEqual(tableWidth);
  });

  it('says the same to another program', async () => {
    const words = ['reads', demo, '--play', 'ferry', '--against', 'box-zone,jump', '--trials', '60', '--json'];
    const { out } = await sliderule(words);
    const read = JSON.parse(out);
    expect(read).toMatchObject({ play: 'ferry', carrier: 'P', card: 4 });
    expect(read.cards).toHaveLength(5);
    expect(read.schemes.map(({ scheme }: { scheme: string }) => scheme)).toEqual(['box-zone', 'jump']);
    expect(read.fakes).toHaveLength(5);
  });

  it('grades what the play teaches', async () => {
    const words = ['reads', demo, '--play', 'ferry', '--against', 'box-zone:2,jump:1', '--trials', '45'];
    const { out } = await sliderule([...words, '--carrier', 'TR']);
    expect(out.replace(/\s+/g, ' ')).toMatch(/1\. If P is open, TR \w+ (to )?P\. He (never )?sees it/);
    expect(out.replace(/\s+/g, ' ')).toContain('TR fakes to P');
  });

  it('tells the card of every man to whom the play brings the ball', async () => {
    const words = ['reads', demo, '--play', 'lantern', '--against', 'jump', '--trials', '90', '--carrier', 'all'];
    const { out } = await sliderule(words);
    // A man to whom it hardly ever comes is told so on a line of his own.
    expect(out).toMatch(/\nTR\n(.*\n)*TL\n(.*\n)*WL[\n:](.*\n)*X[\n:]/);
    expect(widest(out.split('\n\nSame numbers again')[0] ?? '')).toBeLessThanOrEqual(tableWidth);
  });
});

describe('sheet', () => {
  const page = ['--play', 'lantern', '--no-worths'];

  it.each([
    ['pdf', '%PDF-'],
    ['svg', '<svg '],
    ['png', '\u0089PNG'],
  ])('puts a play on one page (%s)', async (ending, begins) => {
    const out = join(mkdtempSync(join(tmpdir(), 'sheet-')), `page.${ending}`);
    const { code, out: said } = await sliderule(['sheet', demo, ...page, '--out', out]);
    expect(code).toBe(0);
    expect(said).toContain('one page of Letter.');
    expect(readFileSync(out, 'latin1').slice(0, begins.length)).toBe(begins);
  });

  it('says what the play makes against the schemes, and names nobody by itself', async () => {
    const out = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'page.svg');
    const asked = ['--play', 'lantern', '--against', 'box-zone,jump', '--trials', '100', '--paper', 'a4', '--out', out];
    await sliderule(['sheet', demo, ...asked]);
    const drawn = readFileSync(out, 'utf8');
    expect(drawn).toContain('Jump: 0.');
    expect(drawn).toContain('100 against each scheme');
    expect(drawn).not.toContain('Lindqvist');
    await sliderule(['sheet', demo, ...page, '--names', '--out', out.replace('page', 'named')]);
    expect(readFileSync(out.replace('page', 'named'), 'utf8')).toContain('Lindqvist');
  });

  it.each([
    [['--play', 'lantern', '--spots'], 7],
    [['--cards'], 2],
    [['--cards', '--play', 'lantern,ferry'], 2],
    [['--book'], 25],
  ])('prints more than a sheet: %o', async (words, count) => {
    const out = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'pages.pdf');
    const { code, out: said } = await sliderule(['sheet', demo, ...words, '--no-worths', '--out', out]);
    expect(code).toBe(0);
    expect(said).toContain(`${count} pages of Letter.`);
    expect(readFileSync(out, 'latin1').match(/\/Type \/Page\b/g)).toHaveLength(count);
  });

  it('plays all plays of the cards against the schemes at once', async () => {
    const out = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'cards.pdf');
    const asked = ['--cards', '--against', 'box-zone,jump', '--trials', '20', '--out', out];
    expect((await sliderule(['sheet', demo, ...asked])).code).toBe(0);
    const pdf = await getDocument({ data: new Uint8Array(readFileSync(out)), verbosity: 0 }).promise;
    const { items } = await (await pdf.getPage(1)).getTextContent();
    const words = items
      .map((item) => ('str' in item ? item.str : ''))
      .join(' ')
      .replace(/\s+/g, ' ');
    expect(words).toContain('20 against each scheme');
    expect(words.match(/0\.\d\d \(/g)).toHaveLength(2 * demoPlaybook.plays.length);
  });

  it('puts an opponent on one page, with our plays by what they make against him', async () => {
    const out = join(mkdtempSync(join(tmpdir(), 'sheet-')), 'page.svg');
    const asked = ['--opponent', 'copper-falls', '--trials', '40', '--out', out];
    expect((await sliderule(['sheet', demo, ...asked])).code).toBe(0);
    const words = readFileSync(out, 'utf8');
    expect(words).toContain('Against Copper Falls');
    expect(words).toContain('40 against each scheme');
    const goals = [...words.matchAll(/>(0\.\d\d) \(0\.\d\d to/g)].map(([, mean]) => Number(mean));
    expect(goals).toHaveLength(demoPlaybook.plays.length);
    expect(goals).toEqual([...goals].sort((one, other) => other - one));
  });

  it.each([
    [['--opponent', 'nobody'], 'unknown opponent after --opponent: nobody (expected copper-falls, northgate)'],
    [['--opponent', 'northgate', '--against', 'jump'], '--opponent and --against do not go together'],
    [['--opponent', 'northgate', '--book'], '--book and --opponent do not go together'],
    [['--play', 'lantern', '--spots', '--out', 'page.png'], 'only as .pdf'],
    [['--cards', '--book'], '--cards and --book do not go together'],
    [['--spots'], 'name one of lantern, quarry, ferry after --play'],
    [['--play', 'lantern', '--out', 'page.docx'], 'invalid --out: page.docx'],
    [['--play', 'lantern', '--paper', 'a3'], 'invalid --paper: a3'],
    [[], 'a sheet is that of one play'],
  ])('is refused with a reason: %o', async (words, reason) => {
    const { code, err } = await sliderule(['sheet', demo, ...words]);
    expect(code).toBe(2);
    expect(err.replace(/\s+/g, ' ')).toContain(reason);
  });
});

describe('trace', () => {
  const asked = ['--play', 'lantern', '--against', 'box-zone', '--seed', '3'];

  it('tells a man-up in words, the same one every time', async () => {
    const first = await sliderule(['trace', demo, ...asked]);
    expect(first.code).toBe(0);
    expect(first.out).toMatch(/^ 0\.0 s {2}Whistle: TR restarts/m);
    expect(first.out).toContain('TR 7 Ravi Lindqvist');
    expect(widest(first.out.split('\n\nSame man-up again')[0] ?? '')).toBeLessThanOrEqual(tableWidth);
    expect(await sliderule(['trace', demo, ...asked])).toEqual(first);
  });

  it('says what the odds of a pass are, and ends with how much of the play was run', async () => {
    for (const trial of ['0', '1', '2', '3']) {
      const { out } = await sliderule(['trace', demo, ...asked, '--trial', trial]);
      expect(out.replace(/\s+/g, ' ')).toContain('Odds of a pass: that it gets past the sticks and is caught');
      expect(out).toMatch(
        /\n\n(The play never began\.|Of the play: \d of \d steps begun)[^\n]*(\n[^\n]+)*\n\nSame man-up again/,
      );
      const begun = new Set(out.match(/Step "[a-z]+" begins/g));
      if (/Of the play: (\d)/.exec(out)?.[1] !== undefined && !out.includes('last ten')) {
        expect(Number(/Of the play: (\d)/.exec(out)![1])).toBe(begun.size);
      }
    }
  });

  it('tells another one for another trial, and more with --duties', async () => {
    const first = await sliderule(['trace', demo, ...asked]);
    const second = await sliderule(['trace', demo, ...asked, '--trial', '1']);
    const duties = await sliderule(['trace', demo, ...asked, '--duties']);
    expect(second.out).not.toBe(first.out);
    expect(duties.out.split('\n').length).toBeGreaterThan(first.out.split('\n').length);
  });

  it('draws pictures into a new folder, and never into a full one', async () => {
    const pictures = join(folder, 'pictures');
    const { code, out } = await sliderule(['trace', demo, ...asked, '--svg', pictures, '--every', '5']);
    expect(code).toBe(0);
    const names = readdirSync(pictures);
    expect(out).toContain(`${names.length} pictures`);
    expect(names[0]).toBe('0001-0.00s.svg');
    expect(readFileSync(join(pictures, names[1] ?? ''), 'utf8')).toContain('>5.0 s</text>');
    const again = await sliderule(['trace', demo, ...asked, '--svg', pictures]);
    expect(again.code).toBe(2);
    expect(again.err).toContain('not empty');
  });

  it('plays an opponent in what he plays most, as well as he plays it', async () => {
    writeFileSync(demo, JSON.stringify(withOpponents));
    const them = await sliderule(['trace', demo, '--play', 'lantern', '--against', 'them', '--seed', '3']);
    const jump = await sliderule(['trace', demo, '--play', 'lantern', '--against', 'jump', '--seed', '3']);
    expect(them.code).toBe(0);
    expect(them.out).toMatch(/^Them, who plays this most:\nLantern against Jump/);
    expect(them.out).toContain('--against them');
    expect(them.out.split('\n\n')[1]).not.toBe(jump.out.split('\n\n')[1]);
  });

  it('says at 10U that no team is a man up in games there', async () => {
    const { code, err } = await sliderule(['trace', demo, ...asked, '--level', '10U']);
    expect(code).toBe(0);
    expect(err.replace(/\s+/g, ' ')).toMatch(/no team is a man up/);
    expect((await sliderule(['trace', demo, ...asked])).err).toBe('');
  });

  it('mirrors names and places for the left side', async () => {
    const { code, out } = await sliderule(['trace', demo, ...asked, '--side', 'left']);
    expect(code).toBe(0);
    expect(out).toMatch(/^ 0\.0 s {2}Whistle: TL restarts/m);
  });
});
