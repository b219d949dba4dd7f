import { describe, expect, test } from 'vitest';
import { explanationText } from '../../../src/cli/explanation-text';
import { QUESTION_IDS, READERS } from '../../../src/ids';
import { wordQuestion } from '../../../src/wording';
import { content, DEMOS, demoOnDefaultFoot, explained } from '../../tools/explained';

describe.each(DEMOS)('%s as text', (demo) => {
  const explanation = explained(demoOnDefaultFoot(demo));
  const more = content.words['note.more'] ?? '';

  test.each(READERS)(
    '%s: answers first, what is opened for more after all of them, no line of a question twice',
    (reader) => {
      const lines = explanationText(content, explanation, reader).split('\n');
      const titles = QUESTION_IDS.map((id) => wordQuestion(content, explanation, id, reader).title);
      const short = titles.map((title) => lines.indexOf(title));
      const opened = titles.map((title) => lines.indexOf(`${title} ${more}`));
      expect(short.every((at, i) => at > (short[i - 1] ?? -1))).toBe(true);
      const present = opened.filter((at) => at >= 0);
      expect(present.length).toBeGreaterThan(2);
      expect(Math.min(...present)).toBeGreaterThan(Math.max(...short));
      for (const [i, at] of opened.entries()) {
        if (at < 0) continue;
        const next = lines.findIndex((line, k) => k > at && line.endsWith(` ${more}`));
        const own = lines.slice(at + 1, next < 0 ? undefined : next).filter((line) => line.startsWith('- '));
        expect(new Set(own).size, titles[i]).toBe(own.length);
      }
    },
  );

  test('what a patient reads unopened is a page or two, and says who decides', () => {
    const lines = explanationText(content, explanation, 'patient').split('\n');
    const page = lines.slice(
      0,
      lines.findIndex((line) => line.endsWith(` ${more}`)),
    );
    expect(page.length).toBeLessThan(80);
    expect(page.join(' ')).toContain('The one who treats you decides.');
  });
});
