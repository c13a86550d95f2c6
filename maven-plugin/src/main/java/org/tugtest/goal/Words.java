package org.tugtest.goal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Nearest;

/** The values of parameters, read by us so that a wrong one is answered with the right ones. */
final class Words {
  private Words() {}

  /** A word that is one of {@code known}. */
  static String oneOf(String parameter, String given, Collection<String> known)
      throws MojoExecutionException {
    String word = given.strip();
    if (known.contains(word)) {
      return word;
    }
    String near = Nearest.question(word, known);
    throw new MojoExecutionException(
        parameter
            + " is \""
            + word
            + "\"; "
            + (near.isEmpty() ? "it takes " + String.join(", ", known) : near));
  }

  /** Words that are all of {@code known}; blank ones are left out. */
  static List<String> allOf(
      String parameter, @Nullable List<String> given, Collection<String> known)
      throws MojoExecutionException {
    List<String> words = new ArrayList<>();
    for (String word : given == null ? List.<String>of() : given) {
      if (!word.isBlank()) {
        words.add(oneOf(parameter, word, known));
      }
    }
    return words;
  }

  /** A whole number of per cent. */
  static int percent(String parameter, String given) throws MojoExecutionException {
    String text = given.strip();
    if (text.matches("\\d{1,3}") && Integer.parseInt(text) <= 100) {
      return Integer.parseInt(text);
    }
    throw new MojoExecutionException(
        parameter + " is \"" + text + "\"; it takes a whole number from 0 to 100 (per cent)");
  }

  /** A day. */
  static LocalDate day(String parameter, String given) throws MojoExecutionException {
    try {
      return LocalDate.parse(given.strip());
    } catch (DateTimeParseException wrong) {
      // without it as the cause: Maven would print its sentence behind ours
      throw new MojoExecutionException(
          parameter + " is \"" + given.strip() + "\"; it takes a day such as 2027-03-31");
    }
  }
}
