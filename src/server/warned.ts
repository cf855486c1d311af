import type { Warning } from '#actions/action.ts';
import { warningText } from '#say/en/warnings.ts';

/** A warning as it crosses the wire, with its sentence. */
export function warned({ code, args }: Warning): { code: string; text: string; args: Record<string, string | number> } {
  return { code, text: warningText({ code, args }), args: { ...args } };
}
