/** What is kept, for how long, and that one control loses all of it; a bad file changes nothing. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, LONG_RUN, test } from './fixtures';
import { chooseFile, explained, open, openFile, withoutPicture } from './walk';

const handball = readFileSync(new URL('../../content/cases/handball-zone-2.case.json', import.meta.url), 'utf8');
const current = (page: Page) => page.locator('.claim-list > .claim:not(.claim-old)');

const addMass = async (page: Page, kg: string) => {
  await page.getByRole('button', { name: 'Add a claim' }).click();
  await page.getByLabel('About').selectOption({ label: 'Height' });
  await page.getByLabel('Height in cm').fill(kg);
  await page.getByRole('button', { name: 'Add this claim' }).click();
};

test('claims are added, changed, removed, undone and redone', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  const before = await current(page).count();
  await addMass(page, '171');
  const added = current(page).filter({ hasText: '171' });
  if ((await added.count()) > 1) throw new Error('one claim was added twice');
  await expect(added).toHaveCount(1);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(current(page)).toHaveCount(before);
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(added).toHaveCount(1);
  await added.getByRole('button', { name: 'Change: Height' }).click();
  await page.getByLabel('Height in cm').fill('172');
  await page.getByRole('button', { name: 'Replace the claim' }).click();
  await expect(current(page).filter({ hasText: '172' })).toHaveCount(1);
  await expect(page.locator('.claim-old').filter({ hasText: '171' })).toHaveCount(1);
  await current(page).filter({ hasText: '172' }).getByRole('button', { name: 'Remove: Height' }).click();
  await expect(current(page).filter({ hasText: '172' })).toHaveCount(0);
});

test('a value that cannot be is refused with a reason, and the case stays as it was', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  const before = await page.locator('.claim-list').textContent();
  await addMass(page, '1710');
  await expect(page.locator('.problem')).toContainText('Nothing was changed');
  expect(await page.locator('.claim-list').textContent()).toBe(before);
});

test('a downloaded case opens again as the same case', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  const claims = await page.locator('.claim-list').textContent();
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.locator('.note').getByRole('button', { name: 'Download the case file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^underfoot-.+\.case\.json$/);
  const text = readFileSync(await download.path(), 'utf8');
  await page.locator('.bar-case').click();
  await page.getByRole('button', { name: 'New explanation' }).click();
  await openFile(page, text);
  await page.goto(`${appUrl}#view=known`);
  expect(await page.locator('.claim-list').textContent()).toBe(claims);
});

const bad: readonly (readonly [string, string | Buffer])[] = [
  ['not JSON', 'hello'],
  ['an unknown key', handball.replace('"claims"', '"patientName": "x", "claims"')],
  ['a later version', handball.replace(/"version": \d+/, '"version": 99')],
  ['a mass in another unit', handball.replace(/("subject": "massKg",\s*"value": )[\d.]+/, '$17500')],
  [
    'an injury that does not exist',
    handball.replace(/("subject": "injury",\s*"value": )"[^"]+"/, '$1"no-such-injury"'),
  ],
  ['a file of 40 MB', Buffer.alloc(40 * 1024 * 1024, 32)],
];
test(
  'a bad file is refused with what, where and a remedy, whatever is wrong with it',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await withoutPicture(page);
    await open(page, appUrl, '#view=known');
    const before = await page.locator('.claim-list').textContent();
    const problem = page.locator('.problem');
    for (const [name, text] of bad) {
      expect(String(text).slice(0, 4000), name).not.toBe(handball.slice(0, 4000));
      await chooseFile(page, text);
      await expect(problem, name).toBeVisible();
      await expect(problem, name).toContainText('Nothing was changed');
      expect(await problem.locator('p').count(), name).toBeGreaterThanOrEqual(3);
      expect(await page.locator('.claim-list').textContent(), name).toBe(before);
      await problem.getByRole('button', { name: 'All right' }).click();
      await expect(problem, name).toBeHidden();
    }
  },
);

const stores = (page: Page) =>
  page.evaluate(async () => ({
    databases: (await indexedDB.databases()).map(({ name }) => name),
    local: localStorage.length,
    session: sessionStorage.length,
    caches: 'caches' in window ? (await caches.keys()).length : 0,
  }));

/** Everything in every database of this origin, as text. */
const kept = (page: Page) =>
  page.evaluate(async () => {
    const request = <T>(asked: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
    const texts: string[] = [];
    for (const { name } of await indexedDB.databases()) {
      const database = await request(indexedDB.open(name ?? ''));
      for (const store of database.objectStoreNames) {
        texts.push(JSON.stringify(await request(database.transaction(store).objectStore(store).getAll())));
      }
      database.close();
    }
    return texts.join();
  });

test('work survives a reload, and Finish empties every store of this origin', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl, '#view=known');
  await addMass(page, '173');
  await expect(current(page).filter({ hasText: '173' })).toHaveCount(1);
  await expect.poll(() => kept(page)).toContain('173');
  await page.reload();
  await explained(page);
  await expect(current(page).filter({ hasText: '173' })).toHaveCount(1);
  await page.evaluate(() => {
    localStorage.setItem('left', 'over');
    sessionStorage.setItem('left', 'over');
  });
  await page.locator('.bar-case').click();
  await page.getByRole('button', { name: 'Finish and remove everything' }).click();
  await page.getByRole('button', { name: 'Remove everything', exact: true }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Underfoot');
  await expect.poll(() => stores(page)).toEqual({ databases: [], local: 0, session: 0, caches: 0 });
  await page.goto(`${appUrl}#view=known`);
  await page.reload();
  await explained(page);
  await expect(current(page).filter({ hasText: '173' })).toHaveCount(0);
});

