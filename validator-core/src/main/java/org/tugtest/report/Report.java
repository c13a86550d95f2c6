package org.tugtest.report;

import java.util.List;
import java.util.Optional;
import org.tugtest.rule.RuleInfo;
import org.tugtest.text.Place;

/**
 * Everything a report shows; every writer reads it and none alters it.
 *
 * @param version of the tool
 * @param folder the harness folder, relative to the folder that places are shown from (the
 *     repository's or the project's), with {@code /}; empty when they are the same
 * @param gate what blocks
 * @param rules all rules of the catalogue, in its order
 * @param harnesses the roots, sorted by path
 * @param withJson whether it is written as JSON too, which leaves nothing out
 */
public record Report(
    String version,
    String folder,
    Revision revision,
    Gate gate,
    List<RuleInfo> rules,
    List<HarnessReport> harnesses,
    boolean withJson) {
  /** A report that is written in every format. */
  public Report(
      String version,
      String folder,
      Revision revision,
      Gate gate,
      List<RuleInfo> rules,
      List<HarnessReport> harnesses) {
    this(version, folder, revision, gate, rules, harnesses, true);
  }

  /** How a check ended. */
  public enum Outcome {
    /** Nothing blocks. */
    CLEAN("clean"),
    /** A finding blocks. */
    FINDINGS("findings"),
    /** A rule broke, or there was nothing to check. */
    CANNOT_CHECK("cannot-check");

    private final String word;

    Outcome(String word) {
      this.word = word;
    }

    /** The word in {@code outcome.txt}. */
    public String word() {
      return word;
    }
  }

  public Report {
    rules = List.copyOf(rules);
    harnesses = List.copyOf(harnesses);
  }

  /** The same, written as JSON or not. */
  public Report withJson(boolean written) {
    return new Report(version, folder, revision, gate, rules, harnesses, written);
  }

  /**
   * What to say where a page has no room for all: the JSON file that has it, and when it is not
   * written how it would be.
   *
   * @param file its name
   */
  public String json(String file) {
    return withJson ? file : "with json among tugtest.formats, " + file;
  }

  /** How the check ended: what could not be judged outweighs findings. */
  public Outcome outcome() {
    if (harnesses.isEmpty() || harnesses.stream().anyMatch(this::failed)) {
      return Outcome.CANNOT_CHECK;
    }
    return harnesses.stream().anyMatch(this::blocked) ? Outcome.FINDINGS : Outcome.CLEAN;
  }

  /**
   * Whether a finding of this root blocks, or a change of its circuits, or a rule judged too few of
   * its subjects.
   */
  public boolean blocked(HarnessReport harness) {
    return harness.result().findings().stream().anyMatch(found -> gate.blocks(harness, found))
        || gate.blocksCircuits(harness)
        || harness.result().coverage().stream().anyMatch(gate::blocks);
  }

  /** Whether this root could not be checked: a rule broke, or it holds nothing. */
  public boolean failed(HarnessReport harness) {
    return harness.failed() || (gate.refuseEmpty() && harness.holdsNothing());
  }

  /** Whether nothing of this root blocks and all of it could be judged. */
  public boolean passes(HarnessReport harness) {
    return !blocked(harness) && !failed(harness);
  }

  /** The path of a file of the harness, from the folder that places are shown from. */
  public String path(String file) {
    String from = folder;
    String to = file;
    while (to.startsWith("../") && !from.isEmpty()) {
      to = to.substring(3);
      int slash = from.lastIndexOf('/');
      from = slash < 0 ? "" : from.substring(0, slash);
    }
    return from.isEmpty() ? to : from + "/" + to;
  }

  /** {@code path:line:column} of a place, from the folder that places are shown from. */
  public String shown(Place place) {
    return path(place.file()) + ":" + place.line() + ":" + place.column();
  }

  /** What there is to say of a rule. */
  public Optional<RuleInfo> rule(String id) {
    return rules.stream().filter(rule -> rule.id().equals(id)).findFirst();
  }
}
