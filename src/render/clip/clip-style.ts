import type { PaletteName } from '../palettes.ts';
import type { StyleName } from '../scene.ts';
import { fontFamily, haloPx, type SvgStyle, svgStyles } from '../svg-styles.ts';

/** What a clip draws, in the looks that the same things have everywhere else. */
export const clipLooks: readonly StyleName[] = [
  'turf',
  'boxArea',
  'paint',
  'midline',
  'creaseArea',
  'goalNet',
  'goalLine',
  'attacker',
  'carrier',
  'attackerText',
  'carrierText',
  'defenderHalo',
  'defender',
  'defenderText',
  'keeper',
  'keeperText',
  'ball',
  'pass',
  'passPast',
  'shot',
  'trail',
  'openRing',
  'openText',
];

/** The style sheet of a clip's page: light or dark as the device is, one column on a phone, two where there is room. */
export function clipStyle(): string {
  return pageStyle(clipLooks, pageRules);
}

/** The style sheet of a page that draws these looks, by the rules of its own. */
export function pageStyle(looks: readonly StyleName[], rules: string): string {
  return [
    `:root{${lightPage}}`,
    shapes('paper', looks),
    `@media (prefers-color-scheme:dark){:root{${darkPage}}`,
    shapes('dark', looks),
    '}',
    rules,
  ].join('\n');
}

function shapes(palette: PaletteName, looks: readonly StyleName[]): string {
  return looks.map((style) => `.${style}{${declarations(svgStyles[palette][style])}}`).join('\n');
}

function declarations(style: SvgStyle): string {
  const { fill, stroke, widthPx, dashPx, opacity, fontPx, bold, haloColour } = style;
  return [
    `fill:${fill ?? 'none'}`,
    ...(haloColour === undefined ? [] : [`stroke:${haloColour};stroke-width:${haloPx};paint-order:stroke`]),
    ...(stroke === undefined ? [] : [`stroke:${stroke};stroke-width:${widthPx ?? 1}`]),
    ...(dashPx === undefined ? [] : [`stroke-dasharray:${dashPx.join(' ')}`]),
    ...(opacity === undefined ? [] : [`opacity:${opacity}`]),
    ...(fontPx === undefined ? [] : [`font-size:${fontPx}px`]),
    ...(bold === true ? ['font-weight:700'] : []),
    'stroke-linecap:round;stroke-linejoin:round',
  ].join(';');
}

// The grounds and inks of the workbench's two calm looks; the shapes above bring their own.
const lightPage =
  'color-scheme:light;--ground:#f1f0ea;--panel:#fdfcf8;--ink:#16263a;--quiet:#4f5d57;--rule:#cfd3ca;--edge:#7d8a83;' +
  '--chosen:#1c4a7d;--on-chosen:#fff;--mark:#e3ecf6;--focus:#0a58b8';
const darkPage =
  'color-scheme:dark;--ground:#0f1718;--panel:#172123;--ink:#eef2ec;--quiet:#aebab4;--rule:#304044;--edge:#7b8c8b;' +
  '--chosen:#9cc9f7;--on-chosen:#0c1a28;--mark:#1f3347;--focus:#8cc2ff';

// Everything that is pressed is 44 px high: a thumb needs that. What is said keeps room for four lines, so that nothing below it jumps.
const pageRules = `
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--ground);color:var(--ink);font:16px/1.4 ${fontFamily}}
main{max-width:78rem;margin:0 auto;padding:.75rem 1rem 2rem;display:grid;gap:.75rem}
h1{font-size:1.375rem;line-height:1.2;margin:0}
h2{font-size:1rem;margin:0}
p{margin:0}
.quiet{color:var(--quiet);font-size:.875rem}
.picks{display:grid;grid-template-columns:minmax(0,1.2fr) minmax(0,1fr);gap:.5rem}
label,legend{display:block;font-size:.875rem;color:var(--quiet);padding:0}
select,button{font:inherit;color:var(--ink);background:var(--panel);border:1px solid var(--edge);border-radius:3px;min-height:2.75rem}
select{width:100%;padding:0 .25rem;text-overflow:ellipsis}
button{cursor:pointer;padding:0 .75rem}
:focus-visible{outline:3px solid var(--focus);outline-offset:2px}
.field{display:block;width:100%;height:auto;border:1px solid var(--rule);border-radius:3px;touch-action:pan-y}
.field text{font-family:${fontFamily}}
.me{fill:none;stroke:var(--ink);stroke-width:4}
.said{min-height:5.6em;font-size:1.0625rem}
.time{font-variant-numeric:tabular-nums;color:var(--quiet);white-space:nowrap}
.bar{display:grid;grid-template-columns:auto 1fr auto;gap:.5rem}
.bar .main{background:var(--chosen);color:var(--on-chosen);border-color:var(--chosen);font-weight:700}
.scrub{display:grid;grid-template-columns:1fr auto;gap:.75rem;align-items:center}
input[type=range]{width:100%;height:2.75rem;margin:0;accent-color:var(--chosen)}
fieldset{border:0;margin:0;padding:0;min-width:0}
.speeds{display:grid;grid-template-columns:repeat(3,1fr)}
.speeds label{position:relative;color:var(--ink);font-size:1rem}
.speeds input{position:absolute;inset:0;width:100%;height:100%;margin:0;opacity:0;cursor:pointer}
.speeds span{display:flex;align-items:center;justify-content:center;min-height:2.75rem;border:1px solid var(--edge);background:var(--panel);margin-left:-1px}
.speeds input:checked+span{background:var(--chosen);color:var(--on-chosen);font-weight:700}
.speeds input:focus-visible+span{outline:3px solid var(--focus);outline-offset:2px}
.steps{list-style:none;margin:0;padding:0;border-top:1px solid var(--rule)}
.steps button{display:grid;grid-template-columns:3.75rem 1fr;width:100%;text-align:left;border:0;border-bottom:1px solid var(--rule);border-left:4px solid transparent;border-radius:0;background:none;padding:.5rem .5rem}
.steps [aria-current]{background:var(--mark);border-left-color:var(--chosen);font-weight:700}
@media (min-width:60rem){
main{grid-template-columns:minmax(0,calc((100vh - 7rem)*1.06)) minmax(22rem,1fr);grid-template-rows:repeat(6,auto) 1fr;column-gap:1.5rem}
.stage{grid-column:1;grid-row:2/8;align-self:start;position:sticky;top:.75rem}
header{grid-column:1/-1}
.side{grid-column:2}
}
`.trim();
