import { DropZone, FileTrigger, Button as AriaButton, type DropItem } from 'react-aria-components';

interface DropFileProps {
  readonly label: string;
  /** words over the button: "Drop the file here, or" */
  readonly lead: string;
  readonly choose: string;
  readonly accept: readonly string[];
  readonly onFile: (file: File) => void;
  readonly main?: boolean;
  readonly busy?: boolean;
}

/** Takes one file: dropped, pasted or chosen. */
export function DropFile({ label, lead, choose, accept, onFile, main = false, busy = false }: DropFileProps) {
  const drop = async (items: readonly DropItem[]): Promise<void> => {
    const item = items.find((one) => one.kind === 'file');
    if (item) onFile(await item.getFile());
  };
  return (
    <DropZone className="dropfile" aria-label={label} onDrop={({ items }) => void drop(items)}>
      <span className="s two">{lead}</span>
      <FileTrigger acceptedFileTypes={accept} onSelect={(files) => files?.[0] && onFile(files[0])}>
        <AriaButton className={main ? 'btn main' : 'btn'} isDisabled={busy}>
          {choose}
        </AriaButton>
      </FileTrigger>
    </DropZone>
  );
}
