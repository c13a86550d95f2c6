package org.tugtest.hook;

import java.time.LocalDate;
import org.tugtest.check.RuleCatalog;
import org.tugtest.facts.Facts;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;

/**
 * Sets up what every check needs while git is still being read: the schema, the tables and the
 * solver come to life on a circuit of three wires. Of its results nothing is used.
 */
final class Ahead {
  private static final String ROOT = "ahead.harness.json";
  private static final String CIRCUIT =
      """
      {"format": 1, "sketch": true,
       "devices": {
         "BAT": {"at": "a", "elements": {
           "cell": {"kind": "source", "plus": "+", "minus": "-", "volts": 12.6, "ohms": 0.01}}},
         "BOX": {"at": "a", "elements": {
           "f": {"kind": "fuse", "a": "1", "b": "2", "ratingA": 5}}},
         "LAMP": {"at": "b", "elements": {
           "bulb": {"kind": "load", "a": "1", "b": "2", "watts": 21}}}},
       "layout": {
         "nodes": {"a": {}, "b": {}},
         "segments": {"s": {"from": "a", "to": "b", "lengthMm": 900}}},
       "states": {"on": {"on": ["LAMP.bulb"]}},
       "wires": {
         "W1": {"from": "BAT:+", "to": "BOX:1", "areaMm2": 1.0, "cutMm": 300},
         "W2": {"from": "BOX:2", "to": "LAMP:1", "areaMm2": 0.75},
         "W3": {"from": "LAMP:2", "to": "BAT:-", "areaMm2": 0.75}}}
      """;

  private Ahead() {}

  /** Begins, on a thread of its own. */
  static void begin() {
    Thread thread = new Thread(Ahead::run, "ahead");
    thread.setDaemon(true);
    thread.start();
  }

  /** What is broken here breaks the check that follows too, and is told by that. */
  private static void run() {
    Facts facts = facts();
    facts.operating();
    facts.faults();
  }

  /** All of that circuit. */
  static Facts facts() {
    RuleCatalog catalog = RuleCatalog.standard();
    HarnessReader reader = new HarnessReader(MemoryFiles.of(ROOT, CIRCUIT), ReadLimits.STANDARD);
    return Facts.of(reader.read(ROOT), LocalDate.EPOCH, catalog.known());
  }
}
