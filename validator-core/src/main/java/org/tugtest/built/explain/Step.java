package org.tugtest.built.explain;

/**
 * A suspect and the loom with it.
 *
 * @param bench how the loom would then be
 */
record Step(Suspect suspect, Bench bench) {}
