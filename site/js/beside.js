// @ts-check
// What is kept, in a chart of the design in hand: a hollow square where each stands, and its own curve. They lie over the chart,
// as the ring does.

/**
 * @typedef {import("./api.js").BesidePanel} Panel
 * @typedef {{min: number, max: number}} Span
 * @typedef {import("echarts/core").EChartsType} Chart
 */

const SVG = "http://www.w3.org/2000/svg";
const HALF = 4.5; // px of a square

/** @param {string} name */
const made = (name) => document.createElementNS(SVG, name);

export class Beside {
  /** @param {HTMLElement} parent */
  constructor(parent) {
    this.root = made("svg");
    this.root.setAttribute("class", "kept");
    this.root.setAttribute("aria-hidden", "true"); // the table of options says the same
    parent.append(this.root);
    /** @type {Panel[]} */ this.panels = [];
  }

  /** @param {Panel[]} panels */
  show(panels) {
    this.panels = panels;
    this.root.replaceChildren(
      ...panels.map(({ spots, paths }) => {
        const panel = made("svg"); // cuts off what lies beyond
        const curves = made("g");
        for (const d of paths) {
          const path = made("path");
          path.setAttribute("d", d);
          curves.append(path);
        }
        const squares = spots.map(() => {
          const square = made("rect");
          square.setAttribute("width", String(2 * HALF));
          square.setAttribute("height", String(2 * HALF));
          return square;
        });
        panel.append(curves, ...squares);
        return panel;
      }),
    );
  }

  /** Puts them where the chart's axes are now. @param {Chart} chart @param {Span[]} widths @param {Span[]} heights of each panel */
  place(chart, widths, heights) {
    this.panels.forEach(({ spots }, i) => {
      const panel = this.root.children[i];
      const on = onScreen(chart, i, widths[i], heights[i]);
      panel.toggleAttribute("hidden", !on);
      if (!on) return;
      const { left, top, width, height, a, d, e, f } = on;
      for (const [name, value] of Object.entries({ x: left, y: top, width: Math.max(width, 0), height: Math.max(height, 0) })) panel.setAttribute(name, String(value));
      const [curves, ...squares] = panel.children;
      curves.setAttribute("transform", `matrix(${a} 0 0 ${d} ${e} ${f})`);
      squares.forEach((square, j) => {
        square.setAttribute("x", String(a * spots[j].x + e - HALF));
        square.setAttribute("y", String(d * spots[j].y + f - HALF));
      });
    });
  }

  /** For the printer. @param {CanvasRenderingContext2D} pen @param {Chart} chart @param {number} ratio @param {Span[]} widths @param {Span[]} heights @param {string} paper */
  paint(pen, chart, ratio, widths, heights, paper) {
    this.panels.forEach(({ spots, paths }, i) => {
      const on = onScreen(chart, i, widths[i], heights[i]);
      if (!on) return;
      const { left, top, width, height, a, d, e, f } = on;
      pen.save();
      pen.scale(ratio, ratio);
      pen.beginPath();
      pen.rect(left, top, width, height);
      pen.clip();
      pen.strokeStyle = "#555";
      pen.setLineDash([5, 3]);
      for (const one of paths) {
        const path = new Path2D();
        path.addPath(new Path2D(one), new DOMMatrix([a, 0, 0, d, left + e, top + f]));
        pen.stroke(path);
      }
      pen.setLineDash([]);
      pen.strokeStyle = "#000";
      pen.fillStyle = paper;
      pen.lineWidth = 1.5;
      for (const { x, y } of spots) {
        const square = new Path2D();
        square.rect(left + a * x + e - HALF, top + d * y + f - HALF, 2 * HALF, 2 * HALF);
        pen.fill(square);
        pen.stroke(square);
      }
      pen.restore();
    });
  }
}

/** Where a panel lies [px], and how its numbers become places in it; null where the chart has no such panel. @param {Chart} chart @param {number} i @param {Span | undefined} across @param {Span | undefined} up */
function onScreen(chart, i, across, up) {
  if (!across || !up) return null;
  const [left, right] = [across.min, across.max].map((end) => chart.convertToPixel({ xAxisIndex: i }, end));
  const [bottom, top] = [up.min, up.max].map((end) => chart.convertToPixel({ yAxisIndex: i }, end));
  const [width, height] = [right - left, bottom - top];
  if (!(width > 0) || !(height > 0)) return null;
  const [a, d] = [width / (across.max - across.min), -height / (up.max - up.min)];
  return { left, top, width, height, a, d, e: -across.min * a, f: height - up.min * d };
}
