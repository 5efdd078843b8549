import fc from "fast-check";

// The same cases on every machine, so that a failure is somebody's change. FAST_CHECK_SEED=n tries others.
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env.FAST_CHECK_SEED ?? 20261125) });
