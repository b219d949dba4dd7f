/** Questions of daily life: what is published beside each, and a place for the clinic's answer, which is the answer. */
import { answerOf, CLINIC_TEXT_LENGTH } from '../../cases';
import type { DailyTopic } from '../../content/schema';
import type { Finding } from '../../explain/types';
import type { StageId } from '../../ids';
import { usePages, useSession } from '../context';
import { OwnText } from './OwnText';
import { StageLine } from './StageLine';
import { type TextFinding, textsOf, useBareText } from './stage-parts';

const Topic = ({ topic, says }: { readonly topic: DailyTopic; readonly says: readonly TextFinding[] }) => {
  const { say, session } = usePages();
  const bare = useBareText();
  const reader = useSession((state) => state.reader);
  const file = useSession((state) => state.file);
  const question = topic.question[reader];
  return (
    <li>
      <p className="way-question">{question}</p>
      <ul className="way-lines">
        {says.map((finding) => (
          <li key={finding.id}>
            <StageLine {...bare(finding)} />
          </li>
        ))}
      </ul>
      <OwnText
        label={say('stages.answer')}
        spoken={say('stages.answerTo', { question })}
        value={answerOf(file, topic.id)}
        most={CLINIC_TEXT_LENGTH}
        onSay={(text) => session.commands.answerDaily(topic.id, text)}
      />
    </li>
  );
};

interface Properties {
  readonly stage: StageId;
  readonly findings: readonly Finding[];
}

export const StageDaily = ({ stage, findings }: Properties) => {
  const { say } = usePages();
  const topics = useSession((state) => state.content.dailyLife);
  const texts = textsOf(findings, 'daily');
  const asked = topics.filter(({ stages }) => stages.length === 0 || stages.includes(stage));
  return asked.length === 0 ? null : (
    <details className="way-more">
      <summary>{say('stages.daily')}</summary>
      <ul className="way-daily">
        {asked.map((topic) => (
          <Topic
            key={topic.id}
            topic={topic}
            says={texts.filter((finding) => finding.message.args.at.topic === topic.id)}
          />
        ))}
      </ul>
    </details>
  );
};
