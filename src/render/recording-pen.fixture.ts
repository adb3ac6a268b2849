import type { Pen } from './draw-scene.ts';

/** One shape or line of text as it came out of a pen, with how the pen was set. */
export interface Drawn {
  readonly how: 'fill' | 'stroke' | 'fillText' | 'strokeText';
  /** The outline as SVG writes it, "M0 0L21 0Z" or "circle 0 0 21", or the text with its place, rounded to a tenth. */
  readonly what: string;
  readonly colour: unknown;
  readonly opacity: number;
  readonly widthPx: number;
  readonly dash: string;
  readonly font: string;
  readonly align: string;
}

/** A pen that draws nothing and remembers everything. Its path is kept as shapes, so that what is drawn at once can be told apart. */
export class RecordingPen implements Pen {
  fillStyle: unknown = '#000000';
  strokeStyle: unknown = '#000000';
  globalAlpha = 1;
  lineWidth = 1;
  lineCap = 'butt';
  lineJoin = 'miter';
  font = '';
  textAlign = 'start';
  textBaseline = 'alphabetic';
  /** Fills and strokes since the pen was made: what costs time. */
  strokesAndFills = 0;
  readonly drawn: Drawn[] = [];
  readonly scales: number[] = [];
  readonly clips: string[] = [];
  #dash: readonly number[] = [];
  #shapes: string[] = [];
  #saved = 0;

  save(): void {
    this.#saved += 1;
  }
  restore(): void {
    this.#saved -= 1;
  }
  /** Whether every `save` had its `restore`. */
  get isBalanced(): boolean {
    return this.#saved === 0;
  }
  scale(x: number, y: number): void {
    this.scales.push(x, y);
  }
  beginPath(): void {
    this.#shapes = [];
  }
  closePath(): void {
    this.#add('Z');
  }
  moveTo(x: number, y: number): void {
    this.#shapes.push(`M${pair(x, y)}`);
  }
  lineTo(x: number, y: number): void {
    this.#add(`L${pair(x, y)}`);
  }
  bezierCurveTo(ax: number, ay: number, bx: number, by: number, x: number, y: number): void {
    this.#add(`C${pair(ax, ay)} ${pair(bx, by)} ${pair(x, y)}`);
  }
  arc(x: number, y: number, radius: number): void {
    this.#shapes[this.#shapes.length - 1] = `circle ${pair(x, y)} ${tenth(radius)}`;
  }
  rect(x: number, y: number, width: number, height: number): void {
    this.#shapes.push(`rect ${pair(x, y)} ${pair(width, height)}`);
  }
  clip(): void {
    this.clips.push(...this.#shapes);
  }
  fill(): void {
    this.strokesAndFills += 1;
    for (const shape of this.#shapes) this.#keep('fill', shape, this.fillStyle);
  }
  stroke(): void {
    this.strokesAndFills += 1;
    for (const shape of this.#shapes) this.#keep('stroke', shape, this.strokeStyle);
  }
  setLineDash(dash: number[]): void {
    this.#dash = dash;
  }
  fillText(content: string, x: number, y: number): void {
    this.#keep('fillText', `${content} ${pair(x, y)}`, this.fillStyle);
  }
  strokeText(content: string, x: number, y: number): void {
    this.#keep('strokeText', `${content} ${pair(x, y)}`, this.strokeStyle);
  }

  #add(step: string): void {
    this.#shapes[this.#shapes.length - 1] += step;
  }
  #keep(how: Drawn['how'], what: string, colour: unknown): void {
    const { globalAlpha: opacity, lineWidth: widthPx, font, textAlign: align } = this;
    this.drawn.push({ how, what, colour, opacity, widthPx, dash: this.#dash.join(' '), font, align });
  }
}

function pair(x: number, y: number): string {
  return `${tenth(x)} ${tenth(y)}`;
}

function tenth(value: number): string {
  return String(Math.round(value * 10) / 10 + 0);
}
