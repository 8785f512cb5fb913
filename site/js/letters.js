// @ts-check
// How large texts are, of the size that drawings and charts are laid out for: they grow with the window, and with what a reader has set.

const USUAL = 16; // px of the root

export const letters = () => parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL;
