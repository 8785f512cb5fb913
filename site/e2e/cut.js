// Stands before the page's scripts and finds texts that are cut or pile up: those of the page by their boxes, those of the charts by what is
// written on their canvases.
globalThis.texts = (() => {
  const proto = CanvasRenderingContext2D.prototype;
  const { fillText, clearRect } = proto;
  /** @type {WeakMap<Element, {text: string, px: number, left: number, right: number, top: number, bottom: number}[]>} */
  const written = new WeakMap();
  proto.clearRect = function (...rect) {
    if (rect[0] <= 0 && rect[1] <= 0) written.set(this.canvas, []);
    return clearRect.apply(this, rect);
  };
  proto.fillText = function (text, x, y, ...rest) {
    const px = Number(/([\d.]+)px/.exec(this.font)?.[1] ?? 12);
    const wide = this.measureText(text).width;
    const from = { left: 0, start: 0, center: -wide / 2, right: -wide, end: -wide }[this.textAlign] ?? 0;
    const up = { top: 0, middle: -0.37 * px, bottom: -0.9 * px, alphabetic: -0.74 * px }[this.textBaseline] ?? -0.74 * px; // to the top of figures
    const corners = [[x + from, y + up], [x + from + wide, y + up + 0.74 * px]].map(([a, b]) => new DOMPoint(a, b).matrixTransform(this.getTransform()));
    const [left, right] = corners.map((p) => p.x).sort((a, b) => a - b), [top, bottom] = corners.map((p) => p.y).sort((a, b) => a - b);
    if (text.trim()) written.set(this.canvas, [...(written.get(this.canvas) ?? []), { text, px, left, right, top, bottom }]);
    return fillText.call(this, text, x, y, ...rest);
  };

  const over = (a, b, by) => Math.min(a.right, b.right) - Math.max(a.left, b.left) > by && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > by;

  function ofCharts() {
    const wrong = [];
    for (const canvas of document.querySelectorAll(".plot canvas")) {
      if (!canvas.checkVisibility() || !canvas.clientWidth) continue;
      const name = canvas.closest(".plot").dataset.plot;
      const ratio = canvas.width / canvas.clientWidth;
      const list = written.get(canvas) ?? [];
      list.forEach((one, i) => {
        if (/…|\.\.\./.test(one.text)) wrong.push(`${name}: ${one.text} is cut`);
        if (one.left < -1.5 * ratio || one.right > canvas.width + 1.5 * ratio || one.top < -1.5 * ratio || one.bottom > canvas.height + 1.5 * ratio) wrong.push(`${name}: ${one.text} leaves the chart`);
        for (const other of list.slice(0, i)) {
          if (over(one, other, 1.5 * ratio)) wrong.push(`${name}: ${one.text} lies on ${other.text}`);
        }
      });
    }
    return wrong;
  }

  /** Said to those who listen alone. @param {Element} e */
  const unseen = (e) => {
    const { width, height } = e.getBoundingClientRect();
    return width <= 1 && height <= 1;
  };

  const hides = (overflow) => overflow === "hidden" || overflow === "clip";
  const pen = document.createElement("canvas").getContext("2d");

  /** @param {Element} e */
  function named(e) {
    return `${(e.closest("[id]") ?? e).id} ${e.className.baseVal ?? e.className} “${(e.value ?? e.textContent).trim().slice(0, 40)}”`;
  }

  function ofPage() {
    const wrong = [], boxes = [];
    for (const e of document.querySelectorAll("body *")) {
      if (!(e instanceof HTMLElement) || e.closest(".unseen, .probe, iframe, canvas, .skip, option, noscript, script, .origin, .says") || !e.checkVisibility({ opacityProperty: true, visibilityProperty: true })) continue;
      const style = getComputedStyle(e);
      if (e instanceof HTMLInputElement) {
        if (e.type === "text" && e.scrollWidth > e.clientWidth + 1) wrong.push(`${named(e)} is cut`);
        continue;
      }
      if (e instanceof HTMLSelectElement) {
        pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
        pen.letterSpacing = style.letterSpacing === "normal" ? "0px" : style.letterSpacing;
        const room = e.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
        const text = e.selectedOptions[0]?.text ?? "";
        if (pen.measureText(text).width > room + 1) wrong.push(`${named(e)} “${text}” is cut in its list`);
        continue;
      }
      for (const node of e.childNodes) {
        if (node.nodeType !== Node.TEXT_NODE || !node.data.trim()) continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        for (const rect of range.getClientRects()) {
          if (rect.width < 1 || unseen(e)) continue;
          const middle = (rect.top + rect.bottom) / 2, half = Math.min(rect.height, 1.1 * parseFloat(style.fontSize)) / 2;
          const box = { e, left: rect.left, right: rect.right, top: middle - 0.7 * half, bottom: middle + 0.7 * half };
          let seen = true;
          for (let around = e; around && around !== document.body && seen; around = around.parentElement) {
            const { overflowX, overflowY } = getComputedStyle(around), edge = around.getBoundingClientRect();
            if (hides(overflowX) && (box.left < edge.left - 1 || box.right > edge.right + 1) || hides(overflowY) && (box.top < edge.top - 1 || box.bottom > edge.bottom + 1)) {
              wrong.push(`${named(e)} is cut by ${around.className || around.id || around.tagName}`);
              seen = false;
            }
            if (overflowX !== "visible" || overflowY !== "visible") { // what is scrolled away is not in sight
              seen &&= box.top >= edge.top - 1 && box.bottom <= edge.bottom + 1 && box.left >= edge.left - 1 && box.right <= edge.right + 1;
            }
          }
          if (seen) boxes.push(box);
        }
      }
    }
    boxes.sort((a, b) => a.top - b.top);
    boxes.forEach((box, i) => {
      for (let k = i + 1; k < boxes.length && boxes[k].top < box.bottom; k++) {
        if (over(box, boxes[k], 1.5) && fixed(box.e) === fixed(boxes[k].e)) wrong.push(`${named(boxes[k].e)} lies on ${named(box.e)}`);
      }
    });
    return wrong;
  }

  /** What stays while the page is scrolled lies over it. @param {Element} e */
  const fixed = (e) => (innerWidth < 704 ? e.closest(".decides, .switch, [popover], dialog, .trouble") : null);

  /** Texts that are smaller than so many px. @param {number} least */
  function small(least) {
    const found = new Set();
    for (const e of document.querySelectorAll("body *")) {
      const own = [...e.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.data.trim());
      if (!own || e.closest("sub, sup, .unseen, .printed, .picture, #paper, iframe, option, script, noscript") || !e.checkVisibility({ visibilityProperty: true })) continue;
      const scale = e instanceof SVGElement && e.getScreenCTM ? Math.hypot(e.getScreenCTM().a, e.getScreenCTM().b) : 1;
      const px = parseFloat(getComputedStyle(e).fontSize) * scale;
      if (px < least - 0.05) found.add(`${named(e)} has ${px.toFixed(1)} px`);
    }
    for (const canvas of document.querySelectorAll(".plot canvas")) {
      for (const { text, px } of canvas.checkVisibility() ? (written.get(canvas) ?? []) : []) if (px < least) found.add(`${text} in a chart has ${px} px`);
    }
    return [...found];
  }

  return { wrong: () => [...new Set([...ofPage(), ...ofCharts()])], small };
})();
