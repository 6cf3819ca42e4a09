// `npm start`: sets the checkout up where needed, then serves the station. Arguments go to the server: `-- --empty`.
import { root, setUp } from "./set-up.mjs";

setUp(["web", "server"]).then(() => {
  process.chdir(root);
  return import("../dist/server/main.js");
});
