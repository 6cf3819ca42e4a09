#!/usr/bin/env node
// `npm run -s drykeel -- ...`: the command line, built where needed.
import { setUp } from "./set-up.mjs";

setUp(["cli"]).then(() => import("../dist/cli/main.js"));
