package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Connector;
import org.tugtest.model.Covering;
import org.tugtest.model.Group;
import org.tugtest.model.Housing;
import org.tugtest.model.Layout;
import org.tugtest.model.Splice;
import org.tugtest.model.Wire;
import org.tugtest.network.Point;
import org.tugtest.network.WireEnd;
import org.tugtest.report.html.text.WireText;
import org.tugtest.report.sheets.Cell;
import org.tugtest.report.sheets.Scope;
import org.tugtest.table.LengthToleranceTable;
import org.tugtest.text.Quoted;
import org.tugtest.text.Series;

/** The steps in which one loom is built. */
final class BuildSteps {
  private static final int NAMED = 14;
  private final Facts facts;
  private final Scope scope;
  private final List<Layout.Segment> segments;
  private final EndCells ends;
  private final CutLength lengths;
  private final WireText texts;
  private final List<BuildStep> steps = new ArrayList<>();

  BuildSteps(Facts facts, Scope scope, List<Layout.Segment> segments) {
    this.facts = facts;
    this.scope = scope;
    this.segments = segments;
    this.ends = new EndCells(facts);
    this.lengths = new CutLength(facts);
    this.texts = new WireText(facts.harness());
  }

  /** All of them, stage by stage. */
  List<BuildStep> all() {
    List<Wire> wires = LoomParts.wires(facts.harness(), scope);
    wires.forEach(this::donor);
    cut();
    laid();
    groups();
    splices();
    coverings(true);
    branches();
    terminals();
    housings();
    coverings(false);
    supports();
    proof();
    steps.sort(Comparator.comparing(BuildStep::stage));
    return List.copyOf(steps);
  }

  private void add(BuildStage stage, String on, String task, String with) {
    steps.add(new BuildStep(stage, on, task, with, false));
  }

  private void donor(Wire wire) {
    if (wire.decision() == null) {
      return;
    }
    String task =
        switch (wire.decision()) {
          case KEEP -> "keep it as it is";
          case EXTEND -> "extend it: splice a piece on, away from breakouts and plugs";
          case REMOVE -> "take it out to both ends; cap what stays";
          case UNDECIDED -> "not decided yet: settle it before you go on";
        };
    String reason = wire.reason() == null ? "no reason given" : wire.reason();
    steps.add(
        new BuildStep(
            BuildStage.DONOR,
            wire.id() + ", " + WireText.end(wire.from()) + " to " + WireText.end(wire.to()),
            task,
            reason,
            texts.guessed(wire)));
  }

  private void cut() {
    CutPlan plan = CutPlan.of(facts, scope);
    Map<CutPlan.Stock, List<CutPlan.Piece>> byStock = new LinkedHashMap<>();
    for (CutPlan.Piece piece : plan.pieces()) {
      if (!piece.inPlace()) {
        CutPlan.Stock stock = new CutPlan.Stock(piece.part(), piece.cable() != null);
        byStock.computeIfAbsent(stock, none -> new ArrayList<>()).add(piece);
      }
    }
    byStock.forEach(
        (stock, pieces) -> {
          long unknown = pieces.stream().filter(piece -> piece.mm() == null).count();
          String name = stock.part().isEmpty() ? "wire of no given part" : stock.part();
          add(
              BuildStage.CUT,
              name,
              "cut " + pieces.size() + " by the cut list and mark each at both ends",
              unknown == 0 ? "" : unknown + " without a known length: lay in place and mark");
        });
  }

  /** In the order of the cut list. */
  private void laid() {
    for (CutPlan.Piece piece : CutPlan.of(facts, scope).pieces()) {
      if (piece.inPlace()) {
        Wire wire = piece.wires().get(0);
        String ends = WireText.end(wire.from()) + " to " + WireText.end(wire.to());
        Double mm = piece.mm();
        String band =
            mm == null
                ? "no length known"
                : Cell.number(mm, 0).value()
                    + " mm, or up to "
                    + Quoted.number(LengthToleranceTable.plusMm(mm).value())
                    + " mm longer";
        String part = piece.part().isEmpty() ? "no part given" : piece.part();
        steps.add(
            new BuildStep(
                BuildStage.LAID,
                piece.cable() == null ? wire.id() + ", " + ends : "cable " + piece.cable().id(),
                "run it " + way(wire) + ", mark it at both ends, cut it there",
                part + ", " + band,
                piece.wires().stream().anyMatch(texts::guessed)));
      }
    }
  }

  private String way(Wire wire) {
    return lengths
        .route(wire)
        .map(route -> "along " + String.join(" – ", route.nodes()))
        .orElse("from end to end");
  }

