package org.tugtest.report.sheets.rework;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tugtest.bench.rework.Rework;
import org.tugtest.bench.rework.Step;

/**
 * Steps that are done in one go: from the first plug that is opened until the last one is closed
 * again; or what is done between such goes.
 *
 * @param first number of the first step, from 1
 * @param connectors that are open in it; none between
 */
record Sitting(int first, List<String> connectors, List<Step> steps) {
  Sitting {
    connectors = List.copyOf(connectors);
    steps = List.copyOf(steps);
  }

  /** The sittings of a rework, in order; every step is in one. */
  static List<Sitting> of(Rework rework) {
    List<Sitting> sittings = new ArrayList<>();
    Set<String> open = new LinkedHashSet<>();
    Set<String> all = new LinkedHashSet<>();
    List<Step> steps = new ArrayList<>();
    int first = 1;
    for (Step step : rework.steps()) {
      boolean opens = step.kind() == Step.Kind.OPEN || step.kind() == Step.Kind.FIT;
      boolean closes = step.kind() == Step.Kind.CLOSE || step.kind() == Step.Kind.TAKE_AWAY;
      if (opens && open.isEmpty() && !steps.isEmpty()) {
        sittings.add(new Sitting(first, List.copyOf(all), steps));
        first += steps.size();
        steps.clear();
      }
      if (opens) {
        open.add(body(step));
        all.add(step.at());
      }
      steps.add(step);
      if (closes) {
        open.remove(body(step));
      }
      if (closes && open.isEmpty()) {
        sittings.add(new Sitting(first, List.copyOf(all), steps));
        first += steps.size();
        steps.clear();
        all.clear();
      }
    }
    if (!steps.isEmpty()) {
      sittings.add(new Sitting(first, List.copyOf(all), steps));
    }
    return List.copyOf(sittings);
  }

  /** An old housing and the new one of the same connector are two. */
  private static String body(Step step) {
    boolean old = step.from() != null && step.from().old();
    return step.at() + (old ? " old" : "");
  }
}
