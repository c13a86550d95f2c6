package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.model.Covering;
import org.tugtest.model.Layout;
import org.tugtest.text.Quoted;

/** The steps along the segments: what goes over the wires, and what holds them. */
final class CoveringSteps {
  private final Facts facts;
  private final List<Layout.Segment> segments;
  private final List<BuildStep> steps = new ArrayList<>();

  CoveringSteps(Facts facts, List<Layout.Segment> segments) {
    this.facts = facts;
    this.segments = segments;
  }

  List<BuildStep> all() {
    coverings(true);
    breakouts();
    coverings(false);
    supports();
    return List.copyOf(steps);
  }

  private void add(BuildStage stage, String on, String task, String with) {
    steps.add(new BuildStep(stage, on, task, with, false));
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

  private void breakouts() {
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
}
