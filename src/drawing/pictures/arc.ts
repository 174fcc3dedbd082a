/** An arc of an ellipse as curves: the way from its ends to its centre is that of SVG 1.1, appendix F.6. */
import type { PathPiece } from '../drawing';

/** An arc as a path has it: half axes, turn of the ellipse in degrees, the longer way round or not, clockwise or not. */
export interface ArcTo {
  readonly rx: number;
  readonly ry: number;
  readonly turnDeg: number;
  readonly large: boolean;
  readonly sweep: boolean;
  readonly x: number;
  readonly y: number;
}

/** Curves from (x0, y0) along the arc to its end. */
export function arcCurves(x0: number, y0: number, arc: ArcTo): readonly PathPiece[] {
  let [rx, ry] = [Math.abs(arc.rx), Math.abs(arc.ry)];
  if (rx === 0 || ry === 0) return [{ op: 'line', x: arc.x, y: arc.y }];
  if (x0 === arc.x && y0 === arc.y) return [];
  const phi = (arc.turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  const [dx, dy] = [(x0 - arc.x) / 2, (y0 - arc.y) / 2];
  const [x1, y1] = [cos * dx + sin * dy, cos * dy - sin * dx];
  // axes too short to reach are made just long enough
  const reach = (x1 / rx) ** 2 + (y1 / ry) ** 2;
  if (reach > 1) [rx, ry] = [rx * Math.sqrt(reach), ry * Math.sqrt(reach)];
  const below = (rx * y1) ** 2 + (ry * x1) ** 2;
  const root = Math.sqrt(Math.max(0, ((rx * ry) ** 2 - below) / below)) * (arc.large === arc.sweep ? -1 : 1);
  const [cx1, cy1] = [(root * rx * y1) / ry, (-root * ry * x1) / rx];
  const [cx, cy] = [cos * cx1 - sin * cy1 + (x0 + arc.x) / 2, sin * cx1 + cos * cy1 + (y0 + arc.y) / 2];
  const from = Math.atan2((y1 - cy1) / ry, (x1 - cx1) / rx);
  const to = Math.atan2((-y1 - cy1) / ry, (-x1 - cx1) / rx);
  const whole = 2 * Math.PI;
  let turn = to - from;
  if (arc.sweep && turn < 0) turn += whole;
  if (!arc.sweep && turn > 0) turn -= whole;
  const parts = Math.max(1, Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
  const step = turn / parts;
  const handle = (4 / 3) * Math.tan(step / 4);
  const place = (u: number, v: number) => ({
    x: cx + rx * u * cos - ry * v * sin,
    y: cy + rx * u * sin + ry * v * cos,
  });
  return Array.from({ length: parts }, (_, index): PathPiece => {
    const [a, b] = [from + index * step, from + (index + 1) * step];
    const first = place(Math.cos(a) - handle * Math.sin(a), Math.sin(a) + handle * Math.cos(a));
    const second = place(Math.cos(b) + handle * Math.sin(b), Math.sin(b) - handle * Math.cos(b));
    const end = index === parts - 1 ? { x: arc.x, y: arc.y } : place(Math.cos(b), Math.sin(b));
    return { op: 'curve', x1: first.x, y1: first.y, x2: second.x, y2: second.y, ...end };
  });
}
