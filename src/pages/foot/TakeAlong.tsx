/** The foot in the picture as files: GLB for viewers and teaching slides, STL at true size for a printer. */
import { useState } from 'react';
import { saveBlob } from '../case/save-file';
import { usePages, useSession } from '../context';
import { WorkButton } from '../parts/WorkButton';
import { modelFileName } from './model-file-name';

export const MODEL_KINDS = ['glb', 'stl'] as const;

export const TakeAlong = () => {
  const { say, session, saveModel, announce } = usePages();
  const [making, setMaking] = useState<(typeof MODEL_KINDS)[number] | null>(null);
  const stated = useSession((state) => state.explanation?.side);
  const side = stated?.state === 'stated' ? stated.side : null;
  const save = async (kind: (typeof MODEL_KINDS)[number]) => {
    const { pose, whatIf } = session.getState();
    setMaking(kind);
    const blob = await saveModel(kind, side);
    setMaking(null);
    if (blob === null) announce(say('foot.files.none'));
    else saveBlob(blob, modelFileName({ kind, side, pose, whatIf: Object.keys(whatIf).length > 0 }));
  };
  return (
    <section aria-labelledby="foot-files">
      <h2 id="foot-files" className="fold-head">
        {say('foot.files')}
      </h2>
      <p>{say('foot.files.hint')}</p>
      <div className="row">
        {MODEL_KINDS.map((kind) => (
          <WorkButton
            key={kind}
            off={making !== null && making !== kind}
            meanwhile={say('foot.files.making')}
            work={() => save(kind)}
          >
            {say(`foot.files.${kind}`)}
          </WorkButton>
        ))}
      </div>
    </section>
  );
};