  private void groups() {
    for (Group group : facts.harness().groups().values()) {
      List<String> its = group.wires().stream().filter(this::ours).toList();
      if (its.isEmpty() || group.kind() == null) {
        continue;
      }
      if (group.kind() == Group.Kind.TWISTED) {
        String pitch =
            group.pitchMm() == null
                ? "pitch not given"
                : "one turn every " + Quoted.number(group.pitchMm()) + " mm";
        add(BuildStage.GROUPS, group.id(), "twist " + Series.and(its, NAMED), pitch);
      } else {
        String screen = group.screen() == null ? "no screen wire" : "screen " + group.screen();
        add(BuildStage.GROUPS, group.id(), "open the cable to " + Series.and(its, NAMED), screen);
      }
    }
  }

  private boolean ours(String id) {
    Wire wire = facts.harness().wires().get(id);
    return wire != null && scope.holds(wire.loom());
  }

  private void splices() {
    for (String id : SpliceList.inOrder(facts, LoomParts.splices(facts, scope))) {
      Splice splice = facts.harness().splices().get(id);
      List<WireEnd> joined =
          LoomParts.endsIn(facts, id).stream().filter(end -> stays(end.wire())).toList();
      List<String> wires = joined.stream().map(end -> end.wire().id()).distinct().toList();
      if (!joined.isEmpty() && joined.stream().noneMatch(end -> fresh(end.wire()))) {
        continue;
      }
      boolean guessed = joined.stream().anyMatch(end -> texts.guessed(end.wire()));
      List<String> with = new ArrayList<>();
      String part = splice == null ? null : splice.part();
      with.add(part == null ? "splice part not known" : part);
      if (splice != null) {
        splice.coverings().forEach(with::add);
      }
      boolean covered = splice != null && !splice.coverings().isEmpty();
      boolean cap = splice != null && splice.endCap();
      steps.add(
          new BuildStep(
              BuildStage.SPLICES,
              id + ", " + SpliceList.place(facts, id),
              (covered ? "slide the covering on, then " : "")
                  + (cap ? "cap " : "join ")
                  + (wires.isEmpty() ? "nothing: no wire ends here" : Series.and(wires, NAMED)),
              String.join(", ", with),
              guessed));
    }
  }

  /** Heat shrink and braid are closed round; conduit, tape and shield go on from the side. */
  private void coverings(boolean closed) {
    for (Layout.Segment segment : segments) {
      List<String> layers = segment.coverings();
      for (int i = 0; i < layers.size(); i++) {
        Covering part = facts.harness().parts().coverings().get(layers.get(i));
        if (isClosed(part) == closed) {
          String mm =
              segment.lengthMm() == null
                  ? "length not known"
                  : Quoted.number(segment.lengthMm()) + " mm";
          add(
              closed ? BuildStage.SLEEVES : BuildStage.OPEN,
              named(segment),
              (closed ? "slide on " : "put round ")
                  + layers.get(i)
                  + (layers.size() > 1 ? ", layer " + (i + 1) + " from inside" : ""),
              mm);
        }
      }
    }
  }

  private static String named(Layout.Segment segment) {
    return "segment "
        + segment.id()
        + ", "
        + Objects.requireNonNullElse(segment.from(), "?")
        + " to "
        + Objects.requireNonNullElse(segment.to(), "?");
  }

  /** What is not known counts as closed: it then goes on in time in any case. */
  private static boolean isClosed(@Nullable Covering part) {
    return part == null
        || part.kind() == null
        || part.kind() == Covering.Kind.HEAT_SHRINK
        || part.kind() == Covering.Kind.BRAIDED_SLEEVE;
  }

  private void branches() {
    Set<String> nodes = new LinkedHashSet<>();
    for (Layout.Segment segment : segments) {
      if (segment.from() != null) {
        nodes.add(segment.from());
      }
      if (segment.to() != null) {
        nodes.add(segment.to());
      }
    }
    for (String id : nodes) {
      Layout.Node node = facts.harness().layout().nodes().get(id);
      if (node != null && !node.coverings().isEmpty()) {
        add(
            BuildStage.BRANCHES,
            "breakout " + id,
            "slide on what goes over the breakout",
            String.join(", ", node.coverings()));
      }
    }
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

  private static boolean stays(Wire wire) {
    return wire.decision() != Wire.Decision.REMOVE;
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
        task.add("insert " + its.size() + " by the pinout, tug each");
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

  private void supports() {
    for (Layout.Segment segment : segments) {
      Integer count = segment.supports();
      if (count != null && count > 0) {
        String part = segment.supportPart() == null ? "support" : segment.supportPart();
        add(
            BuildStage.OPEN,
            "segment " + segment.id(),
            "space " + count + (count == 1 ? " support" : " supports") + " evenly",
            count + " × " + part);
      }
    }
  }

  private void proof() {
    String loom = scope.name().isEmpty() ? "the loom" : scope.name();
    add(BuildStage.PROOF, loom, "pull a sample crimp of each set-up", "crimp table");
    add(BuildStage.PROOF, loom, "ring out every contact and its neighbours", "ring-out sheet");
    add(BuildStage.PROOF, loom, "hang the tag with loom and revision on it", "label texts");
  }
}
