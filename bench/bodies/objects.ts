import { brakeShare } from '../../src/engine/index.ts';
import { drill } from './drill.ts';

/*
 * The same step as a program usually begins: one object per man, a new vector for each result. The formulas are those of the
 * engine's motion and contact (docs/models/motion.md), so that both come to the same places.
 */

class Vector {
  constructor(
    readonly x: number,
    readonly y: number,
  ) {}

  plus(other: Vector): Vector {
    return new Vector(this.x + other.x, this.y + other.y);
  }

  minus(other: Vector): Vector {
    return new Vector(this.x - other.x, this.y - other.y);
  }

  times(factor: number): Vector {
    return new Vector(this.x * factor, this.y * factor);
  }

  dot(other: Vector): number {
    return this.x * other.x + this.y * other.y;
  }

  get length(): number {
    return Math.sqrt(this.dot(this));
  }

  shortenedTo(most: number): Vector {
    return this.length > most ? this.times(most / this.length) : this;
  }
}

class Man {
  velocity = new Vector(0, 0);
  private readonly kept: number;
  private readonly carried: number;
  private readonly perOld: number;
  private readonly perNew: number;
  private readonly brakeSpeed: number;
  private readonly lastSpeed: number;
  private readonly bend: number;

  constructor(
    public position: Vector,
    private readonly topSpeed: number,
    private readonly drag: number,
    private readonly step: number,
  ) {
    const lost = -Math.expm1(-drag * step);
    this.kept = 1 - lost;
    this.carried = lost / drag;
    this.perNew = (step - this.carried) / lost;
    this.perOld = this.carried - this.kept * this.perNew;
    this.brakeSpeed = brakeShare * topSpeed;
    const largestEta = Math.sqrt(2 * (1 / brakeShare - Math.log1p(1 / brakeShare)));
    this.bend = this.brakeSpeed * (0.5 / drag + this.perNew * (1 / 3 + largestEta / 36));
    this.lastSpeed = this.perOld * drag * this.brakeSpeed;
  }

  moveToward(target: Vector): void {
    const away = target.minus(this.position);
    const distance = away.length;
    if (!(distance > samePlace)) {
      this.brake();
      return;
    }
    const direction = away.times(1 / distance);
    const closing = this.velocity.dot(direction);
    const wanted = this.speedToStop(distance, closing);
    if (wanted >= this.kept * closing + (1 - this.kept) * this.topSpeed) {
      const aim = away.minus(this.velocity.times(this.driftTime(distance, closing)));
      this.push(aim.length > samePlace ? aim.times(this.topSpeed / aim.length) : new Vector(0, 0));
      return;
    }
    const push = direction
      .times(wanted)
      .minus(this.velocity.times(this.kept))
      .times(1 / (1 - this.kept));
    this.push(push.shortenedTo(Math.max(this.topSpeed, this.brakeSpeed)));
  }

  private brake(): void {
    if (this.velocity.length < samePlace) {
      this.velocity = new Vector(0, 0);
      return;
    }
    this.push(this.velocity.times(-this.kept / (1 - this.kept)).shortenedTo(this.brakeSpeed));
  }

  private push(push: Vector): void {
    this.position = this.position.plus(this.velocity.times(this.carried)).plus(push.times(this.step - this.carried));
    this.velocity = this.velocity.times(this.kept).plus(push.times(1 - this.kept));
  }

  private speedToStop(distance: number, closing: number): number {
    const left = distance - this.perOld * closing;
    const last = left / (this.perOld + this.perNew);
    if (last <= this.lastSpeed) return Math.max(last, 0);
    const half = this.perNew * this.brakeSpeed;
    const discriminant = half * half - 4 * this.bend * 0.5 * this.perOld * this.lastSpeed + 4 * this.bend * left;
    const eta = (Math.sqrt(discriminant) - half) / (2 * this.bend);
    return this.brakeSpeed * eta * (1 + eta * (1 / 3 + eta * (1 / 36 - eta * (1 / 270 - eta / 4320))));
  }

  private driftTime(distance: number, closing: number): number {
    const time = distance / this.topSpeed;
    const at = this.drag * time;
    const first = 1 + at * (0.5 + at / 12);
    const second = time * (first + 1 - closing / this.topSpeed);
    const around = this.drag * second;
    return (second * first) / (first * first + around * (0.5 * first + around / 12));
  }
}

/** Yards, and yards a second, that count as nothing. */
const samePlace = 1e-9;

/** Distance between two bodies that touch, yd. */
const touching = 0.75;

function separate(a: Man, b: Man): void {
  const apart = b.position.minus(a.position);
  if (apart.length >= touching) return;
  const direction = apart.length > samePlace ? apart.times(1 / apart.length) : new Vector(0, 1);
  const overlap = touching - apart.length;
  a.position = a.position.minus(direction.times(overlap / 2));
  b.position = b.position.plus(direction.times(overlap / 2));
  const closing = a.velocity.minus(b.velocity).dot(direction);
  if (closing <= 0) return;
  a.velocity = a.velocity.minus(direction.times(closing / 2));
  b.velocity = b.velocity.plus(direction.times(closing / 2));
}

/** The drill with objects; places of all men at the end, x and y in turn. */
export function runObjects(contacts: boolean): Float64Array {
  const { men, steps, each, places, starts, topSpeed, drag, step } = drill;
  const team = Array.from(
    { length: men },
    (_, man) => new Man(new Vector(starts[2 * man]!, starts[2 * man + 1]!), topSpeed, drag, step),
  );
  for (let now = 0; now < steps; now++) {
    const base = 2 * men * Math.floor(now / each);
    team.forEach((man, index) => {
      man.moveToward(new Vector(places[base + 2 * index]!, places[base + 2 * index + 1]!));
    });
    if (!contacts) continue;
    team.forEach((man, index) => {
      for (const other of team.slice(index + 1)) separate(man, other);
    });
  }
  return Float64Array.from(team.flatMap(({ position }) => [position.x, position.y]));
}
