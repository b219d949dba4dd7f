/** Hands a file to the person through the browser's own download: works in every browser and without a permission. */
import type { CaseFile } from '../../cases/schema';

/** Long enough for any browser to have started the download. */
const RELEASE_AFTER_MS = 10_000;

export const saveBlob = (blob: Blob, fileName: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), RELEASE_AFTER_MS);
};

export const saveText = (text: string, fileName: string): void =>
  saveBlob(new Blob([text], { type: 'text/plain;charset=utf-8' }), fileName);

export const saveCaseFile = (file: CaseFile, text: string): void =>
  saveBlob(new Blob([text], { type: 'application/json' }), `underfoot-${file.id}.case.json`);
