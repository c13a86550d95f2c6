package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;

/** The report without a mouse. */
@ExtendWith(OneChromium.class)
class KeyboardInBrowserTest {
  private final Chromium chromium;
  private final ChromeDriver driver;
  private final ReportPages pages;

  KeyboardInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
    this.driver = chromium.driver();
    this.pages = new ReportPages(chromium);
  }

  @Test
  void isUsedWithTheKeyboardAlone() {
    chromium.open(pages.broken(), "");
    press(Keys.TAB);
    chromium.until(
        "the link past the bar, in sight",
        () -> {
          assertThat(focused()).isEqualTo("Skip to the report");
          assertThat(driver.switchTo().activeElement().getLocation().getX()).isNotNegative();
        });
    press(Keys.TAB);
    chromium.until("the first room", () -> assertThat(focused()).isEqualTo("Verdict"));
    assertThat(chromium.ask("return getComputedStyle(document.activeElement).outlineStyle"))
        .isEqualTo("solid");
    press(Keys.TAB);
    press(Keys.ENTER);
    chromium.until(
        "the room of the search",
        () -> assertThat(chromium.ask("return location.hash")).isEqualTo("#ask"));
    chromium.settle();
    for (int i = 0; i < 3 && !"ask-box".equals(focusedId()); i++) {
      press(Keys.TAB);
      chromium.settle();
    }
    pages.focusIsOn("the box of the search", "id", "ask-box");
    driver.switchTo().activeElement().sendKeys("xn-dash 2", Keys.ENTER);
    pages.focusIsOn("the answer", "class", "answer");
    press(Keys.TAB);
    pages.focusIsOn("the first link of the answer", "href", "#finding-");
  }

  @Test
  void stepsThroughThePageInItsOrderAndAlwaysShowsWhereItIs() {
    chromium.open(pages.broken(), "");
    chromium.ask(
        """
        window.steps = [];
        document.addEventListener('focusin', event => {
          const at = event.target;
          const box = at.getBoundingClientRect();
          const bar = document.querySelector('.rooms').getBoundingClientRect();
          const last = window.last;
          const label = at.getAttribute('aria-label') || at.textContent.trim() || at.id
            || (at.labels && at.labels[0] ? at.labels[0].textContent.trim() : '');
          const ring = getComputedStyle(at);
          const wrong = [];
          if (!label && !at.getAttribute('aria-labelledby')) wrong.push('no name');
          if (ring.outlineStyle === 'none') wrong.push('no ring');
          if (last && !(last.compareDocumentPosition(at) & Node.DOCUMENT_POSITION_FOLLOWING)) wrong.push('goes back');
          if (box.bottom < 0 || box.top > innerHeight) wrong.push('out of sight');
          if (!at.closest('.rooms, .mast, .skip') && box.bottom < bar.bottom) wrong.push('under the bar');
          if (wrong.length) window.steps.push(at.tagName + ' ' + label.slice(0, 40) + ': ' + wrong.join(', '));
          window.last = at;
        });
        """);
    for (int i = 0; i < 160; i++) {
      press(Keys.TAB);
    }
    chromium.settle();
    assertThat(chromium.ask("return window.steps.join('; ')")).isEmpty();
    assertThat(chromium.ask("return window.last.closest('section').id")).isNotEqualTo("verdict");
  }

  @Test
  void opensEveryFoldWithTheKeyboard() {
    chromium.open(pages.broken(), "");
    for (String room : List.of("circuits", "bundles", "protection", "what-if", "totals")) {
      WebElement fold = driver.findElement(By.cssSelector("#" + room + " details"));
      fold.findElement(By.tagName("summary")).sendKeys(Keys.ENTER);
      chromium.until(
          room + " unfolded", () -> assertThat(fold.getDomAttribute("open")).isNotNull());
      fold.findElement(By.tagName("summary")).sendKeys(Keys.SPACE);
      chromium.until(room + " folded", () -> assertThat(fold.getDomAttribute("open")).isNull());
    }
  }

  private void press(Keys key) {
    driver.switchTo().activeElement().sendKeys(key);
  }

  private String focused() {
    return driver.switchTo().activeElement().getText();
  }

  private String focusedId() {
    return driver.switchTo().activeElement().getDomAttribute("id");
  }
}
