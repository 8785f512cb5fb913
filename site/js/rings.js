// @ts-check
// Where the design stands in a chart: a ring in each panel, and an upright through it. They lie over the chart, since it takes
// the chart library many times as long to move them. A ring is pulled where the design shall go.

import { hide } from "./keyed.js";

/**
 * @typedef {import("./api.js").Spot} Spot
 * @typedef {{min: number, max: number}} Span
 * @typedef {import("echarts/core").EChartsType} Chart
 */

const RADIUS = 5.5; // px, as in the style sheet

export class Rings {
  /** @param {HTMLElement} parent @param {boolean} upright whether the panels have uprights @param {(gridIndex: number, event: PointerEvent) => void} onTake a ring is taken hold of */
  constructor(parent, upright, onTake) {
    this.parent = parent;
    this.upright = upright;
    this.onTake = onTake;
    /** @type {(Spot | null)[]} */ this.spots = [];
    /** @type {Span[]} of each panel */ this.heights = [];
    /** @type {Span[]} */ this.widths = [];
    /** @type {[HTMLElement, HTMLElement][]} of each panel: the ring and its upright */ this.made = [];
  }

  /** @param {(Spot | null)[]} spots @param {Chart} chart @param {{xAxis?: Span[], yAxis?: Span[]}} [axes] what the panels span, where that has changed */
  show(spots, chart, { xAxis = this.widths, yAxis = this.heights } = {}) {
    this.spots = spots;
    [this.widths, this.heights] = [xAxis, yAxis];
    while (this.made.length < spots.length) {
      const [ring, upright] = ["ring", "upright"].map((name) => {
        const part = document.createElement("i");
        part.className = name;
        part.setAttribute("aria-hidden", "true"); // the figures say where the design stands
        return part;
      });
      const gridIndex = this.made.length;
      ring.addEventListener("pointerdown", (event) => this.onTake(gridIndex, event));
      this.parent.append(upright, ring);
      this.made.push([ring, upright]);
    }
    this.place(chart);
  }

  /** Puts them where the chart's axes are now. @param {Chart} chart */
  place(chart) {
    this.made.forEach(([ring, upright], gridIndex) => {
      const at = this.at(chart, gridIndex);
      hide(ring, !at);
      hide(upright, !at || !this.upright);
      if (!at) return;
      ring.style.transform = `translate(${at.x}px, ${at.y}px)`;
      upright.style.transform = `translate(${at.x}px, ${at.top}px)`;
      upright.style.height = `${at.bottom - at.top}px`;
    });
  }

  /** The place of a panel's ring, and where its panel begins and ends [px]; null where it is outside. @param {Chart} chart @param {number} gridIndex */
  at(chart, gridIndex) {
    const spot = this.spots[gridIndex];
    const [x, y] = (spot && chart.convertToPixel({ gridIndex }, [spot.x, spot.y])) || [NaN, NaN];
    if (!chart.containPixel({ gridIndex }, [x, y])) return null;
    const { min, max } = this.heights[gridIndex];
    return { x, y, top: chart.convertToPixel({ yAxisIndex: gridIndex }, max), bottom: chart.convertToPixel({ yAxisIndex: gridIndex }, min) };
  }

  /** The place in a panel that is nearest to one [px]. @param {Chart} chart @param {number} gridIndex @param {number} x @param {number} y */
  nearest(chart, gridIndex, x, y) {
    const ends = (/** @type {"xAxisIndex" | "yAxisIndex"} */ axis, /** @type {Span} */ { min, max }) => [min, max].map((end) => chart.convertToPixel({ [axis]: gridIndex }, end));
    const [left, right] = ends("xAxisIndex", this.widths[gridIndex]);
    const [bottom, top] = ends("yAxisIndex", this.heights[gridIndex]);
    return [Math.min(Math.max(x, left), right), Math.min(Math.max(y, top), bottom)];
  }

  /** For the printer. @param {CanvasRenderingContext2D} pen @param {Chart} chart @param {number} ratio @param {{accent: string, paper: string}} colours */
  paint(pen, chart, ratio, { accent, paper }) {
    pen.save();
    pen.scale(ratio, ratio);
    pen.strokeStyle = accent;
    pen.fillStyle = paper;
    this.spots.forEach((_, gridIndex) => {
      const at = this.at(chart, gridIndex);
      if (!at) return;
      if (this.upright) {
        pen.lineWidth = 1;
        pen.setLineDash([4, 4]);
        pen.stroke(new Path2D(`M${at.x} ${at.top}V${at.bottom}`));
        pen.setLineDash([]);
      }
      const ring = new Path2D();
      ring.roundRect(at.x - RADIUS, at.y - RADIUS, 2 * RADIUS, 2 * RADIUS, RADIUS);
      pen.fill(ring);
      pen.lineWidth = 2.5;
      pen.stroke(ring);
    });
    pen.restore();
  }
}
