// A headless Chromium that is spoken to over a pipe: no driver, no port.
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const patience_ms = 60_000;

/** Starts `program`; `close` ends it and removes its profile. */
export function started(program) {
  const profile = mkdtempSync(join(tmpdir(), "evenclaw-pages-"));
  const flags = ["--headless", "--disable-gpu", "--no-first-run", "--disable-extensions",
    "--hide-scrollbars", "--remote-debugging-pipe", `--user-data-dir=${profile}`];
  // Its sandbox refuses to run as root.
  if (process.getuid?.() === 0) flags.push("--no-sandbox");
  const child = spawn(program, flags, { stdio: ["ignore", "ignore", "ignore", "pipe", "pipe"] });
  const [to, from] = [child.stdio[3], child.stdio[4]];
  const waiting = new Map();
  const events = [];
  let last_id = 0;
  let unread = "";

  const hear = (message) => {
    if (message.id === undefined) {
      const at = events.findIndex((event) => event.method === message.method);
      if (at >= 0) events.splice(at, 1)[0].resolve(message.params);
      return;
    }
    const { resolve, reject } = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.error) reject(new Error(message.error.message));
    else resolve(message.result);
  };
  from.setEncoding("utf8");
  from.on("data", (text) => {
    const messages = (unread + text).split("\0");
    unread = messages.pop();
    for (const message of messages) hear(JSON.parse(message));
  });

  const in_time = (promise, what) => {
    let timer;
    const late = new Promise((_, reject) => {
      timer = setTimeout(() => reject(new Error(`the browser does not answer ${what}`)),
        patience_ms);
    });
    return Promise.race([promise, late]).finally(() => clearTimeout(timer));
  };

  return {
    said: (method, params = {}, sessionId) => in_time(new Promise((resolve, reject) => {
      const id = ++last_id;
      waiting.set(id, { resolve, reject });
      to.write(JSON.stringify({ id, method, params, sessionId }) + "\0");
    }), method),
    event: (method) => in_time(new Promise((resolve) => events.push({ method, resolve })), method),
    close: async () => {
      const gone = new Promise((resolve) => child.once("exit", resolve));
      child.kill();
      await gone;
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** A page of the browser; `opened` loads a file, `told` gives back what an expression comes to. */
export async function new_page(browser) {
  const { targetId } = await browser.said("Target.createTarget", { url: "about:blank" });
  const { sessionId } = await browser.said("Target.attachToTarget", { targetId, flatten: true });
  const said = (method, params) => browser.said(method, params, sessionId);
  await said("Page.enable");
  return {
    said,
    opened: async (url, width) => {
      await said("Emulation.setDeviceMetricsOverride",
        { width, height: 900, deviceScaleFactor: 1, mobile: false });
      const loaded = browser.event("Page.loadEventFired");
      await said("Page.navigate", { url });
      await loaded;
    },
    told: async (expression) => {
      const { result, exceptionDetails } = await said("Runtime.evaluate",
        { expression, awaitPromise: true, returnByValue: true });
      if (exceptionDetails) throw new Error(exceptionDetails.exception?.description);
      return result.value;
    },
  };
}
