import type { ElkNode } from 'elkjs/lib/elk-api.js';
import workerUrl from 'elkjs/lib/elk-worker.min.js?url';
import type { Plan } from '../../domain/building/plan.ts';
import type { FloorGraph } from './floors.ts';

export interface PlacedSpace {
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly lines: readonly string[];
}
export interface PlacedEdge {
  readonly index: number;
  readonly path: string;
  /** Where the mark of the opening stands. */
  readonly label: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}
export interface PlacedFloor {
  readonly floor: FloorGraph;
  readonly width: number;
  readonly height: number;
  readonly spaces: readonly PlacedSpace[];
  readonly edges: readonly PlacedEdge[];
}
export interface LayoutProgress {
  readonly state: 'running' | 'done' | 'stopped' | 'failed';
  readonly placed: readonly PlacedFloor[];
  readonly total: number;
}

export const lineHeight = 17;
const charWidth = 7.2;
const mostChars = 20;
const markHeight = 24;

/**
 * Places the floors one after another in a worker, so the page stays usable and a person can stop it. What was
 * placed before stays on screen.
 */
export class LayoutRun {
  #progress: LayoutProgress;
  readonly #plan: Plan;
  readonly #floors: readonly FloorGraph[];
  readonly #listeners = new Set<() => void>();
  #end: (() => void) | undefined;

  constructor(plan: Plan, floors: readonly FloorGraph[]) {
    this.#plan = plan;
    this.#floors = floors;
    this.#progress = { state: 'running', placed: [], total: floors.length };
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly snapshot = (): LayoutProgress => this.#progress;

  start(): void {
    this.#tell({ state: 'running', placed: [] });
    let ended = false;
    let endWorker: (() => void) | undefined;
    this.#end = () => {
      ended = true;
      endWorker?.();
    };
    const run = async () => {
      const { default: Elk } = await import('elkjs/lib/elk-api.js');
      if (ended) return;
      const elk = new Elk({ workerUrl });
      endWorker = () => elk.terminateWorker();
      for (const floor of this.#floors) {
        const laid = await elk.layout(graphOf(this.#plan, floor));
        if (ended) return;
        this.#tell({ placed: [...this.#progress.placed, placedFloor(this.#plan, floor, laid)] });
      }
      elk.terminateWorker();
      this.#tell({ state: 'done' });
    };
    run().catch(() => {
      if (!ended) this.#tell({ state: 'failed' });
    });
  }

  /** By a person, who then sees that it was stopped, or because the page went away. */
  stop(): void {
    this.#end?.();
    if (this.#progress.state === 'running') this.#tell({ state: 'stopped' });
  }

  #tell(change: Partial<LayoutProgress>): void {
    this.#progress = { ...this.#progress, ...change };
    for (const listener of this.#listeners) listener();
  }
}

function graphOf(plan: Plan, floor: FloorGraph): ElkNode {
  return {
    id: 'floor',
    layoutOptions: {
      'elk.algorithm': 'layered',
      'elk.direction': 'RIGHT',
      'elk.edgeRouting': 'ORTHOGONAL',
      'elk.spacing.nodeNode': '22',
      'elk.spacing.edgeNode': '14',
      'elk.spacing.edgeLabel': '2',
      'elk.layered.spacing.nodeNodeBetweenLayers': '30',
      'elk.layered.nodePlacement.strategy': 'NETWORK_SIMPLEX',
      'elk.separateConnectedComponents': 'true',
    },
    children: floor.spaces.map((index) => ({ id: `s${index}`, ...sizeOf(plan, index) })),
    edges: floor.edges.flatMap((index) => {
      const edge = plan.edges[index];
      if (!edge || edge.from === plan.nowhere || edge.to === plan.nowhere) return [];
      return [
        {
          id: `e${index}`,
          sources: [`s${edge.to}`],
          targets: [`s${edge.from}`],
          labels: [
            {
              id: `l${index}`,
              text: edge.opening.mark,
              width: 34 + edge.opening.mark.length * 8,
              height: markHeight,
              layoutOptions: { 'elk.edgeLabels.inline': 'true', 'elk.edgeLabels.placement': 'CENTER' },
            },
          ],
        },
      ];
    }),
  };
}

function placedFloor(plan: Plan, floor: FloorGraph, laid: ElkNode): PlacedFloor {
  return {
    floor,
    width: laid.width ?? 0,
    height: laid.height ?? 0,
    spaces: (laid.children ?? []).map((node) => {
      const index = Number(node.id.slice(1));
      const { width, height } = sizeOf(plan, index);
      return { index, x: node.x ?? 0, y: node.y ?? 0, width, height, lines: linesOf(plan, index) };
    }),
    edges: (laid.edges ?? []).flatMap((edge) => {
      const [section] = edge.sections ?? [];
      const [label] = edge.labels ?? [];
      if (!section || !label) return [];
      const points = [section.startPoint, ...(section.bendPoints ?? []), section.endPoint];
      return [
        {
          index: Number(edge.id.slice(1)),
          path: points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join(''),
          label: {
            x: label.x ?? 0,
            y: label.y ?? 0,
            width: label.width ?? 0,
            height: label.height ?? 0,
          },
        },
      ];
    }),
  };
}

/** Room for the name and two lines under it: the level, and what is the case. */
function sizeOf(plan: Plan, index: number): { width: number; height: number } {
  const lines = linesOf(plan, index);
  const longest = Math.max(13, ...lines.map((line) => line.length));
  return { width: Math.round(longest * charWidth) + 20, height: (lines.length + 2) * lineHeight + 14 };
}

function linesOf(plan: Plan, index: number): readonly string[] {
  const lines: string[] = [];
  for (const word of (plan.spaces[index]?.name ?? '').split(/\s+/)) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + word.length + 1 <= mostChars) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else lines.push(word);
  }
  if (lines.length <= 3) return lines;
  return [...lines.slice(0, 2), `${lines[2]}…`];
}
