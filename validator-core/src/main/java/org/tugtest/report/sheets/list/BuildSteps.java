package org.tugtest.report.sheets.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tugtest.facts.Facts;
import org.tugtest.model.Layout;
import org.tugtest.report.sheets.Scope;

/** The steps in which one loom is built. */
final class BuildSteps {
  private final Facts facts;
  private final Scope scope;
  private final List<Layout.Segment> segments;

  BuildSteps(Facts facts, Scope scope, List<Layout.Segment> segments) {
    this.facts = facts;
    this.scope = scope;
    this.segments = segments;
  }

  /** All of them, stage by stage. */
  List<BuildStep> all() {
    List<BuildStep> steps = new ArrayList<>(new WireSteps(facts, scope).all());
    steps.addAll(new CoveringSteps(facts, segments).all());
    steps.addAll(new EndSteps(facts, scope).all());
    steps.addAll(proof(steps));
    steps.sort(Comparator.comparing(BuildStep::stage));
    return List.copyOf(steps);
  }

  private List<BuildStep> proof(List<BuildStep> before) {
    List<BuildStep> proof = new ArrayList<>();
    if (before.stream().anyMatch(step -> step.stage() == BuildStage.TERMINALS)) {
      proof.add(proof("pull a sample crimp of each set-up", "crimp table"));
    }
    proof.add(proof("ring out every contact and its neighbours", "ring-out sheet"));
    proof.add(proof("hang the tag with loom and revision on it", "label texts"));
    return proof;
  }

  private BuildStep proof(String task, String with) {
    String loom = scope.name().isEmpty() ? "the loom" : scope.name();
    return new BuildStep(BuildStage.PROOF, loom, task, with, false);
  }
}
