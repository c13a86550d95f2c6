package org.tugtest.route;

import java.util.List;
import org.tugtest.finding.Subject;
import org.tugtest.table.Cited;

/**
 * A circle of a bundle: a wire, or a cable as one.
 *
 * @param id of the wire, or of the group that is the cable
 * @param wires the wires in it, in natural order
 * @param outerMm its outside diameter
 */
public record Strand(String id, boolean cable, List<String> wires, Cited outerMm) {
  public Strand {
    wires = List.copyOf(wires);
  }

  /** The wire or the group. */
  public Subject subject() {
    return cable ? Subject.of("groups", id) : Subject.wire(id);
  }

  /** As people say it: {@code wire W1}, {@code cable G1}. */
  public String text() {
    return (cable ? "cable " : "wire ") + id;
  }
}
