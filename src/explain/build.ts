/**
 * How a finding is made. Its message comes out of a registered pure function and its inputs, so that "how do you know?" can
 * run it again; its confidence comes out of what it rests on. There is no other way to make one.
 */
import type { Evidence } from '../content/schema';
import { type FindingId, idOf, type QuestionId, type Reader, type SourceId } from '../ids';
import { type Caps, confidenceOf, type ModelLimit } from './confidence';
import type { Context } from './context';
import type { ClaimTag, Given, Message, MessageId, Messages } from './messages';
import type { Finding, Shown } from './types';

/** A registered computation: plain inputs and the context (content, foot) to a message. */
export interface Compute<I extends object> {
  readonly id: string;
  readonly run: (context: Context, inputs: I) => Message;
}

export const compute = <I extends object>(id: string, run: (context: Context, inputs: I) => Message): Compute<I> => ({
  id,
  run,
});

export const message = <K extends MessageId>(id: K, args: Messages[K]): Message => ({ id, args }) as Message;

export interface FindingSpec<I extends object> {
  readonly id: string;
  readonly depth: Finding['depth'];
  readonly compute: Compute<I>;
  readonly inputs: I;
  readonly shows?: readonly Shown[];
  /** Content records it rests on. */
  readonly evidence?: readonly Evidence[];
  /** Claims it rests on, with their status. */
  readonly claims?: readonly ClaimTag[];
  readonly unsure?: 'contradiction' | 'notStated';
  readonly models?: readonly ModelLimit[];
  readonly whatIf?: boolean;
  readonly readers?: readonly Reader[];
}

const unique = <T>(items: readonly T[], key: (item: T) => string): readonly T[] => [
  ...new Map(items.map((item) => [key(item), item])).values(),
];

export const find = <I extends object>(context: Context, question: QuestionId, spec: FindingSpec<I>): Finding => {
  const evidence = unique(spec.evidence ?? [], (e) => `${e.source} ${e.mark}`);
  const claims = spec.claims ?? [];
  const caps: Caps = {
    claims: [...claims.map((c) => c.status), ...(spec.unsure === undefined ? [] : [spec.unsure])],
    marks: evidence.map((e) => e.mark),
    models: spec.models ?? [],
  };
  return {
    id: idOf<FindingId>(`${question}.${spec.id}`),
    message: spec.compute.run(context, spec.inputs),
    depth: spec.depth,
    shows: spec.shows ?? [],
    confidence: confidenceOf(caps),
    basis: {
      sources: evidence.map((e) => ({ source: e.source as SourceId | null, mark: e.mark })),
      claims: unique(
        claims.flatMap((c) => c.claims),
        (id) => id,
      ),
      compute: spec.compute.id,
      inputs: spec.inputs as Readonly<Record<string, unknown>>,
    },
    whatIf: spec.whatIf ?? false,
    ...(spec.readers === undefined ? {} : { readers: spec.readers }),
  };
};

/** What a finding is conditional on, from the status of the facts behind it. */
export const givenOf = (...tags: readonly (ClaimTag | null)[]): Given => {
  const statuses = tags.flatMap((tag) => (tag === null ? [] : [tag.status]));
  if (statuses.length === 0) return 'none';
  if (statuses.includes('inferred')) return 'inferred';
  return statuses.includes('reported') ? 'reported' : 'confirmed';
};
