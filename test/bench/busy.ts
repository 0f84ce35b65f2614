import { cpus, loadavg } from 'node:os';

/** What to say when other processes had the machine, which makes every time too long; sizes stay exact. */
export function busyNote(load = loadavg()[0] ?? 0, processors = cpus().length): string | undefined {
  if (load < processors) return undefined;
  return `The machine is busy (load ${load.toFixed(1)} on ${processors} processors): times are longer than they should be.`;
}
