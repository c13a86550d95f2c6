package org.tugtest.read;

import java.util.List;
import java.util.Map;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;

/** Reads small harnesses and shows their problems as lines. */
final class Said {
  private Said() {}

  static ReadHarness read(String text) {
    return read(Map.of("car.harness.json", text));
  }

  static ReadHarness read(Map<String, String> texts) {
    return new HarnessReader(MemoryFiles.of(texts), ReadLimits.STANDARD).read("car.harness.json");
  }

  /** {@code line:column kind subject: message Remedy} of each problem. */
  static List<String> problems(String text) {
    return problems(read(text));
  }

  static List<String> problems(ReadHarness read) {
    return read.problems().stream().map(Said::line).toList();
  }

  static String line(Problem problem) {
    Place at = problem.at().get(0);
    return at.line() + ":" + at.column() + " " + problem.message() + " " + problem.remedy();
  }
}
