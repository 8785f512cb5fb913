// @ts-check
// Runs before the first paint, so that a chosen theme never flashes in the other one.

try {
  const theme = localStorage.getItem("finwright.theme");
  if (theme) document.documentElement.dataset.theme = theme;
} catch {
  // Storage is barred: the theme follows the system.
}
