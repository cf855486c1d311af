import type { ReactNode } from 'react';
import { FileTrigger, Button as AriaButton } from 'react-aria-components';

interface PickFileProps {
  readonly accept: readonly string[];
  readonly onFile: (file: File) => void;
  readonly busy?: boolean;
  readonly children: ReactNode;
}

/** A button that asks for one file; the page around it may take a drop as well. */
export function PickFile({ accept, onFile, busy = false, children }: PickFileProps) {
  return (
    <FileTrigger acceptedFileTypes={accept} onSelect={(files) => files?.[0] && onFile(files[0])}>
      <AriaButton className="btn" isDisabled={busy}>
        {children}
      </AriaButton>
    </FileTrigger>
  );
}
