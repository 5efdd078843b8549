import "./shell.js";
