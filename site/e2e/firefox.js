// Does the page's main job in Firefox, which headless has no WebGL2, so that the drawing is the picture. Arguments: the
// program, the address of the page, a folder for what is saved, and two scripts that have workers try another origin: one for
// the page, the other for a page without a policy, whose address comes next; and the page as
// one file.
// Steps go to the output as they are done; whatever fails ends it.

import assert from "node:assert/strict";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import puppeteer from "puppeteer-core";

const [executablePath, address, folder, script, bareScript, bare, single] = process.argv.slice(2);
const PATIENCE = 60000; // ms

const browser = await puppeteer.launch({
  browser: "firefox",
  executablePath,
  headless: true,
  extraPrefsFirefox: {
    "browser.download.folderList": 2, // the folder named here
    "browser.download.dir": folder,
    "browser.download.always_ask_before_handling_new_types": false,
  },
});

const id = (name) => `[data-testid="${name}"]`;
const marked = (name) => `performance.getEntriesByName("finwright:${name}").length > 0`;

/** @param {string} name @param {() => Promise<void>} act */
async function step(name, act) {
  await act();
  console.log(name);
}

/** A tab that collects what its page complains of. */
async function open() {
  const page = await browser.newPage();
  page.setDefaultTimeout(PATIENCE);
  await page.setViewport({ width: 1440, height: 900 });
  const complaints = [];
  page.on("console", (message) => ["error", "warn", "assert"].includes(message.type()) && complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(String(error)));
  return { page, complaints };
}

async function type(page, field, text) {
  await page.focus(id(`field-${field}`));
  await page.$eval(id(`field-${field}`), (input) => input.select());
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

const shows = (page, figure, text) => page.waitForFunction(`document.querySelector('${id(`figure-${figure}-value`)}')?.textContent === "${text}"`);

async function saved() {
  for (const deadline = Date.now() + PATIENCE; Date.now() < deadline; await pause(100)) {
    const [name] = (await readdir(folder)).filter((name) => name.endsWith(".json"));
    const text = name && (await readFile(join(folder, name), "utf8"));
    if (text) return JSON.parse(text);
  }
  throw new Error("nothing was saved");
}

async function mainJob() {
  const { page, complaints } = await open();
  await step("the page is drawn, as a picture", async () => {
    await page.goto(address);
    await page.waitForFunction(marked("drawn"));
    await page.waitForSelector(".drawing.as-picture svg.picture");
  });
  await step("an entry changes the figures and the drawing", async () => {
    const before = await page.$eval("svg.picture", (picture) => picture.outerHTML);
    await type(page, "fin_height", "11 mm");
    await shows(page, "fin_od", "47.40");
    await page.waitForFunction((before) => document.querySelector("svg.picture").outerHTML !== before, {}, before);
  });
  await step("an entry that cannot be used is told at its field", async () => {
    await type(page, "fin_height", "tall");
    await page.waitForFunction(`document.querySelector('${id("error-fin_height")}').textContent !== ""`);
    await type(page, "fin_height", "12 mm");
    await shows(page, "fin_od", "49.40");
  });
  await step("each section answers", async () => {
    for (const [section, part] of [["heat", id("methods")], ["making", id("verdicts")], ["surface", id("groups")]]) {
      await page.click(id(`section-${section}`));
      await page.waitForFunction(`document.querySelector('${id(`section-${section}`)}').ariaPressed === "true" && document.querySelector('${part}').checkVisibility() && document.querySelector('${part}').textContent.trim() !== ""`);
    }
  });
  await step("a working opens", async () => {
    await page.click(`${id("figure-fin_efficiency")} .name`);
    await page.waitForFunction(`document.querySelector('${id("working")}').open && document.querySelector('${id("working-result")}').textContent !== ""`);
    await page.click(id("working-close"));
  });
  await step("a design is saved to a file", async () => {
    await page.click(id("save"));
    assert.equal((await saved()).base.fields.fin_height.text, "12 mm");
  });
  await step("a reload keeps the work", async () => {
    await page.reload();
    await page.waitForFunction(marked("drawn"));
    assert.equal(await page.$eval(id("field-fin_height"), (input) => input.value), "12 mm");
    await shows(page, "fin_od", "49.40");
  });
  assert.deepEqual(complaints, []);
  await page.close();
}

/** From a disk, without a host. */
async function fromDisk() {
  const { page, complaints } = await open();
  await step("the page as one file does its job from a disk", async () => {
    await page.goto(single);
    await page.waitForFunction(marked("drawn"));
    await type(page, "fin_height", "11 mm");
    await shows(page, "fin_od", "47.40");
    await page.click(id("section-heat"));
    await page.waitForFunction(`document.querySelector('${id("methods")}').textContent.trim() !== ""`);
    await page.reload();
    await shows(page, "fin_od", "47.40");
  });
  assert.deepEqual(complaints, []);
  await page.close();
}

/** What the workers of a page come to. @param {string} address @param {string} script @param {(page: any) => Promise<any>} begin */
async function tried(address, script, begin) {
  const { page } = await open();
  await page.evaluateOnNewDocument(script);
  await page.goto(address);
  await begin(page);
  await page.waitForFunction("globalThis.tried !== undefined");
  const told = await page.evaluate("tried");
  await page.close();
  return told;
}

try {
  await mainJob();
  await fromDisk();
  await step("the page's worker reaches no other origin", async () => {
    const told = await tried(address, script, (page) => page.waitForFunction(marked("figures")));
    assert.deepEqual(told, { "/fetch": "refused", "/socket": "refused", "/import": "refused", "/script": "refused" });
  });
  console.log("now without a policy");
  await tried(bare, bareScript, (page) => page.evaluate(`new Worker(URL.createObjectURL(new Blob([""], { type: "text/javascript" }))), true`));
} finally {
  await browser.close();
}
