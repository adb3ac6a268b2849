import { describe, expect, it } from 'vitest';
import { createOfflineKeeper, type WorkerRegistration, type WorkerVersion } from './offline-keeper.ts';

/** One version of the workbench, whose life is told by the test. */
class Version extends EventTarget implements WorkerVersion {
  readonly messages: string[] = [];
  constructor(public state: string) {
    super();
  }
  postMessage({ type }: { readonly type: string }): void {
    this.messages.push(type);
  }
}

class Registration extends EventTarget implements WorkerRegistration {
  active: Version | null = null;
  installing: Version | null = null;
  waiting: Version | null = null;
  looks = 0;
  async update(): Promise<void> {
    this.looks++;
    throw new TypeError('no network');
  }
  find(): Version {
    this.installing = new Version('installing');
    this.dispatchEvent(new Event('updatefound'));
    return this.installing;
  }
  move(version: Version, stage: 'installed' | 'activated'): void {
    this.installing = null;
    this.waiting = stage === 'installed' ? version : null;
    if (stage === 'activated') this.active = version;
    version.state = stage;
    version.dispatchEvent(new Event('statechange'));
  }
}

async function page(registration: Registration | undefined) {
  let reloads = 0;
  const target = new EventTarget();
  const keeper = createOfflineKeeper({
    container: registration && Object.assign(target, { register: async () => registration }),
    workerAddress: './sw.js',
    reload: () => reloads++,
  });
  let calls = 0;
  keeper.subscribe(() => calls++);
  await keeper.start();
  return {
    keeper,
    controllerChange: () => target.dispatchEvent(new Event('controllerchange')),
    reloads: () => reloads,
    calls: () => calls,
  };
}

/** A browser in which one version runs already. */
function running(): Registration {
  const registration = new Registration();
  registration.active = new Version('activated');
  return registration;
}

describe('the first visit', () => {
  it('keeps the workbench, and calls that no new version', async () => {
    const registration = new Registration();
    registration.installing = new Version('installing');
    const first = registration.installing;
    const { keeper, calls } = await page(registration);
    expect(keeper.state()).toEqual({ keeping: 'not-yet', update: 'none' });
    registration.move(first, 'installed');
    expect(keeper.state()).toEqual({ keeping: 'not-yet', update: 'none' });
    registration.move(first, 'activated');
    expect(keeper.state()).toEqual({ keeping: 'kept', update: 'none' });
    expect(calls()).toBe(1);
  });

  it('says where nothing can be kept', async () => {
    expect((await page(undefined)).keeper.state().keeping).toBe('impossible');
  });
});

describe('a new version', () => {
  it('waits until it is asked for, and then the page is loaded once', async () => {
    const registration = running();
    const { keeper, reloads } = await page(registration);
    expect(keeper.state()).toEqual({ keeping: 'kept', update: 'none' });
    const next = registration.find();
    expect(keeper.state().update).toBe('none');
    registration.move(next, 'installed');
    expect([keeper.state().update, next.messages, reloads()]).toEqual(['ready', [], 0]);
    keeper.applyUpdate();
    expect([next.messages, reloads()]).toEqual([['SKIP_WAITING'], 0]);
    registration.move(next, 'activated');
    expect(reloads()).toBe(1);
  });

  it('that was found at an earlier visit is still ready', async () => {
    const registration = running();
    registration.waiting = new Version('installed');
    expect((await page(registration)).keeper.state().update).toBe('ready');
  });

  it('that another tab took does not reload this one', async () => {
    const registration = running();
    const { keeper, controllerChange, reloads } = await page(registration);
    const next = registration.find();
    registration.move(next, 'installed');
    registration.move(next, 'activated');
    controllerChange();
    expect([keeper.state().update, reloads()]).toEqual(['taken-elsewhere', 0]);
  });

  it('is not there to be taken before it is', async () => {
    const registration = running();
    const { keeper, reloads } = await page(registration);
    keeper.applyUpdate();
    expect([registration.active?.messages, reloads()]).toEqual([[], 0]);
  });

  it('is looked for at the start and when asked, without a fault when there is no network', async () => {
    const registration = running();
    const { keeper } = await page(registration);
    expect(registration.looks).toBe(1);
    await keeper.look();
    expect(registration.looks).toBe(2);
  });
});
