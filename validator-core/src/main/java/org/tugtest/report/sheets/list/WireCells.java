package org.tugtest.report.sheets.list;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tugtest.facts.Facts;
import org.tugtest.finding.Basis;
import org.tugtest.model.Evidence;
import org.tugtest.model.Group;
import org.tugtest.model.Wire;
import org.tugtest.report.html.text.WireText;
import org.tugtest.report.sheets.Cell;
import org.tugtest.table.Cited;

/** What there is to print of wires. */
final class WireCells {
  private final Facts facts;
  private final WireText texts;
  private final Map<String, Group> groups = new LinkedHashMap<>();

  WireCells(Facts facts) {
    this.facts = facts;
    this.texts = new WireText(facts.harness());
    for (Group group : facts.harness().groups().values()) {
      group.wires().forEach(wire -> groups.putIfAbsent(wire, group));
      if (group.screen() != null) {
        groups.putIfAbsent(group.screen(), group);
      }
    }
  }

  /** The id, with what stands on its label where that is another; "guess" when it is one. */
  Cell id(Wire wire) {
    String label = wire.labelText();
    String below = label.isEmpty() ? "no label" : label.equals(wire.id()) ? "" : "label " + label;
    return Cell.text(wire.id()).over(below).guessed(texts.guessed(wire));
  }

  /** What it rests on, in the word of the format; empty: not said. */
  Cell evidence(Wire wire) {
    Evidence evidence = texts.evidence(wire);
    return Cell.text(evidence == null ? "" : evidence.word());
  }

  /** Its part. */
  Cell part(Wire wire) {
    if (wire.part() == null) {
      return Cell.unknown("no part given");
    }
    boolean known = facts.harness().parts().wires().containsKey(wire.part());
    return Cell.text(wire.part()).over(known ? "" : "no such part");
  }

  /** By what wires are bought: the part, else the size; empty when neither is known. */
  String kind(Wire wire) {
    String part = wire.part();
    return part != null ? part : texts.size(wire);
  }

  /** The colour as seen, over the one on the drawing where that differs. */
  Cell colour(Wire wire) {
    String drawn = wire.colourDrawn();
    if (wire.colour() == null) {
      return drawn == null ? Cell.unknown("no colour given") : Cell.colour(drawn).over("as drawn");
    }
    Cell seen = Cell.colour(wire.colour());
    return drawn == null || drawn.equals(wire.colour()) ? seen : seen.over("drawn as " + drawn);
  }

  /** {@code 0.5 mm²} or {@code AWG 20} as given. */
  Cell size(Wire wire) {
    String size = texts.size(wire);
    return size.isEmpty()
        ? Cell.unknown("no size given")
        : Cell.text(size).shown(size.replace(' ', '\u00A0'));
  }

  /** The area in mm2. */
  Cell area(Wire wire) {
    return facts
        .fitting()
        .sizes()
        .areaMm2(wire)
        .map(area -> Cell.number(area.value(), 3))
        .orElse(Cell.unknown("no size given"));
  }

  /** The outside diameter in mm; one from a table says so. */
  Cell outer(Wire wire) {
    Cited outer = facts.fitting().sizes().outerMm(wire).orElse(null);
    if (outer == null) {
      return Cell.unknown("no diameter given");
    }
    return Cell.number(outer.value(), 2).over(outer.basis() == Basis.GIVEN ? "" : "from a table");
  }

  /** The twisted group or cable it lies in. */
  Cell group(Wire wire) {
    Group group = groups.get(wire.id());
    return group == null ? Cell.EMPTY : Cell.text(group.id()).over(noun(group));
  }

  private static String noun(Group group) {
    return group.kind() == null ? "" : group.kind().word();
  }

  /** Its circuit, as the files name it. */
  Cell circuit(Wire wire) {
    return Cell.text(wire.circuit());
  }

  /** What becomes of a donor wire. */
  Cell decision(Wire wire) {
    return Cell.text(wire.decision() == null ? "" : wire.decision().word());
  }

  /** Whether it lies in a cable, and so is not cut by itself. */
  boolean inCable(Wire wire) {
    Group group = groups.get(wire.id());
    return group != null && group.kind() == Group.Kind.CABLE;
  }
}
