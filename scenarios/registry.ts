import { scenario as ferryRotation } from './ferry-rotation/scenario.ts';
import { scenario as flagDown } from './flag-down/scenario.ts';
import { scenario as lanternBoxZone } from './lantern-box-zone/scenario.ts';
import { scenario as pickedOff } from './picked-off/scenario.ts';
import { scenario as quarryPick } from './quarry-pick/scenario.ts';
import type { Scenario } from './scenario.ts';
import { scenario as twoDown } from './two-down/scenario.ts';

/** Every scenario; a test holds each id to its folder's name. */
export const scenarios: readonly Scenario[] = [lanternBoxZone, quarryPick, ferryRotation, pickedOff, flagDown, twoDown];
