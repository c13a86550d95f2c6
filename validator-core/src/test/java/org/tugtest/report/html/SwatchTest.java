package org.tugtest.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.tugtest.report.html.text.Swatch;

class SwatchTest {
  @Test
  void tellsBaseAndStripeApart() {
    assertThat(Swatch.of("RD/WH")).isEqualTo(new Swatch("RD/WH", "RD", "WH"));
    assertThat(Swatch.of("WH/RD")).isEqualTo(new Swatch("WH/RD", "WH", "RD"));
    assertThat(Swatch.of("RD/WH").name()).isEqualTo("red, white stripe");
    assertThat(Swatch.of("GNYE")).isEqualTo(new Swatch("GNYE", "GN", "YE"));
  }

  @Test
  void showsNoColourForWhatItDoesNotKnow() {
    assertThat(Swatch.of(null).name()).isEqualTo("no colour given");
    assertThat(Swatch.of("XX/RD")).isEqualTo(new Swatch("XX/RD", "none", "RD"));
    assertThat(Swatch.of("XX/RD").name()).isEqualTo("XX/RD");
    assertThat(Swatch.of("RD/ ").stripe()).isEqualTo("none");
    assertThat(Swatch.of("RD/WH/BK").stripe()).isEqualTo("none");
  }

  @Test
  void hasAPictureForEveryCodeAsBaseAndAsStripe() {
    String style = Assets.load().style();
    assertThat(Swatch.known())
        .hasSize(14)
        .allSatisfy(
            (code, name) -> assertThat(style).contains(".b-" + code + " {", ".s-" + code + " {"));
    assertThat(style.getBytes(StandardCharsets.UTF_8)).isNotEmpty();
  }
}
