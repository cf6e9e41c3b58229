/** Hands a file to the person: to the place they choose where the browser can ask, else to its downloads. */

/** What is used of the File System Access interface. */
interface Chosen {
  name: string;
  createWritable(): Promise<{ write(data: Blob): Promise<void>; close(): Promise<void> }>;
}
type AskWhere = (options: { suggestedName: string }) => Promise<Chosen>;

export type Saved =
  | { how: 'saved' | 'downloaded'; name: string }
  /** The person thought better of it. */
  | { how: 'left' }
  | { how: 'failed'; why: string };

/** Call it from a press of a button: browsers ask for a place only then. Never throws. */
export async function saveFile(name: string, file: Blob): Promise<Saved> {
  const { showSaveFilePicker } = window as { showSaveFilePicker?: AskWhere };
  if (!showSaveFilePicker) return download(name, file);
  try {
    const chosen = await showSaveFilePicker.call(window, { suggestedName: name });
    // What stood there before is there until all is written.
    const to = await chosen.createWritable();
    await to.write(file);
    await to.close();
    return { how: 'saved', name: chosen.name };
  } catch (error) {
    const { name: kind, message } = error as Error;
    if (kind === 'AbortError') return { how: 'left' };
    // A frame in a page may not ask; it may still download.
    if (kind === 'SecurityError') return download(name, file);
    return { how: 'failed', why: message };
  }
}

/** Long enough for the slowest browser to begin [ms]. */
const released_ms = 60_000;

function download(name: string, file: Blob): Saved {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), released_ms);
  return { how: 'downloaded', name };
}
