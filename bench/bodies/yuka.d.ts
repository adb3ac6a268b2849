/** What the bench uses of yuka 0.7.8, which ships no types. */
declare module 'yuka' {
  export class Vector3 {
    constructor(x?: number, y?: number, z?: number);
    x: number;
    y: number;
    z: number;
    set(x: number, y: number, z: number): this;
  }

  export class ArriveBehavior {
    constructor(target: Vector3, deceleration?: number, tolerance?: number);
  }

  export class Vehicle {
    maxSpeed: number;
    maxForce: number;
    updateOrientation: boolean;
    readonly position: Vector3;
    readonly steering: { add(behavior: ArriveBehavior): void };
    update(seconds: number): this;
  }
}
