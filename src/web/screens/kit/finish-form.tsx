import { useState } from 'react';
import { KIT, sayFinish } from '#say/en/kit-page.ts';
import { Button } from '../../ui/button.tsx';
import { Step } from '../../ui/step.tsx';

interface FinishFormProps {
  readonly boards: number;
  /** boards that the kit is complete for */
  readonly likely: number;
  readonly busy: boolean;
  readonly main?: boolean;
  readonly onFinish: (made: number) => void;
}

/** How many boards were soldered: nobody but the person at the bench knows. */
export function FinishForm({ boards, likely, busy, main = false, onFinish }: FinishFormProps) {
  const [made, setMade] = useState(likely);
  return (
    <div className="finish">
      <Step label={KIT.made} value={made} least={0} most={boards} onChange={setMade} />
      <Button look={main ? 'main' : 'plain'} disabled={busy} onClick={() => onFinish(made)}>
        {sayFinish(made)}
      </Button>
    </div>
  );
}
