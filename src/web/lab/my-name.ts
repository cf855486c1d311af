const NAME = 'bagatelle-name';

/** The name under which this browser acts; empty where nobody gave one. */
export function myName(): string {
  return localStorage.getItem(NAME) ?? '';
}

export function keepMyName(name: string): void {
  if (name.trim()) localStorage.setItem(NAME, name.trim());
  else localStorage.removeItem(NAME);
}
