/** What can go wrong with the healing of this injury: each trouble explained, then what groups of people counted of it. */
import type { QuestionId } from '../../ids';
import { wordFinding } from '../../wording';
import { usePages, useSession } from '../context';
import { findingsOf, isToldTo } from '../findings';
import { Disclosure } from '../parts/Disclosure';
import { Runs } from '../parts/Runs';
import { TroubleCounts } from './TroubleCounts';
import './troubles.css';

export const TroublesFold = ({ question }: { readonly question: QuestionId }) => {
  const { say } = usePages();
  const content = useSession((state) => state.content);
  const explanation = useSession((state) => state.explanation);
  const reader = useSession((state) => state.reader);
  if (explanation === null) return null;
  const here = ({ id }: { readonly id: string }): boolean => id.startsWith(`${question}.`);
  const counts = findingsOf(explanation, 'troubleCount').filter(here);
  // Before the groups one by one: none of them alone is what is known.
  const ranges = findingsOf(explanation, 'troubleRange').filter(
    (finding) => here(finding) && isToldTo(reader)(finding),
  );
  const silent = findingsOf(explanation, 'troublesNotCounted').filter(here);
  const texts = findingsOf(explanation, 'contentText').filter(
    (finding) => here(finding) && finding.message.args.at.kind === 'trouble',
  );
  if (texts.length === 0) return null;
  const runs = (finding: (typeof counts | typeof ranges | typeof silent | typeof texts)[number]) =>
    wordFinding(content, explanation, finding, reader).runs;
  return (
    <Disclosure title={say(question === 'why' ? 'troubles.why' : 'troubles.back')}>
      <p className="small-print">{say('troubles.note')}</p>
      {texts.map((text) => {
        const { at } = text.message.args;
        const trouble = at.kind === 'trouble' ? at.trouble : null;
        return (
          <section key={text.id} className="trouble">
            <p>
              <Runs runs={runs(text)} />
            </p>
            {ranges
              .filter(({ message }) => message.args.trouble === trouble)
              .map((finding) => (
                <p key={finding.id}>
                  <Runs runs={runs(finding)} />
                </p>
              ))}
            <TroubleCounts
              told={counts
                .filter(({ message }) => message.args.trouble === trouble)
                .map((finding) => ({ key: finding.id, count: finding.message.args, runs: runs(finding) }))}
            />
          </section>
        );
      })}
      {silent.map((finding) => (
        <p key={finding.id}>
          <Runs runs={runs(finding)} />
        </p>
      ))}
    </Disclosure>
  );
};
