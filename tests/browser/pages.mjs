#!/usr/bin/env node
// Opens pages in Chromium and tells where somebody who cannot see, or sees poorly, is left out:
//
//   tests/browser/pages.mjs page.html ...
//
// Each page is held to the rules of axe-core at the width of a phone, a tablet and a desk, may not be
// wider than the screen, and its print has to be a tagged PDF with its headings and lists.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";

import { new_page, started } from "./chromium.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const phone = 390;
const tablet = 820;
const desk = 1280;

async function broken_rules(page) {
  await page.told(axe);
  const violations = await page.told(`axe.run(document, {resultTypes: ["violations"]}).then(
    (results) => results.violations.map((one) => ({ id: one.id, help: one.help,
      where: one.nodes.map((node) => node.target.join(" ")) })))`);
  return violations.map(({ id, help, where }) => `${id}: ${help}, ${where.join("; ")}`);
}

async function wider_than_screen(page) {
  const over = await page.told(
    "document.documentElement.scrollWidth - document.documentElement.clientWidth");
  return over > 0 ? [`wider than the screen by ${over} px`] : [];
}

/** What a reader of the printed page is not told. */
async function untold_in_print(page, folder) {
  const { data } = await page.said("Page.printToPDF",
    { preferCSSPageSize: true, printBackground: true, generateTaggedPDF: true });
  const file = join(folder, "print.pdf");
  writeFileSync(file, Buffer.from(data, "base64"));
  const tagged = /^Tagged: +yes$/m.test(execFileSync("pdfinfo", [file], { encoding: "utf8" }));
  if (!tagged) return ["its print is not tagged"];
  const parts = execFileSync("pdfinfo", ["-struct", file],
    { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] });
  const lists = await page.told("document.querySelectorAll('ul').length");
  const missing = ["H1", lists > 0 ? "LI" : "H1"].filter((tag) => !parts.includes(tag));
  return missing.map((tag) => `its print has no ${tag}`);
}

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error("usage: tests/browser/pages.mjs page.html ...");
  process.exit(2);
}
const browser = started(process.env.EVENCLAW_CHROMIUM ?? "chromium");
const folder = mkdtempSync(join(tmpdir(), "evenclaw-prints-"));
let wrong = 0;
try {
  const page = await new_page(browser);
  for (const file of files) {
    const faults = [];
    for (const width of [phone, tablet, desk]) {
      await page.opened(pathToFileURL(resolve(file)).href, width);
      const here = [...await broken_rules(page), ...await wider_than_screen(page)];
      faults.push(...here.map((fault) => `${width} px: ${fault}`));
    }
    faults.push(...await untold_in_print(page, folder));
    for (const fault of faults) console.log(`${file}: ${fault}`);
    wrong += faults.length;
  }
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}
console.log(`pages in a browser: ${files.length} read, ${wrong} faults`);
process.exitCode = wrong === 0 ? 0 : 1;
