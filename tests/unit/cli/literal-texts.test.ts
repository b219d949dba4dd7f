/** No component writes a text of its own: all of them come from content/words.yaml or from the wording, by key. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { literalTexts } from '../../tools/jsx-texts';

const SRC = join(import.meta.dirname, '../../../src');
const FOLDERS = ['app', 'pages', 'stage', 'render'];

const found = (code: string): string[] => literalTexts('x.tsx', code).map(({ line, text }) => `${line} ${text}`);

describe('the scanner finds', () => {
  it.each([
    ['a child', 'const a = <p>\n  Hello\n</p>;', ['2 Hello']],
    ['a string in braces', "const a = <p>{'Hello'}</p>;", ['1 Hello']],
    ['both arms of a choice', "const a = <p>{x ? 'Yes' : 'No'}</p>;", ['1 Yes', '1 No']],
    ['what follows a condition', "const a = <p>{x && 'Yes'}</p>;", ['1 Yes']],
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the template is in the code that is scanned
    ['the parts of a template', 'const a = <p>{`${n} weeks`}</p>;', ['1  weeks']],
    ['a child of a fragment', 'const a = <>Hello</>;', ['1 Hello']],
    ['a label that is heard', 'const a = <p aria-label="Foot" />;', ['1 Foot']],
    ['a title in braces', "const a = <p title={'Foot'} />;", ['1 Foot']],
    ['a nested one', 'const a = f(() => <p><b>{g(<i alt="Foot" />)}</b></p>);', ['1 Foot']],
    ['text put into the DOM', "document.title = 'Foot';", ['1 Foot']],
  ])('%s', (_name, code, expected) => {
    expect(found(code)).toEqual(expected);
  });

  it.each([
    ['a word by key', "const a = <p aria-label={say('a.b')}>{say('c.d')}</p>;"],
    ['class, role and id', 'const a = <p className="small print" role="note" id="x" data-kind="y" />;'],
    ['signs and figures', 'const a = <p>1 / 2 · {n} –</p>;'],
    ['a comment', 'const a = <p>{/* Hello */}</p>;'],
    ['a comparison', "const a = <p>{x === 'yes' && say('a')}</p>;"],
  ])('not %s', (_name, code) => {
    expect(found(code)).toEqual([]);
  });

  it('refuses a file that does not parse', () => {
    expect(() => literalTexts('x.tsx', 'const a = <p>;')).toThrow(SyntaxError);
  });
});

describe('the components', () => {
  const files = FOLDERS.filter((folder) => existsSync(join(SRC, folder))).flatMap((folder) =>
    readdirSync(join(SRC, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(folder, name)),
  );

  it('are there', () => {
    expect(files.filter((name) => name.endsWith('.tsx')).length).toBeGreaterThan(3);
  });

  it('hold no text of their own', () => {
    const breaches = files.flatMap((file) =>
      literalTexts(file, readFileSync(join(SRC, file), 'utf8')).map(({ line, text }) => `src/${file}:${line} ${text}`),
    );
    expect(breaches).toEqual([]);
  });
});
