package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.tugtest.report.MemorySink;
import org.tugtest.report.Report;
import org.tugtest.report.Sample;

/** The pages of two reports in the browser, and what people do on them; for tests. */
final class ReportPages {
  /** Where pages and pictures are kept. */
  static final Path PICTURES = Path.of("target", "report-pictures");

  private final Chromium chromium;
  private final ChromeDriver driver;

  ReportPages(Chromium chromium) {
    this.chromium = chromium;
    this.driver = chromium.driver();
  }

  /** The page of the sample car with mistakes. */
  Path broken() {
    return Kept.BROKEN.resolve("report.html");
  }

  /** The page that leads to the roots of a report on several. */
  Path index() {
    return Kept.SAMPLE.resolve("report.html");
  }

  /** The page of one of them. */
  Path car() {
    return Kept.SAMPLE.resolve("report-car.html");
  }

  /** Written once for all classes. */
  private static final class Kept {
    static final Path BROKEN = write(PICTURES.resolve("broken"), SampleCar.broken());
    static final Path SAMPLE = write(PICTURES.resolve("sample"), Sample.report());
  }

  /** Writes the pages of a report. */
  static Path write(Path folder, Report report) {
    try {
      Files.createDirectories(folder);
      MemorySink sink = SampleCar.written(report);
      for (String file : sink.paths()) {
        Files.write(folder.resolve(file), sink.bytes(file));
      }
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Types into the search box, presses Enter, and gives what the live region says. */
  String answer(String typed) {
    List<WebElement> boxes = driver.findElements(By.id("ask-box"));
    if (boxes.isEmpty()) {
      return "";
    }
    boxes.get(0).clear();
    boxes.get(0).sendKeys(typed, Keys.ENTER);
    return text("#ask-status");
  }

  String text(String selector) {
    return driver.findElement(By.cssSelector(selector)).getText();
  }

  /** Waits for what a live region says. */
  void status(String selector, String says) {
    chromium.until(selector + " that says so", () -> assertThat(text(selector)).isEqualTo(says));
  }

  /** A box of the filter of findings. */
  WebElement box(String name, String value) {
    return driver.findElement(
        By.cssSelector(
            "#filter [name=" + name + "]" + (value == null ? "" : "[value=" + value + "]")));
  }

  /** The findings that the filter leaves. */
  List<WebElement> shown() {
    return driver.findElements(By.cssSelector(".finding:not([hidden])"));
  }

  /** Waits for the focus. */
  void focusIsOn(String awaited, String attribute, String value) {
    chromium.until(
        "the focus on " + awaited,
        () ->
            assertThat(driver.switchTo().activeElement().getDomAttribute(attribute))
                .contains(value));
  }
}
