package org.tugtest.read;

import java.util.ArrayList;
import java.util.List;

/** Where an entry of {@code uses} leads. */
final class UsePath {
  private UsePath() {}

  /** {@code used}, as the file at {@code from} says it, relative to the harness folder. */
  static String resolve(String from, String used) {
    List<String> steps = new ArrayList<>(List.of(from.split("/", -1)));
    steps.remove(steps.size() - 1);
    for (String step : used.split("/", -1)) {
      if (step.equals("..") && !steps.isEmpty() && !steps.get(steps.size() - 1).equals("..")) {
        steps.remove(steps.size() - 1);
      } else if (!step.equals(".")) {
        steps.add(step);
      }
    }
    return String.join("/", steps);
  }
}
