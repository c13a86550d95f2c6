package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.Select;

/** The filters of the findings, and links to what they fold away. */
@ExtendWith(OneChromium.class)
class FindingsInBrowserTest {
  private final Chromium chromium;
  private final ChromeDriver driver;
  private final ReportPages pages;

  FindingsInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
    this.driver = chromium.driver();
    this.pages = new ReportPages(chromium);
  }

  @Test
  void filtersTheFindings() {
    chromium.open(pages.car(), "");
    assertThat(pages.shown()).hasSize(8);
    chromium.click(pages.box("level", "error"));
    pages.status("#filter-status", "3 of 8 findings shown.");
    chromium.click(pages.box("waived", null));
    chromium.click(pages.box("level", "error"));
    pages.status("#filter-status", "7 of 8 findings shown.");
    new Select(driver.findElement(By.name("rule"))).selectByValue("sample-volts");
    assertThat(pages.shown()).hasSize(1);
    chromium.click(driver.findElement(By.cssSelector("#filter [type=reset]")));
    pages.status("#filter-status", "All 8 findings shown.");
  }

  @Test
  void filtersByLoom() {
    chromium.open(pages.broken(), "");
    int all = pages.shown().size();
    Select loom = new Select(driver.findElement(By.name("loom")));
    loom.selectByValue("nose");
    chromium.until(
        "the findings of the loom nose alone",
        () ->
            assertThat(pages.shown())
                .hasSizeLessThan(all)
                .isNotEmpty()
                .allMatch(
                    finding ->
                        List.of(finding.getDomAttribute("data-looms").split(" "))
                            .contains("nose")));
  }

  @Test
  void unfoldsWhatFollowsWhenALinkLeadsThere() {
    Path car = pages.car();
    chromium.open(car, "");
    String id = chromium.ask("return document.querySelector('details.follow .finding').id");
    assertThat(driver.findElement(By.id(id)).isDisplayed()).isFalse();
    chromium.open(car, "#" + id);
    chromium.until(
        "the finding, unfolded",
        () -> assertThat(driver.findElement(By.id(id)).isDisplayed()).isTrue());
  }
}
