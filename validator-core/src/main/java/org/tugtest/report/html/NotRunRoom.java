package org.tugtest.report.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tugtest.check.CheckResult;
import org.tugtest.check.Crash;
import org.tugtest.check.NotRun;

/** Rules that broke, and rules that did not run, by the reason. */
record NotRunRoom(List<Crash> crashes, List<Reason> reasons) {

  /** Why some rules did not run, in the order of the catalogue. */
  record Reason(String why, List<String> rules) {}

  static NotRunRoom of(CheckResult result) {
    Map<String, List<String>> rules = new LinkedHashMap<>();
    for (NotRun rule : result.notRun()) {
      rules.computeIfAbsent(rule.why(), none -> new ArrayList<>()).add(rule.rule());
    }
    return new NotRunRoom(
        result.crashes(),
        rules.entrySet().stream()
            .map(reason -> new Reason(reason.getKey(), List.copyOf(reason.getValue())))
            .toList());
  }

  /** How many rules there are in it. */
  int count() {
    return crashes.size() + reasons.stream().mapToInt(reason -> reason.rules().size()).sum();
  }
}
