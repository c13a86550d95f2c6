package org.tugtest.report.sheets.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.report.ComparedSample;
import org.tugtest.report.MemorySink;
import org.tugtest.report.html.Chromium;
import org.tugtest.report.html.OneChromium;
import org.tugtest.report.html.SampleCar;
import org.tugtest.report.sheets.rework.ReworkWriter;

/** The sheets on a telephone. */
@ExtendWith(OneChromium.class)
class DocumentsInBrowserTest {
  /** What sticks out of the page or of the box that its table may scroll in. */
  private static final String TOO_WIDE =
      """
      const wide = [document.documentElement, ...document.querySelectorAll('.block .scroll')]
        .filter(box => box.scrollWidth > box.clientWidth);
      return wide.map(box => box.tagName + ' ' + box.scrollWidth).join(', ');
      """;

  /** What is printed in the cells of the first row, with what the style puts before and after. */
  private static final String FIRST_ROW = row("true");

  private static final String FIRST_STEP = row("row.children[1].textContent === '1'");

  private static String row(String asked) {
    return """
    const said = (node, where) => getComputedStyle(node, where).content.replace(/^none$|"/g, '');
    const rows = [...document.querySelectorAll('.block tbody tr')];
    return [...rows.find(row => %s).children]
      .filter(cell => getComputedStyle(cell).display !== 'none')
      .map(cell => said(cell, '::before') + cell.textContent + said(cell, '::after')).join('|');
    """
        .formatted(asked);
  }

  @TempDir Path folder;
  private final Chromium chromium;

  DocumentsInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
  }

  private void open(MemorySink sink, String page) throws IOException {
    chromium.size(360, 740);
    chromium.open(Files.write(folder.resolve("page.html"), sink.bytes(page)), "");
  }

  @Test
  void fitATelephoneWithoutScrollingATableSideways() throws IOException {
    MemorySink sink = new MemorySink();
    Documents.standard().write(SampleCar.whole(), sink);
    List<String> pages =
        sink.paths().stream()
            .filter(path -> path.endsWith(".html"))
            .filter(path -> !path.contains("/") || path.contains("nose"))
            .toList();
    assertThat(pages).hasSizeGreaterThan(10);
    for (String page : pages) {
      open(sink, page);
      assertThat(chromium.ask(TOO_WIDE)).as(page).isEmpty();
    }
  }

  @Test
  void theStepsOfAReworkFitToo() throws IOException {
    MemorySink sink = new MemorySink();
    new ReworkWriter().write(ComparedSample.report(), sink);
    open(sink, "rework.html");
    assertThat(chromium.ask(TOO_WIDE)).isEmpty();
    assertThat(chromium.ask(FIRST_ROW))
        .isEqualTo("|FB.f1: take out fuse mini-10 (10 A), put in fuse mini-15 (15 A)");
    assertThat(chromium.ask(FIRST_STEP))
        .isEqualTo("|1|At: BAT|Do: BAT:-: take off W6 (old) (BK, 1 mm²); tag it OUT");
  }

  @Test
  void everyFigureStandsBehindItsHeadAndBeforeItsUnit() throws IOException {
    MemorySink sink = new MemorySink();
    Documents.standard().write(SampleCar.whole(), sink);
    open(sink, "loom-nose/wire-list.html");
    assertThat(chromium.ask(FIRST_ROW))
        .contains("|From: XN1:1", "|Routed: 441 mm", "|Strip: 5 mm|");
    chromium.size(1280, 900);
    assertThat(chromium.ask(FIRST_ROW)).contains("|441|").doesNotContain("Routed");
  }
}
