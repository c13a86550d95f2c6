package org.tugtest.report.console;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.report.Reports.finding;
import static org.tugtest.report.Reports.root;
import static org.tugtest.report.Reports.standing;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Finding;
import org.tugtest.finding.Level;
import org.tugtest.report.Golden;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.Reports;
import org.tugtest.report.Sample;
import org.tugtest.text.Place;

class ConsoleReportTest {
  private static final Ending ENDING =
      new Ending("target/tugtest/report.html", "mvn explain ", "mvn trace ", "mvn adopt");

  @Test
  void theSample() {
    Golden.holds("sample.console.txt", text(Sample.report()));
  }

  @Test
  void theSampleWithARuleThatBroke() {
    String text = text(Sample.broken());
    assertThat(text)
        .contains(
            "src/main/harness/car.harness.json: rule sample-broken broke: IllegalStateException:"
                + " lost <its> way\\u000ain car.harness.json\n"
                + "    this is a fault of Tugtest or of a rule added to it, not of the harness\n"
                + "    at org.tugtest.report.SampleRules.")
        .contains("\ncannot check: rule sample-broken broke\n");
  }

  @Test
  void everyLineIsOneLineAndTheClosingBlockHasAtMostEight() {
    for (Report report : List.of(Sample.report(), Sample.broken(), Reports.of())) {
      List<ConsoleLine> lines = ConsoleReport.lines(report, ENDING);
      assertThat(lines)
          .allSatisfy(line -> assertThat(line.text()).doesNotContainPattern("\\p{Cc}"));
      assertThat(lines.stream().filter(line -> line.level() == null).count()).isBetween(1L, 8L);
    }
  }

  @Test
  void withoutAHarnessNothingIsClaimed() {
    assertThat(text(Reports.of()))
        .isEqualTo(
            """
            cannot check: there is no harness
            0 errors, 0 warnings, 0 notes, 0 waived
            report: target/tugtest/report.html
            """);
  }

  @Test
  void aFollowOnIsFoldedUnderItsCause() {
    Finding earth = finding(Level.WARNING, "W9", 9, null);
    assertThat(
            text(
                Reports.of(
                    root(
                        "car.harness.json",
                        standing(finding(Level.ERROR, "W1", 1, earth.identity())),
                        standing(earth)))))
        .startsWith(
            """
            src/main/harness/car.harness.json:9:5: warning made-up wire W9 is bad
                mend W9
                1 more follows from this (1 error)
            blocked: car.harness.json by 1 error
            1 error, 1 warning, 0 notes, 0 waived
            """);
  }

  @Test
  void ofManyPlacesTheFirstAreNamedAndTheOthersCounted() {
    for (int places : List.of(2, 9, 10, 40)) {
      Finding one = finding(Level.ERROR, "W1", 1, null);
      Finding spread =
          new Finding(
              one.rule(),
              one.level(),
              one.kind(),
              one.subjects(),
              one.message(),
              one.remedy(),
              null,
              one.basis(),
              null,
              null,
              List.of(),
              places(places));
      String text = text(Reports.of(root("car.harness.json", standing(spread))));
      long see = text.lines().filter(line -> line.startsWith("    see ")).count();
      assertThat(see).as("%s places", places).isEqualTo(places <= 9 ? places - 1 : 7);
      assertThat(text.contains("    and " + (places - 8) + " more places\n")).isEqualTo(places > 9);
    }
  }

  private static List<Place> places(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(line -> Place.point("car.harness.json", line, 5, ""))
        .toList();
  }

  @Test
  void whereErrorsAloneAreLookedForNothingElseIsToldOrCounted() {
    Finding warning = finding(Level.WARNING, "W9", 9, null);
    Report report =
        Reports.of(
            root(
                "car.harness.json",
                standing(finding(Level.ERROR, "W1", 1, warning.identity())),
                standing(warning)));
    Ending errors = new Ending(null, "mvn explain ", "mvn trace ", "mvn adopt", Level.ERROR);
    assertThat(ConsoleReport.lines(report, errors).stream().map(ConsoleLine::text))
        .startsWith(
            "src/main/harness/car.harness.json:1:5: error made-up wire W1 is bad",
            "    mend W1",
            "blocked: car.harness.json by 1 error",
            "1 error, 0 waived")
        .noneMatch(line -> line.contains("W9"));
  }

  @Test
  void aCleanHarnessIsToldWhatToAddAndWhatToTryNext() {
    HarnessReport clean = root("car.harness.json");
    HarnessReport wired =
        new HarnessReport(
            Reports.facts(
                "car.harness.json",
                """
                {"format": 1, "sketch": true, "devices": {"BAT": {"pins": {"+": {}, "-": {}}}},
                 "wires": {"W1": {"from": "BAT:+", "to": "BAT:-"}}}
                """),
            clean.result());
    assertThat(text(Reports.of(wired)))
        .isEqualTo(
            """
            passes: car.harness.json
            0 errors, 0 warnings, 0 notes, 0 waived
            0 rules run, 1 file read, 1 root, as of 2026-11-25 (date of the commit)
            report: target/tugtest/report.html
            next: mvn trace BAT:+
            """);
  }

  private static String text(Report report) {
    return ConsoleReport.lines(report, ENDING).stream()
        .map(line -> line.text() + "\n")
        .collect(Collectors.joining());
  }
}
