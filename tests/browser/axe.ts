/** What axe finds on a page as it stands, one line a rule. */
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

export const violations = async (page: Page, without: string[] = []): Promise<string[]> => {
  const { violations: found } = await new AxeBuilder({ page })
    .disableRules(without)
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(' | ')}`);
};
