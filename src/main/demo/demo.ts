/** The demonstration project: invented, ships with the app, opens on first start. */
import { readProject } from '../../shared/read-project.ts';
import { ok, type Reply } from '../../shared/reply.ts';
import type { Opened } from '../../shared/reports.ts';
import curlew from './curlew.lapwright.json' with { type: 'json' };

export function openDemo(): Reply<Opened> {
  const project = readProject(curlew);
  return project.ok ? ok({ document: project.value, origin: 'Curlew (demonstration)' }) : project;
}
