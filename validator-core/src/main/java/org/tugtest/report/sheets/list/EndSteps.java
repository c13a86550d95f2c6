package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Housing;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.html.text.WireText;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Scope;
import org.tugtest.text.Series;

/** The steps at the ends of the wires: boots and labels, seals and terminals, housings. */
final class EndSteps {
  private static final int NAMED = 14;
  private final Facts facts;
  private final Scope scope;
  private final EndCells ends;
  private final CutLength lengths;
  private final WireText texts;
  private final List<BuildStep> steps = new ArrayList<>();

  EndSteps(Facts facts, Scope scope) {
    this.facts = facts;
    this.scope = scope;
    this.ends = new EndCells(facts);
    this.lengths = new CutLength(facts);
    this.texts = new WireText(facts.harness());
  }

  List<BuildStep> all() {
    branches();
    terminals();
    housings();
    return List.copyOf(steps);
  }

  private void add(BuildStage stage, String on, String task, String with) {
    steps.add(new BuildStep(stage, on, task, with, false));
  }

  private void branches() {
    for (String id : LoomParts.connectors(facts, scope)) {
      Connector connector = facts.harness().connectors().get(id);
      List<String> on = new ArrayList<>();
      String boot = connector == null ? null : connector.boot();
      String label = connector == null ? id : connector.labelText();
      if (boot != null) {
        on.add("boot " + boot);
      }
      if (!label.isEmpty()) {
        on.add("label " + label);
      }
      List<String> wires =
          endsIn(id).stream()
              .map(end -> end.wire().labelText())
              .filter(text -> !text.isEmpty())
              .distinct()
              .toList();
      if (!wires.isEmpty()) {
        on.add("wire labels " + Series.and(wires, NAMED));
      }
      if (!on.isEmpty()) {
        add(
            BuildStage.BRANCHES,
            "branch to " + id,
            "slide on, in this order",
            String.join("; ", on));
      }
    }
  }

  /** A donor's wire has its terminals already. */
  private boolean fresh(Wire wire) {
    return !lengths.fromDonor(wire);
  }

  /** The ends of new wires in a connector. */
  private List<WireEnd> endsIn(String connector) {
    return LoomParts.sorted(facts.wiring().cavitiesOf(connector)).stream()
        .flatMap(cavity -> facts.wiring().endsAt(Point.cavity(connector, cavity)).stream())
        .filter(end -> fresh(end.wire()))
        .toList();
  }

  private void terminals() {
    for (String id : LoomParts.connectors(facts, scope)) {
      List<WireEnd> its = endsIn(id);
      if (!its.isEmpty()) {
        String seals = counted(its.stream().map(ends::seal).toList());
        String terminals = counted(its.stream().map(ends::terminal).toList());
        add(
            BuildStage.TERMINALS,
            id,
            (seals.isEmpty() ? "" : "push on the seals, ") + "strip and crimp by the crimp table",
            seals.isEmpty() ? terminals : seals + "; " + terminals);
      }
    }
    Map<String, List<WireEnd>> pins = new LinkedHashMap<>();
    for (Wire wire : LoomParts.wires(facts.harness(), scope)) {
      for (WireEnd end : List.of(new WireEnd(wire, true), new WireEnd(wire, false))) {
        ends.point(end)
            .filter(point -> point.kind() == Point.Kind.PIN && fresh(wire))
            .ifPresent(p -> pins.computeIfAbsent(p.owner(), o -> new ArrayList<>()).add(end));
      }
    }
    pins.forEach(
        (device, its) ->
            add(
                BuildStage.TERMINALS,
                device
                    + ", pins "
                    + its.stream().map(ends::contact).distinct().collect(Collectors.joining(", ")),
                "slide on labels and boots, strip and crimp",
                counted(its.stream().map(ends::terminal).toList())));
  }

  /** {@code 3 × t2.8-pin-s, 1 × t2.8-pin-l}; what is not known is said. */
  private static String counted(List<Cell> cells) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    cells.stream()
        .filter(cell -> !cell.isEmpty())
        .forEach(cell -> counts.merge(cell.value(), 1, Integer::sum));
    return counts.entrySet().stream()
        .map(count -> count.getValue() + " × " + count.getKey())
        .collect(Collectors.joining(", "));
  }

  private void housings() {
    for (String id : LoomParts.connectors(facts, scope)) {
      Connector connector = facts.harness().connectors().get(id);
      List<WireEnd> its = endsIn(id);
      Housing housing = facts.wiring().mating().housingOf(id).orElse(null);
      long blanks =
          facts.wiring().cavitiesOf(id).stream()
              .filter(cavity -> Blanks.isBlanked(facts, Point.cavity(id, cavity)))
              .count();
      if (its.isEmpty() && blanks == 0) {
        continue;
      }
      List<String> task = new ArrayList<>();
      if (!its.isEmpty()) {
        task.add(
            "insert " + its.size() + " by the pinout, tug " + (its.size() == 1 ? "it" : "each"));
      }
      if (blanks > 0) {
        task.add("plug " + blanks + (blanks == 1 ? " cavity" : " cavities"));
      }
      if (housing != null && housing.secondaryLock()) {
        task.add("close the secondary lock");
      }
      if (connector != null && connector.boot() != null) {
        task.add("seat the boot");
      }
      String part = connector == null ? null : connector.housing();
      steps.add(
          new BuildStep(
              BuildStage.HOUSINGS,
              id,
              String.join("; ", task),
              part == null ? "housing not known" : part,
              its.stream().anyMatch(end -> texts.guessed(end.wire()))));
    }
  }
}
