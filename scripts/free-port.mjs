#!/usr/bin/env node
// Prints a TCP port of this machine that is free now.
import { createServer } from 'node:net';

const server = createServer();
server.listen(0, '127.0.0.1', () => {
  console.log(server.address().port);
  server.close();
});
