/** Why the spot heals as it does: who feeds it, where two supplies meet, what a break or a tear leaves. */
import type { Message, MessageOf } from '../explain/messages';
import type { RegionId } from '../ids';
import { conditional } from './claims';
import { PARTS } from './en/messages';
import { feedingLine } from './feeding-line';
import { namesFor } from './names';
import { after, clause, list, type Pen, quantity, sentence } from './pen';
import type { Run } from './types';

const WHY_MESSAGES = ['feedingUnknown', 'fedBy', 'feedingBorder', 'breakLeaves'] as const;
type WhyMessage = MessageOf<(typeof WHY_MESSAGES)[number]>;
const IDS: ReadonlySet<string> = new Set(WHY_MESSAGES);
export const isWhyMessage = (message: Message): message is WhyMessage => IDS.has(message.id);

export const whyRuns = (pen: Pen, message: WhyMessage): readonly Run[] => {
  const { content, reader } = pen;
  const names = namesFor(content, reader);
  const region = (id: RegionId | null): string => (id === null ? PARTS.nothing : names.region(id));
  switch (message.id) {
    case 'feedingUnknown':
      return sentence(pen, 'feedingUnknown', { bone: names.bone(message.args.bone) });
    case 'fedBy': {
      const { region: part, main, others, mainBy, nearest } = message.args;
      const apart = mainBy === 'source' && nearest !== null;
      const key = main.length === 0 ? 'fedBy.bare' : apart ? 'fedBy.sourceApart' : (`fedBy.${mainBy}` as const);
      return sentence(pen, key, {
        region: part === null ? PARTS.middleOfBone : region(part),
        main: list(main.map(names.vessel)),
        others: list(others.map(names.vessel)),
        nearest: nearest === null ? PARTS.nothing : names.vessel(nearest),
      });
    }
    case 'feedingBorder': {
      const [near, far] = message.args.between;
      return sentence(pen, 'feedingBorder', {
        near: names.vessel(near),
        far: names.vessel(far),
        at: quantity(pen, message.args.at),
        halfWidth: quantity(pen, message.args.halfWidth),
        region: region(message.args.region),
      });
    }
    case 'breakLeaves': {
      const { parts, torn, taken, given } = message.args;
      const values = {
        parts: feedingLine(parts, names.region),
        torn: list(torn.map(names.vessel)),
        taken: list(taken.map(names.vessel)),
      };
      const alone = taken.length === 0 ? 'breakLeaves' : 'breakLeaves.taken';
      const besides = taken.length === 0 ? 'breakLeaves.torn' : 'breakLeaves.tornTaken';
      return after(conditional(clause(pen, torn.length === 0 ? alone : besides, values), given, reader), '.');
    }
  }
};
