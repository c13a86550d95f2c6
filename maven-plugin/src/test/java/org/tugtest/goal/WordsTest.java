package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WordsTest {
  private static final List<String> KNOWN = List.of("html", "markdown", "json");

  @Test
  void aKnownWordIsTakenWithoutItsBlanks() throws MojoExecutionException {
    assertThat(Words.oneOf("p", " html ", KNOWN)).isEqualTo("html");
    assertThat(Words.allOf("p", Arrays.asList("json", " ", "html"), KNOWN))
        .containsExactly("json", "html");
    assertThat(Words.allOf("p", null, KNOWN)).isEmpty();
  }

  @Test
  void aNearMissIsAnsweredWithTheNearest() {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> Words.oneOf("tugtest.formats", "markdow", KNOWN))
        .withMessage("tugtest.formats is \"markdow\"; did you mean markdown?");
  }

  @Test
  void aStrangeWordIsAnsweredWithAll() {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> Words.allOf("tugtest.formats", List.of("html", "pdfx1"), KNOWN))
        .withMessage("tugtest.formats is \"pdfx1\"; it takes html, markdown, json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "7", " 99 ", "100"})
  void perCentIsAWholeNumberUpToAHundred(String given) throws MojoExecutionException {
    assertThat(Words.percent("p", given)).isEqualTo(Integer.parseInt(given.strip()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "-1", "101", "1000", "5.5", "50%", "ten"})
  void anyOtherPerCentIsRefused(String given) {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> Words.percent("tugtest.coverageMin", given))
        .withMessageStartingWith("tugtest.coverageMin is \"" + given + "\"; it takes a whole");
  }

  @Test
  void aDayIsADayOfTheCalendar() throws MojoExecutionException {
    assertThat(Words.day("p", " 2027-03-31 ")).isEqualTo(LocalDate.of(2027, 3, 31));
    for (String wrong : List.of("", "2027-02-30", "31.3.2027", "today")) {
      assertThatExceptionOfType(MojoExecutionException.class)
          .as(wrong)
          .isThrownBy(() -> Words.day("tugtest.today", wrong))
          .withMessage("tugtest.today is \"" + wrong + "\"; it takes a day such as 2027-03-31");
    }
  }
}
