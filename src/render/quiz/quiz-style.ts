import { clipLooks, pageStyle } from '../clip/clip-style.ts';
import { fontFamily } from '../svg-styles.ts';

/** The style sheet of a quiz's page: light or dark as the device is, one column on a phone, two where there is room. */
export function quizStyle(): string {
  return pageStyle([...clipLooks, 'cueRing', 'cueLane', 'cueRoom', 'cueMove', 'cueMoveHead'], pageRules);
}

// Everything that is pressed is 48 px high: it is pressed in a hurry. Right and wrong are told apart by sign, word and border, and no colour alone. Nothing flashes: the clock's bar
// shrinks and does nothing else.
const pageRules = `
:root{--right:#1c6a3c;--wrong:#9a3412;--bar:#9fb6d0}
@media (prefers-color-scheme:dark){:root{--right:#7fd6a0;--wrong:#f5b08b;--bar:#47627f}}
*{box-sizing:border-box}
[hidden]{display:none!important}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
html{-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0;background:var(--ground);color:var(--ink);font:16px/1.4 ${fontFamily}}
main{max-width:30rem;margin:0 auto;padding:.5rem 1rem 2rem}
section,.part{display:grid;gap:.75rem}
h1{font-size:1.25rem;line-height:1.2;margin:0}
h2{font-size:1.1875rem;line-height:1.25;margin:0}
h3{font-size:1rem;margin:.5rem 0 0}
p,ul,ol,fieldset{margin:0;padding:0}
.quiet{color:var(--quiet);font-size:.875rem}
header{display:flex;justify-content:space-between;align-items:baseline;gap:.75rem;padding-bottom:.5rem}
button,input[type=text]{font:inherit;color:var(--ink);background:var(--panel);border:1px solid var(--edge);border-radius:6px;min-height:3rem}
button{cursor:pointer;padding:.25rem .75rem}
button:disabled{cursor:default;color:var(--quiet);border-style:dashed}
.main{background:var(--chosen);color:var(--on-chosen);border-color:var(--chosen);font-weight:700;width:100%}
.main:disabled{background:var(--panel);color:var(--quiet);border-color:var(--edge)}
:focus-visible{outline:3px solid var(--focus);outline-offset:2px}
h2:focus,h2:focus-visible{outline:none}
.numbers{display:grid;grid-template-columns:repeat(3,1fr);gap:.5rem}
.numbers button{display:grid;gap:0;justify-items:center;line-height:1.2;padding:.5rem}
.numbers b{font-size:1.375rem}
.numbers [aria-pressed=true],.numbers [aria-pressed=true] .quiet{background:var(--chosen);color:var(--on-chosen);border-color:var(--chosen)}
.other{display:flex;gap:.5rem;align-items:center}
.other input{width:5rem;padding:0 .5rem;text-align:center}
fieldset{border:0;min-width:0;display:grid;gap:.25rem}
legend{font-weight:700;padding:0;margin-bottom:.25rem}
.check{display:flex;gap:.625rem;align-items:center;min-height:2.75rem}
.check input{width:1.375rem;height:1.375rem;margin:0;flex:none;accent-color:var(--chosen)}
.how{padding-left:1.25rem;display:grid;gap:.25rem}
.stage{position:relative}
.field{display:block;width:100%;aspect-ratio:1000/945;border:1px solid var(--rule);border-radius:6px;touch-action:manipulation}
.field text{font-family:${fontFamily}}
.me{fill:none;stroke:var(--ink);stroke-width:4}
.canTap{cursor:pointer}
.badge{fill:var(--chosen);stroke:var(--panel);stroke-width:2}
.badgeText{fill:var(--on-chosen);font-weight:700;font-size:17px}
.clock{height:.75rem;border:1px solid var(--edge);border-radius:6px;overflow:hidden;background:var(--panel)}
.clock div{height:100%;background:var(--chosen);transform-origin:left}
.clock.off{visibility:hidden}
.choices{display:grid;grid-template-columns:1fr 1fr;gap:.5rem}
.choices button{display:flex;gap:.625rem;align-items:center;text-align:left;line-height:1.2;min-height:3.5rem;padding:.375rem .625rem;border-width:2px;border-color:var(--chosen);font-weight:700}
.key{flex:none;display:grid;place-items:center;width:1.5rem;height:1.5rem;border-radius:50%;background:var(--chosen);color:var(--on-chosen);font-size:.875rem}
.verdict{border-left:6px solid;padding:.25rem 0 .25rem .75rem;display:grid;gap:.375rem}
.verdict.isRight{border-color:var(--right)}
.verdict.isWrong{border-color:var(--wrong);border-left-style:double}
.worths{list-style:none;display:grid;gap:.625rem}
.worths>li{display:grid;gap:.125rem}
.row{display:grid;grid-template-columns:1.25rem 1fr auto;gap:.375rem;align-items:baseline}
.row b{font-weight:700}
.sign{width:1rem;height:1rem;align-self:center;fill:none;stroke-width:3;stroke-linecap:round}
.isRight .sign{stroke:var(--right)}
.isWrong .sign{stroke:var(--wrong)}
.number{white-space:nowrap;font-variant-numeric:tabular-nums}
.bar{position:relative;height:.625rem;margin-left:1.625rem;background:var(--panel);border:1px solid var(--rule)}
.bar i{position:absolute;inset:0 auto 0 0;background:var(--bar);border-right:3px solid var(--ink)}
.bar s{position:absolute;top:50%;height:2px;background:var(--ink)}
.mine{outline:2px dashed var(--edge);outline-offset:.25rem}
.why{margin-left:1.625rem}
.watch{display:grid;grid-template-columns:1fr 1fr;gap:.5rem}
.said{min-height:2.8em}
.code{font:700 1.375rem/1.5 ui-monospace,Menlo,Consolas,monospace;letter-spacing:.03em;background:var(--panel);border:2px solid var(--ink);border-radius:6px;padding:.5rem .75rem;overflow-wrap:anywhere;user-select:all;-webkit-user-select:all}
.missed{padding-left:1.25rem;display:grid;gap:.5rem}
.score{font-size:1.75rem;font-weight:700;line-height:1.2}
footer{margin-top:1.5rem}
@media (min-width:46rem){
main{max-width:64rem}
#start,#end{max-width:34rem;width:100%;margin:0 auto}
#ask{grid-template-columns:minmax(0,calc(min(56vw,(100vh - 9rem)*1.06))) minmax(17rem,1fr);column-gap:1.5rem;align-items:start}
.left{position:sticky;top:.5rem}
}
`.trim();
