/** The whole calculation for whoever checks it: the way of the load, every figure with its source, what others measured, its weak points. */
import { type ReactNode, useId, useState } from 'react';
import { usePages, useSession } from '../context';
import { useDialog } from '../parts/use-dialog';
import { CalculationOpener } from './calculation';
import { HeldAgainst } from './HeldAgainst';
import { Measured } from './Measured';
import { PathTable } from './PathTable';
import { CaseFigures, FrameFigures } from './Unmeasured';
import { type Loads, useLoads } from './use-loads';
import { useWeakness } from './use-weakness';

const Weakness = ({ loads }: { readonly loads: Loads }) => {
  const weak = useWeakness(loads);
  return (
    <ul>
      {weak.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
};

const Pages = ({ loads }: { readonly loads: Loads }) => {
  const { say } = usePages();
  return (
    <>
      <p>{say('calculation.what')}</p>
      {loads.loads.forcesRank && (
        <p>
          <strong>{say('calculation.ranksOnly')}</strong>
        </p>
      )}
      <h2>{say('path.title')}</h2>
      <PathTable
        told={loads.loads.told}
        bands={loads.current ? (loads.banded?.loads?.bands ?? null) : null}
        sized={!loads.loads.forcesRank}
      />
      <h2>{say('figures.title')}</h2>
      <FrameFigures loads={loads} />
      <h2>{say('figures.caseTitle')}</h2>
      <CaseFigures loads={loads} />
      <h2>{say('measured.title')}</h2>
      <Measured loads={loads} />
      <h2>{say('held.title')}</h2>
      <HeldAgainst />
      <h2>{say('weak.title')}</h2>
      <Weakness loads={loads} />
    </>
  );
};

/** Made only while it is open: its tables are long. */
const CalculationDialog = ({ open, onClose }: { readonly open: boolean; readonly onClose: () => void }) => {
  const { say } = usePages();
  const { dialog, closed } = useDialog(open, onClose);
  const titleId = useId();
  const loads = useLoads();
  return (
    <dialog ref={dialog} className="wide calculation" aria-labelledby={titleId} onClose={closed}>
      <div className="row row-spread">
        <h2 id={titleId}>{say('calculation.title')}</h2>
        <button type="button" className="button" onClick={() => dialog.current?.close()}>
          {say('close')}
        </button>
      </div>
      {open && loads !== null && <Pages loads={loads} />}
    </dialog>
  );
};

/** Round everything of a question that has numbers of the frame. Patients are spared tables of forces. */
export const WithCalculation = ({ children }: { readonly children: ReactNode }) => {
  const [open, setOpen] = useState(false);
  const offered = useSession(
    ({ question, reader, explanation }) =>
      question === 'how' && reader !== 'patient' && (explanation?.loads ?? null) !== null,
  );
  return (
    <CalculationOpener value={offered ? () => setOpen(true) : null}>
      {children}
      {offered && <CalculationDialog open={open} onClose={() => setOpen(false)} />}
    </CalculationOpener>
  );
};
