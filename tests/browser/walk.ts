/** Helpers of the browser specs: opening the app, waiting for its own ready signals, counting what a person does. */
import { expect, type Locator, type Page } from '@playwright/test';

/** The words are there and belong to the case and the what-if as they are now. */
export const explained = (page: Page): Promise<void> =>
  expect(page.locator('.page[data-explained="true"]')).toBeAttached({ timeout: 45_000 });

/** Without another address: the first question of the invented case. An address that asks for nothing leads to the start page. */
export const CASE = '#question=where';

export const open = async (page: Page, appUrl: string, address = CASE): Promise<void> => {
  await page.goto(`${appUrl}${address}`);
  await explained(page);
};

/** A case as text of a file, chosen through the app's own file field. */
export const chooseFile = async (page: Page, text: string | Buffer, name = 'x.case.json'): Promise<void> => {
  await page.locator('.bar-case').click();
  await page
    .locator('.panel input[type="file"]')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
};

/** The same, and opened: a case leads to its explanation, and whoever goes elsewhere before that is led away again. */
export const openFile = async (page: Page, text: string): Promise<void> => {
  await chooseFile(page, text);
  await expect(page.locator('.page-explain[data-explained="true"]')).toBeAttached();
};

/** One answer of a question of the way in. */
export const chipOf = (page: Page, question: RegExp, answer: string | RegExp): Locator =>
  page.getByRole('group', { name: question }).locator('label.chip').filter({ hasText: answer }).first();

/** Counts clicks and typed characters: every act of a walk goes through it. */
export const counted = (page: Page) => {
  const count = { clicks: 0, typed: 0 };
  return {
    count,
    click: async (target: Locator) => {
      count.clicks += 1;
      await target.click();
    },
    type: async (target: Locator, text: string) => {
      count.typed += text.length;
      await target.fill(text);
    },
    chip: async (question: RegExp, answer: string | RegExp) => {
      count.clicks += 1;
      await chipOf(page, question, answer).click();
    },
  };
};

/** The page's heading: where the focus goes when what had it is gone and nothing nearer is left. */
export const heading = (page: Page): Locator => page.locator('h1[tabindex="-1"]');

/** Presses a button as a keyboard does: the focus is on it when it vanishes. */
export const pressByKey = async (page: Page, target: Locator, key = 'Enter'): Promise<void> => {
  await target.focus();
  await expect(target).toBeFocused();
  await page.keyboard.press(key);
};

/** What the page does of itself on another size or a change has been done: two frames have passed. */
export const framesLater = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/** From now on keeps what a screen reader is told politely, as the texts stand after each change. */
export const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    new MutationObserver(() => {
      for (const each of document.querySelectorAll('[role="status"]')) {
        const text = each.textContent ?? '';
        if (text !== '' && !heard.includes(text)) heard.push(text);
      }
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });
export const heard = (page: Page): Promise<unknown> => page.evaluate(() => Reflect.get(window, 'heard'));

/** A device without WebGL; to be called before the app is opened. */
export const withoutPicture = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const give = HTMLCanvasElement.prototype.getContext as (kind: string, options?: unknown) => unknown;
    Object.assign(HTMLCanvasElement.prototype, {
      getContext(this: HTMLCanvasElement, kind: string, options?: unknown) {
        return kind.startsWith('webgl') ? null : give.call(this, kind, options);
      },
    });
  });

/**
 * The bands of the loads never come: the page goes on saying that they are being worked out. They take seconds of a processor that
 * the tests share, and most tests look at nothing that they tell. To be called before the app is opened.
 */
export const withoutBands = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const given = Worker.prototype.postMessage as (message: unknown) => void;
    Object.assign(Worker.prototype, {
      postMessage(this: Worker, message: { request?: { bands: string } }) {
        if ((message.request?.bands ?? 'none') === 'none') given.call(this, message);
      },
    });
  });

/** The bands of the loads wait while they are held, so that what stands until they come can be looked at. Before the app is opened. */
export const bandsOnHold = async (page: Page) => {
  await page.addInitScript(() => {
    const given = Worker.prototype.postMessage as (message: unknown) => void;
    const waiting: (() => void)[] = [];
    let held = false;
    Object.assign(Worker.prototype, {
      postMessage(this: Worker, message: { request?: { bands: string } }) {
        const send = (): void => given.call(this, message);
        if (held && (message.request?.bands ?? 'none') !== 'none') waiting.push(send);
        else send();
      },
    });
    Object.assign(window, {
      holdBands(now: boolean) {
        held = now;
        if (!held) for (const send of waiting.splice(0)) send();
      },
    });
  });
  const set = (now: boolean): Promise<void> =>
    page.evaluate((hold) => (Reflect.get(window, 'holdBands') as (now: boolean) => void)(hold), now);
  return { hold: () => set(true), release: () => set(false) };
};
