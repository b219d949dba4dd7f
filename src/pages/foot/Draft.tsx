/** Says of words and figures of the foot that no clinician has reviewed them, for as long as that is so. */
import { usePages, useSession } from '../context';

export const Draft = ({ file }: { readonly file: string }) => {
  const { say } = usePages();
  const review = useSession((state) => state.content.reviews[file]);
  return review?.state === 'reviewed' ? null : <p className="small-print">{say('note.draft')}</p>;
};
