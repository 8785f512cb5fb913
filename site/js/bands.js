// @ts-check
// The filled bands of a map: a small picture, one pixel a sample, stretched under the chart that draws axes and contours.

/**
 * @typedef {Pick<import("./api.js").Map, "columns" | "rows" | "bands" | "colours" | "area">} Bitmap
 *   bands is base64, one byte a sample, from the bottom row up; area is left, bottom, right, top in the axes' units
 * @typedef {import("echarts/core").EChartsType} Chart
 */

export class Bands {
  /** @param {HTMLElement} parent */
  constructor(parent) {
    this.sheet = document.createElement("canvas");
    this.sheet.className = "bands";
    this.sheet.setAttribute("aria-hidden", "true");
    this.small = document.createElement("canvas");
    /** @type {number[] | null} */ this.area = null;
    parent.prepend(this.sheet);
  }

  /**
   * @param {Bitmap} picture
   * @param {Chart} chart
   */
  show({ columns, rows, bands, colours, area }, chart) {
    this.area = area;
    this.small.width = columns;
    this.small.height = rows;
    const image = new ImageData(columns, rows);
    const pixels = new DataView(image.data.buffer);
    const inks = colours.map((colour) => parseInt(colour.slice(1) + "ff", 16));
    const index = atob(bands);
    for (let row = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++) {
        // A band without a colour is a place without a value: it stays clear.
        const ink = inks[index.charCodeAt(row * columns + column)] ?? 0;
        pixels.setUint32(4 * ((rows - 1 - row) * columns + column), ink);
      }
    }
    pen(this.small).putImageData(image, 0, 0);
    this.paint(chart);
  }

  clear() {
    this.area = null;
    this.sheet.width = 0;
  }

  /**
   * @param {Chart} chart
   * @param {number} [ratio] pixels for each of the chart's
   */
  paint(chart, ratio = devicePixelRatio) {
    if (!this.area) return;
    const [left, bottom, right, top] = this.area;
    const [x0, y0] = chart.convertToPixel({ gridIndex: 0 }, [left, top]);
    const [x1, y1] = chart.convertToPixel({ gridIndex: 0 }, [right, bottom]);
    // The chart's own size, which has no part of a pixel, not that of the place it fills.
    this.sheet.style.width = `${chart.getWidth()}px`;
    this.sheet.style.height = `${chart.getHeight()}px`;
    this.sheet.width = Math.round(chart.getWidth() * ratio);
    this.sheet.height = Math.round(chart.getHeight() * ratio);
    const sheet = pen(this.sheet);
    sheet.imageSmoothingEnabled = false;
    // Samples lie on the edges of the area, so the outer half of the outer pixels falls outside it.
    sheet.drawImage(
      this.small,
      0.5, 0.5, this.small.width - 1, this.small.height - 1,
      x0 * ratio, y0 * ratio, (x1 - x0) * ratio, (y1 - y0) * ratio,
    );
  }
}

/** @param {HTMLCanvasElement} canvas */
function pen(canvas) {
  return /** @type {CanvasRenderingContext2D} */ (canvas.getContext("2d", { willReadFrequently: true }));
}
