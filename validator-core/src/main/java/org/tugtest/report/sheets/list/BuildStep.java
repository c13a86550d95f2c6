package org.tugtest.report.sheets.list;

/**
 * One step of building a loom.
 *
 * @param on what is worked on
 * @param task what is done
 * @param with parts and figures; empty: none
 * @param guessed whether it rests on a guess
 */
record BuildStep(BuildStage stage, String on, String task, String with, boolean guessed) {}
