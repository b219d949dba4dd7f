/**
 * `npm run -s explain -- x.case.json [--reader patient|broadcast|study] [--as text|json|script] [--seconds 30|90|180]`: the
 * explanation on stdout and nothing else. A file that can't be used: what, where and what to do on stderr, exit 1. A call that
 * can't be understood: the usage on stderr, exit 2.
 */
import { readFileSync, statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { prepareAnatomy } from '../anatomy';
import { type CaseFile, type CaseProblem, checkDates, factsOf, readCase, tooBig } from '../cases';
import { checkCase } from '../checks';
import { asTold, explain, footOfCase, NO_WHAT_IF } from '../explain';
import { READERS, type Reader } from '../ids';
import { SCRIPT_SECONDS, type ScriptSeconds, scriptOf, scriptText } from '../telling';
import { localDay } from '../units/local-day';
import { explanationText } from './explanation-text';
import { readContent } from './read-content';
import { readFoot } from './read-foot';

const FORMS = ['text', 'json', 'script'] as const;
type Form = (typeof FORMS)[number];

const USAGE = `Usage: npm run -s explain -- <file.case.json> [--reader ${READERS.join('|')}] [--as ${FORMS.join('|')}] [--seconds ${SCRIPT_SECONDS.join('|')}]
`;

interface Call {
  readonly path: string;
  readonly reader: Reader;
  readonly form: Form;
  readonly seconds: ScriptSeconds;
}

const oneOf = <T extends string | number>(list: readonly T[], text: string): T | undefined =>
  list.find((item) => String(item) === text);

/** The call, or what is wrong with it. */
const callOf = (args: readonly string[]): Call | string => {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        reader: { type: 'string', default: 'patient' },
        as: { type: 'string', default: 'text' },
        seconds: { type: 'string', default: '90' },
      },
    });
    const [path, ...more] = positionals;
    if (path === undefined) return 'No case file was named.';
    if (more.length > 0) return `One case file at a time: ${more.join(' ')} is too much.`;
    const reader = oneOf(READERS, values.reader);
    if (reader === undefined) return `--reader ${values.reader} is none of ${READERS.join(', ')}.`;
    const form = oneOf(FORMS, values.as);
    if (form === undefined) return `--as ${values.as} is none of ${FORMS.join(', ')}.`;
    const seconds = oneOf(SCRIPT_SECONDS, values.seconds);
    if (seconds === undefined) return `--seconds ${values.seconds} is none of ${SCRIPT_SECONDS.join(', ')}.`;
    return { path, reader, form, seconds };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
};

type Problem = Pick<CaseProblem, 'what' | 'where' | 'remedy'>;

const readFile = (
  path: string,
): { readonly ok: true; readonly file: CaseFile } | { readonly ok: false; readonly problems: readonly Problem[] } => {
  try {
    const big = tooBig(statSync(path).size);
    if (big !== null) return { ok: false, problems: [big] };
    return readCase(readFileSync(path, 'utf8'));
  } catch (error) {
    const detail = error instanceof Error ? error.message : String(error);
    return {
      ok: false,
      problems: [{ what: `The file cannot be read: ${detail}.`, where: null, remedy: 'Check its name and place.' }],
    };
  }
};

const complaint = (path: string, { what, where, remedy }: Problem): string =>
  `${path}${where === null ? '' : `: ${where}`}\n  ${what}\n  ${remedy}\n`;

const fail = (path: string, problems: readonly Problem[]): number => {
  process.stderr.write(problems.map((problem) => complaint(path, problem)).join(''));
  return 1;
};

const run = async (args: readonly string[]): Promise<number> => {
  const call = callOf(args);
  if (typeof call === 'string') {
    process.stderr.write(`${call}\n${USAGE}`);
    return 2;
  }
  const read = readFile(call.path);
  if (!read.ok) return fail(call.path, read.problems);
  const ahead = checkDates(read.file, localDay(new Date()));
  if (ahead.length > 0) return fail(call.path, ahead);
  await prepareAnatomy();
  const content = readContent();
  const facts = factsOf(read.file);
  const foot = footOfCase(content, facts, NO_WHAT_IF, readFoot() ?? undefined);
  const against = checkCase(read.file, content, foot);
  if (against.length > 0) return fail(call.path, against);
  const explanation = explain(content, facts, NO_WHAT_IF, foot, { bands: 'all' });
  const out = {
    json: () => `${JSON.stringify(asTold(explanation), null, 2)}\n`,
    text: () => explanationText(content, explanation, call.reader),
    script: () => scriptText(scriptOf(content, explanation, { seconds: call.seconds })),
  } satisfies Record<Form, () => string>;
  process.stdout.write(out[call.form]());
  return 0;
};

process.exitCode = await run(process.argv.slice(2));
