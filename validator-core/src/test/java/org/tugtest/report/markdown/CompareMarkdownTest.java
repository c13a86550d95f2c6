package org.tugtest.report.markdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.tugtest.compare.Announced;
import org.tugtest.compare.Comparison;
import org.tugtest.finding.Level;
import org.tugtest.report.Baseline;
import org.tugtest.report.ComparedSample;
import org.tugtest.report.Gate;
import org.tugtest.report.HarnessReport;
import org.tugtest.report.Report;
import org.tugtest.report.TotalRewrite;
import org.tugtest.report.Written;

class CompareMarkdownTest {
  private static final int LIMIT = 60_000;

  @Test
  void theMeaningComesFirst() {
    String page = written(ComparedSample.report());
    assertThat(page).startsWith("## Tugtest – blocked: car.harness.json by 2 new errors\n\n");
    List<String> inOrder =
        List.of(
            "against `1a2b3c4`: **1 limit changed, 1 wire re-pinned, 1 wire re-gauged",
            "2 changes of nets; 0.30 m of wire and 11 g more**",
            "#### What is demanded changes too\n",
            "- The limit of colour-ambiguous is new: switched off.\n",
            "#### Circuits change: 2 nets change.\n",
            "- The net of LAMPS:1, LAMPS:3 and SW:2 loses LAMPS:3, by W5. Announced.\n",
            "- announced and not made: `right-lamp`: nothing changes in the circuits at BAT:-\n",
            "#### New findings",
            "- **error** `contact-one-sided` X1:4",
            "#### Changes\n\n- **X1**\n  - W5 moves from X1:3 to X1:4.\n",
            "#### What moves with it\n\n- totals: wire 4.20 m to 4.50 m (+0.30 m)",
            "#### Resolved\n");
    int last = -1;
    for (String part : inOrder) {
      assertThat(page).contains(part);
      assertThat(page.indexOf(part)).as(part).isGreaterThan(last);
      last = page.indexOf(part);
    }
  }

  @Test
  void fewChangesAreSpelledOut() {
    String before = ComparedSample.before();
    String page =
        written(ComparedSample.of(before, before.replace("\"cutMm\": 900", "\"cutMm\": 400")));
    assertThat(page)
        .contains(
            "**W2 is 500 mm shorter (cutMm from 900 to 400 mm); no circuit changes; 0.50 m of wire"
                + " and 6 g less**")
        .contains("#### Electrically the same: no circuit changes.")
        .containsPattern("No new findings; \\d+ known\\.");
  }

  @Test
  void whatDoesNotChangeIsOneLine() {
    assertThat(written(ComparedSample.of(ComparedSample.before(), ComparedSample.before())))
        .contains("### Roots in which nothing changes\n\n- `car.harness.json`\n")
        .doesNotContain("####");
  }

  @Test
  void withoutABaseEverythingIsNew() {
    assertThat(written(ComparedSample.first()))
        .startsWith("## Tugtest – passes")
        .contains("`car.harness.json` is not there in `1a2b3c4`: everything is new.")
        .contains("#### New findings")
        .doesNotContain("#### Changes");
  }

  @Test
  void saysWhatCausesAFindingAndWhereChangesMeet() {
    assertThat(written(ComparedSample.report()))
        .contains("  - caused by: W5 moves from X1:3 to X1:4.\n");
    assertThat(written(ComparedSample.merge()))
        .contains(
            "#### Where two changes meet\n\n- **error** `cavity-doubled` In the merge alone: ")
        .contains("Ours: Wire P1 from SW:2 to X1:6 (1 mm2) is new. Theirs: Wire Q1")
        .contains("They meet at cavity X1:6.");
  }

  @Test
  void saysHowItIsReworkedAndWhatIsMeasuredAndTriedAgain() {
    String page = written(ComparedSample.report());
    assertThat(page)
        .containsPattern("#### Rework: \\d+ steps, one connector at a time\n\n")
        .contains(". X1:\u200B3: release W5 (YE/BK, 1 mm²); tag it X1:4\n")
        .contains("#### Ring out again\n\n- **front**: ")
        .contains("  - X1:2 to X1:4 apart; side by side in X1\n")
        .contains("#### Switch on and look\n\n- LAMPS.left, for ");
    assertThat(page.indexOf("#### Resolved")).isLessThan(page.indexOf("#### Rework"));
  }

  @Test
  void announcementsAreSpokenOfWhereSomebodyAnnounces() {
    Report asked = ComparedSample.report();
    assertThat(written(asked)).contains("Announced.");
    HarnessReport harness = asked.harnesses().get(0);
    Comparison comparison = Objects.requireNonNull(harness.baseline()).comparison();
    Baseline silent =
        new Baseline(comparison, List.of(), Announced.of(comparison, List.of(), List.of()));
    for (boolean gate : new boolean[] {false, true}) {
      Gate plain = new Gate(Level.ERROR, 0);
      String page =
          written(
              new Report(
                  asked.version(),
                  asked.folder(),
                  asked.revision(),
                  gate ? plain.forAnnouncedOnly() : plain,
                  asked.rules(),
                  List.of(new HarnessReport(harness.facts(), harness.result(), silent))));
      assertThat(page.contains("nnounced")).isEqualTo(gate);
    }
  }

  @Test
  void aTotalRewriteOfTenThousandWiresFits() {
    String page = written(TotalRewrite.ofWires(10_000));
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isBetween(20_000, LIMIT);
    assertThat(page)
        .contains("#### Changes", "#### Rework", "#### Ring out again")
        .containsPattern("- and \\d{4,} more; compare.json has them all\n")
        .endsWith("</sub>\n");
  }

  @Test
  void nothingMakesItTooLong() {
    for (String hostile : List.of("<", "🔋", "@a", "`", "日")) {
      Report one = ComparedSample.of(many(hostile, "RD", 1), many(hostile, "BU", 2));
      for (int roots : new int[] {1, 7, 90}) {
        List<HarnessReport> all =
            new ArrayList<>(Collections.nCopies(roots, one.harnesses().get(0)));
        String page =
            written(
                new Report(
                    one.version(), one.folder(), one.revision(), one.gate(), one.rules(), all));
        assertThat(page.getBytes(StandardCharsets.UTF_8).length)
            .as("%d of %s", roots, hostile)
            .isLessThan(LIMIT);
        assertThat(page).contains(" more").contains("W100 goes from RD to BU").endsWith("</sub>\n");
        assertThat(page.contains("with changes do not fit here")).isEqualTo(roots > 15);
      }
    }
  }

  private static String many(String text, String colour, int shift) {
    StringBuilder wires = new StringBuilder();
    for (int i = 100; i < 700; i++) {
      wires
          .append(i == 100 ? "" : ", ")
          .append("\"W")
          .append(i)
          .append("\": {\"from\": \"A:")
          .append(i)
          .append("\", \"to\": \"B:")
          .append(i + (i % 3 == 0 ? shift : 0))
          .append("\", \"colour\": \"")
          .append(colour)
          .append("\", \"circuit\": \"")
          .append(text.repeat(20))
          .append(shift)
          .append("\"}");
    }
    return "{\"format\": 1, \"sketch\": true, \"title\": \""
        + text.repeat(50)
        + "\", \"wires\": {"
        + wires
        + "}}";
  }

  private static String written(Report report) {
    return Written.by(new CompareMarkdown(), report);
  }
}
