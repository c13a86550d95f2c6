package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.report.Reports;

class PageNamesTest {
  private static List<String> names(String... roots) {
    return List.copyOf(PageNames.of(Stream.of(roots).map(Reports::root).toList()).values());
  }

  @Test
  void makesPlainNames() {
    assertThat(names("car.harness.json", "variants/wet #1 100%-ü.harness.json", ".harness.json"))
        .containsExactly("report-car.html", "report-variants-wet-1-100.html", "report-root.html");
  }

  @Test
  void keepsNamesApartWhereCaseDoesNotCount() {
    assertThat(names("a/b.harness.json", "a-b.harness.json", "A-B.harness.json"))
        .containsExactly("report-a-b.html", "report-a-b-2.html", "report-A-B-3.html");
  }
}
