// A sheet on the screen: it follows the size of its room, is zoomed by the wheel and panned by the hand; layers draw it.
import type Konva from 'konva';
import {
  type HTMLAttributes,
  type KeyboardEvent,
  type ReactNode,
  useEffect,
  useRef,
  useSyncExternalStore,
} from 'react';
import { Stage } from 'react-konva';
import type { Point, Size } from '../../../shared/geometry/space.ts';
import { followHand } from '../hand/followHand.ts';
import { holdToPan } from '../hand/holdToPan.ts';
import type { SheetHands } from '../hand/sheetHands.ts';
import type { SheetViewing } from '../sheetView.ts';
import { useSheetInRoom } from '../useSheetInRoom.ts';
import './sheetCanvas.css';

interface SheetCanvasProps extends HTMLAttributes<HTMLDivElement> {
  readonly role: 'application' | 'img';
  readonly viewing: SheetViewing;
  /** The size of the sheet in pt. */
  readonly sheet: Size;
  readonly hands: SheetHands;
  /** The layers, from the lowest. */
  readonly layers: ReactNode;
  /** What lies over the canvas in its room. */
  readonly children?: ReactNode;
}

/** How much nearer a turn of the wheel by one px looks, as an exponent. */
const ZOOM_PER_PX = 0.0016;
/** A mouse that counts lines turns by so many px for each. */
const PX_PER_LINE = 16;

type Heard<E extends Event> = Konva.KonvaEventObject<E>;

export function SheetCanvas({ viewing, sheet, hands, layers, children, role, ...room }: SheetCanvasProps) {
  const element = useRef<HTMLDivElement>(null);
  const letGo = useRef<(() => void) | undefined>(undefined);
  const spaceDown = useRef(false);
  const { window } = useSyncExternalStore(viewing.store.subscribe, viewing.store.getState);
  useSheetInRoom(element, viewing, sheet);
  useEffect(() => () => letGo.current?.(), []);

  const placeOf = (event: MouseEvent): Point<'screen'> => {
    const { left, top } = element.current?.getBoundingClientRect() ?? { left: 0, top: 0 };
    return { x: event.clientX - left, y: event.clientY - top };
  };
  const press = ({ evt }: Heard<PointerEvent>) => {
    if (letGo.current !== undefined || evt.button > 1) return;
    const at = placeOf(evt);
    const pans = evt.button === 1 || spaceDown.current;
    if (pans) evt.preventDefault();
    const hold = pans ? holdToPan(at, viewing.panBy) : hands.press(at, evt);
    if (hold === undefined) return;
    element.current?.setPointerCapture(evt.pointerId);
    const onFree = () => {
      letGo.current = undefined;
    };
    letGo.current = followHand({ pointerId: evt.pointerId, hold, placeOf, onFree });
  };
  const hover = (event: MouseEvent | undefined) => {
    if (letGo.current !== undefined || element.current === null) return;
    const cursor = hands.hover(event && placeOf(event));
    element.current.style.cursor = spaceDown.current ? 'grab' : cursor;
  };
  const wheel = ({ evt }: Heard<WheelEvent>) => {
    evt.preventDefault();
    if (letGo.current !== undefined) return;
    const px = evt.deltaMode === WheelEvent.DOM_DELTA_LINE ? PX_PER_LINE : 1;
    if (evt.shiftKey) viewing.panBy(-(evt.deltaX || evt.deltaY) * px, 0);
    else viewing.zoomBy(Math.exp(-evt.deltaY * px * ZOOM_PER_PX), placeOf(evt));
  };
  const space = (event: KeyboardEvent) => {
    if (event.key !== ' ') return;
    spaceDown.current = event.type === 'keydown';
    event.preventDefault();
  };
  const keys = {
    onKeyDown: (event: KeyboardEvent<HTMLDivElement>) => {
      space(event);
      room.onKeyDown?.(event);
    },
    onKeyUp: space,
    onBlur: () => {
      spaceDown.current = false;
    },
  };
  return (
    <div {...room} {...keys} role={role} ref={element} className="sheet-canvas">
      <Stage
        width={window.w}
        height={window.h}
        onPointerDown={press}
        onPointerMove={({ evt }) => hover(evt)}
        onPointerLeave={() => hover(undefined)}
        onWheel={wheel}
        onContextMenu={({ evt }) => {
          evt.preventDefault();
          hands.openMenu?.(placeOf(evt));
        }}
      >
        {layers}
      </Stage>
      {children}
    </div>
  );
}
