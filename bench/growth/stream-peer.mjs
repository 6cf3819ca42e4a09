// The peer of the station's server for `open-devices.ts`: a bare server that does as little as can be done for the same
// streams. A line that is pushed is written to a file and flushed, everybody is told its number, and gives what follows
// on a number. It judges nothing, and knows nobody. PORT and FILE say where.
import { closeSync, fsyncSync, openSync, writeSync } from "node:fs";
import { createServer } from "node:http";

const streams = new Set();
const lines = [];
const file = openSync(process.env.FILE, "a");

const server = createServer((request, reply) => {
  if (request.url === "/api/log/live") return listen(request, reply);
  if (request.url === "/api/log/push") return read(request).then((text) => push(text, reply));
  if (request.url === "/api/log/pull") return read(request).then((text) => pull(text, reply));
  reply.end("{}");
});

function listen(request, reply) {
  reply.writeHead(200, { "content-type": "text/event-stream" });
  reply.write(`event: heads\ndata: ${lines.length}\n\n`);
  streams.add(reply);
  request.on("close", () => streams.delete(reply));
}

function push(text, reply) {
  writeSync(file, `${text}\n`);
  fsyncSync(file);
  lines.push(...JSON.parse(text).entries);
  reply.end("{}");
  for (const stream of streams) stream.write(`event: heads\ndata: ${lines.length}\n\n`);
}

function pull(text, reply) {
  reply.setHeader("content-type", "application/json");
  reply.end(JSON.stringify({ entries: lines.slice(JSON.parse(text).held) }));
}

async function read(request) {
  let text = "";
  for await (const chunk of request.setEncoding("utf8")) text += chunk;
  return text;
}

process.once("SIGTERM", () => {
  closeSync(file);
  process.exit();
});
// As long as the station's: a connection that ends between two pulls would be no fault of either.
server.keepAliveTimeout = 72_000;
server.listen(Number(process.env.PORT), "127.0.0.1");
