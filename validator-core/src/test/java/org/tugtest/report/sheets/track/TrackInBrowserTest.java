package org.tugtest.report.sheets.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.tugtest.report.html.Chromium;
import org.tugtest.report.html.OneChromium;
import org.tugtest.report.html.SampleCar;

/** The track page as people use it. Pictures are kept in {@code target/track-pictures}. */
@ExtendWith(OneChromium.class)
class TrackInBrowserTest {
  private static final Path PICTURES = Path.of("target", "track-pictures");
  private static final List<String> ROOMS =
      List.of("Pin", "Find a fault", "Fuses", "Isolator", "Plugs", "Circuits", "What if");
  private final Chromium chromium;
  private final Path page;

  TrackInBrowserTest(Chromium chromium) {
    this.chromium = chromium;
    this.page = Sample.PAGE;
  }

  @BeforeEach
  void telephone() {
    chromium.size(360, 740);
    chromium.open(page, "");
  }

  /** Written once for all tests. */
  private static final class Sample {
    static final Path PAGE = written();

    private static Path written() {
      try {
        return Written.page(SampleCar.whole(), PICTURES);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private WebElement one(String selector) {
    return chromium.driver().findElement(By.cssSelector(selector));
  }

  private List<WebElement> all(String selector) {
    return chromium.driver().findElements(By.cssSelector(selector));
  }

  private void room(String name) {
    chromium.click(
        chromium.driver().findElement(By.xpath("//nav[@id='tabs']/button[.='" + name + "']")));
  }

  private String ask(String typed) {
    one("#ask-box").clear();
    one("#ask-box").sendKeys(typed, Keys.ENTER);
    return one("#ask-status").getText();
  }

  private void tick(String load, String answer) {
    click("//div[@class='load'][span[.='" + load + "']]//button[.='" + answer + "']");
  }

  private void click(String path) {
    chromium.click(chromium.driver().findElement(By.xpath(path)));
  }

  @Test
  void opensFromDiskWithoutAWordOnTheConsoleAndWithoutARequest() {
    chromium.requests();
    chromium.complaints();
    chromium.open(page, "");
    ask("XE-PUMP:1");
    assertThat(chromium.complaints()).isEmpty();
    assertThat(chromium.requestsUpTo(chromium.driver().getCurrentUrl()))
        .allMatch(url -> url.startsWith("file:") || url.startsWith("about:"));
  }

  @Test
  void fitsATelephoneInEveryRoomInLightAndInDark() throws IOException {
    for (String scheme : List.of("light", "dark")) {
      chromium.media("screen", scheme);
      chromium.open(page, "");
      ask("XE-PUMP:1");
      for (String room : ROOMS) {
        room(room);
        if (room.equals("Find a fault") && scheme.equals("light")) {
          tick("PUMP.motor", "dead");
        }
        String as = room + " in " + scheme;
        assertThat(chromium.ask("return document.documentElement.scrollWidth"))
            .as(as)
            .isEqualTo("360");
        assertThat(chromium.tooFaint()).as(as).isEmpty();
        chromium.picture(PICTURES.resolve(scheme + "-" + room.replace(' ', '-') + ".png"));
      }
    }
  }

  @Test
  void everyButtonOfTheFormsIsLargeEnoughForAThumb() {
    room("Find a fault");
    for (WebElement button : all(".tab, .segment button, #state, #load-filter")) {
      if (button.isDisplayed()) {
        assertThat(button.getSize().getHeight()).as(button.getText()).isGreaterThanOrEqualTo(44);
      }
    }
  }

  @Test
  void tellsWhatIsOnAPin() {
    assertThat(ask("xe-pump 1")).isEqualTo("Found 1.");
    String answer = one(".answer").getText();
    assertThat(answer)
        .contains("XE-PUMP:1", "goes to", "protected by FRB.f21 (fuse", "Meets PUMP:", "Net ")
        .contains("Volts in each state, computed", "Wire side", "Mating side, mirrored");
    assertThat(all(".answer td.here")).hasSize(2);
    assertThat(all(".answer .volts tr")).hasSize(8);
    assertThat(ask("PUMP.motor")).isEqualTo("Found 1.");
    chromium.click(one(".answer a[href^='#circuit-']"));
    chromium.until(
        "its circuit, unfolded",
        () -> assertThat(one(".circuit[open] summary").getText()).startsWith("PUMP.motor"));
    assertThat(ask2("nonsense")).isEqualTo("Nothing is called nonsense.");
  }

  private String ask2(String typed) {
    room("Pin");
    return ask(typed);
  }

  @Test
  void leadsFromTheConnectorMapToBothSides() {
    room("Plugs");
    chromium.click(chromium.driver().findElement(By.xpath("//*[@data-ask='XE-ECUA']/button")));
    assertThat(one(".answer h3").getText()).isEqualTo("XE-ECUA");
    assertThat(all(".answer table.cavities")).hasSize(2);
  }

  @Test
  void findsTheFaultByTicksAndAReading() throws IOException {
    room("Find a fault");
    new Select(one("#state")).selectByVisibleText("running day");
    tick("PUMP.motor", "dead");
    assertThat(one("#suspects h3").getText()).matches("\\d+ suspects, the best first");
    tick("LIFT.motor", "works");
    assertThat(one(".suspects").getText()).contains("fuse FRB.f21 blown").doesNotContain("f22");
    int before = all(".suspects li").size();
    assertThat(one(".probe").getText()).contains("black lead on BAT:-", "volts:", "nothing:");
    chromium.click(one("#count"));
    chromium.picture(PICTURES.resolve("probe.png"));
    click("//div[contains(@class,'probe')]//button[.='nothing']");
    assertThat(all(".suspects li")).hasSizeLessThan(before).isNotEmpty();
    click("//ul[@class='chips']//button");
    assertThat(all(".chips li")).hasSize(2);
    click("//div[@id='seen']/button");
    assertThat(all(".suspects")).isEmpty();
  }

  @Test
  void saysWhenNoSingleFaultDoesItAll() {
    room("Find a fault");
    new Select(one("#state")).selectByVisibleText("running day");
    tick("PUMP.motor", "dead");
    tick("LAM.heater", "dead");
    tick("RADIO.supply", "works");
    tick("DASH.supply", "works");
    tick("COIL1.coil", "works");
    assertThat(one("#suspects h3").getText()).startsWith("No single fault does all of this");
  }

  @Test
  void printsItsTablesOnA4() throws IOException {
    byte[] pdf = chromium.pdf();
    Files.write(PICTURES.resolve("track.pdf"), pdf);
    chromium.media("print", "dark");
    for (String id : List.of("fuses", "isolator", "plugs", "circuits", "what-if")) {
      assertThat(one("#" + id).isDisplayed()).as(id).isTrue();
    }
    assertThat(one("#tabs").isDisplayed()).isFalse();
    chromium.size(718, 1000);
    assertThat(chromium.ask("return document.documentElement.scrollWidth")).isEqualTo("718");
  }

  @Test
  void canBeReadWithoutScript() {
    chromium.scripts(false);
    chromium.open(page, "");
    assertThat(one("#fuses").isDisplayed()).isTrue();
    assertThat(one("#what-if").isDisplayed()).isTrue();
    assertThat(one("#ask-form").isDisplayed()).isFalse();
    chromium.scripts(true);
  }
}
