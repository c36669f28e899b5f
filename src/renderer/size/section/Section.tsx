/** The joint cut along its axis: drawn to scale, the overlap to be taken by its mouth. */
import type { JSX } from 'solid-js';
import type { Joint } from '../../../shared/project.ts';
import { OverlapHandle } from './OverlapHandle.tsx';
import { gripAt, SectionDrawing } from './SectionDrawing.tsx';
import type { View } from './scale.ts';
import type { Stack } from './stack.ts';

export interface SectionProps {
  readonly joint: Joint;
  readonly stack: Stack;
  readonly description: string;
  readonly view: View;
  readonly width: number;
  readonly height: number;
  readonly onOverlap: (overlap: number) => void;
  readonly onDragging: (dragging: boolean) => void;
}

export function Section(props: SectionProps): JSX.Element {
  return (
    <SectionDrawing
      joint={props.joint}
      stack={props.stack}
      description={props.description}
      view={props.view}
      width={props.width}
      height={props.height}
      role="group"
      handle={(layout) => (
        <OverlapHandle
          joint={props.joint.id}
          overlap={props.joint.overlap}
          x={gripAt(layout(), props.width)}
          top={layout().top}
          bottom={layout().bottom}
          scale={props.view.scale}
          onChange={props.onOverlap}
          onDragging={props.onDragging}
        />
      )}
    />
  );
}