test('keeping on the device is a choice, off until it is made', async ({ page, appUrl }) => {
  await withoutPicture(page);
  await open(page, appUrl);
  await page.locator('.bar-case').click();
  const keep = page.getByLabel('Keep on this device');
  await expect(keep).not.toBeChecked();
  await keep.check();
  await expect(page.locator('.panel')).toContainText('until you press Finish');
});

/** The invented case as somebody has worked with it: an outcome, the clinic's own answers, a forecast that was given, a fixture. */
const worked = (() => {
  const { demo: _, ...file } = JSON.parse(handball);
  const by = { status: 'reported', source: { kind: 'person' } };
  const ended = { endpoint: 'training', result: 'given up', on: '2026-09-30' };
  return {
    ...file,
    id: 'worked-with',
    claims: [
      { id: 'c1', subject: 'bone', value: 'metatarsal5', ...by },
      { id: 'c2', subject: 'outcome', value: ended, ...by },
    ],
    forecasts: [
      {
        endpoint: 'training',
        option: 'screw',
        injury: 'mt5-metaphyseal',
        madeOn: null,
        start: null,
        atWeek: 6,
        branches: [
          { name: 'uneventful', chance: 0.8, time: { mu: 2.3, sigma: 0.4 } },
          { name: 'problem', chance: 0.15, time: null },
          { name: 'notReturned', chance: 0.05, time: null },
        ],
        studies: ['a-study'],
      },
    ],
    clinic: { stage: null, stages: {}, answers: { driving: 'not before the next review' } },
    fixtures: [{ on: '2027-01-02', name: 'away match' }],
  };
})();

test(
  'how it ended is said with its day, its endpoint and its result, and read back',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl, '#view=known');
    await page.getByRole('button', { name: 'Add a claim' }).click();
    await page.getByLabel('About').selectOption({ label: 'How it ended' });
    await page.getByLabel('What was waited for?').selectOption('match play');
    await page.getByLabel('On which day?').fill('2026-10-05');
    await page.getByRole('button', { name: 'Add this claim' }).click();
    await expect(page.locator('.claim-form [role="alert"]')).toBeVisible();
    await page.getByLabel('Was it reached?').selectOption({ label: 'Given up' });
    await page.getByRole('button', { name: 'Add this claim' }).click();
    const added = current(page).filter({ hasText: 'How it ended' });
    await expect(added).toContainText('the return to matches was given up');
    await added.getByRole('button', { name: 'Change: How it ended' }).click();
    await expect(page.getByLabel('What was waited for?')).toHaveValue('match play');
    await expect(page.getByLabel('On which day?')).toHaveValue('2026-10-05');
    await page.getByLabel('Was it reached?').selectOption({ label: 'Reached' });
    await page.getByRole('button', { name: 'Replace the claim' }).click();
    await expect(added).toContainText('the first match was played');
  },
);

test(
  'what stands beside the claims is downloaded with them, survives a reload, and is gone with Finish',
  LONG_RUN,
  async ({ page, appUrl }) => {
    await open(page, appUrl, '#view=known');
    await openFile(page, JSON.stringify(worked));
    await page.goto(`${appUrl}#view=known`);
    const ended = current(page).filter({ hasText: 'the return to training was given up' });
    await expect(ended).toHaveCount(1);
    await expect.poll(() => kept(page)).toContain('away match');
    await page.reload();
    await expect(ended).toHaveCount(1);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('.note').getByRole('button', { name: 'Download the case file' }).click(),
    ]);
    expect(JSON.parse(readFileSync(await download.path(), 'utf8'))).toEqual(worked);
    await page.locator('.bar-case').click();
    await page.getByRole('button', { name: 'Finish and remove everything' }).click();
    await page.getByRole('button', { name: 'Remove everything', exact: true }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Underfoot');
    await expect.poll(() => stores(page)).toEqual({ databases: [], local: 0, session: 0, caches: 0 });
  },
);

test('a case file of version 1 still opens, with its claims', LONG_RUN, async ({ page, appUrl }) => {
  await open(page, appUrl, '#view=known');
  const { forecasts: _, fixtures: __, clinic: ___, ...old } = worked;
  await openFile(page, JSON.stringify({ ...old, version: 1, claims: old.claims.slice(0, 1) }));
  await page.goto(`${appUrl}#view=known`);
  await expect(current(page)).toHaveCount(1);
  await expect(page.locator('.problem')).toHaveCount(0);
});
