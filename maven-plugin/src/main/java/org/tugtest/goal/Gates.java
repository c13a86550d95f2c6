package org.tugtest.goal;

import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.finding.Level;
import org.tugtest.report.Gate;

/** The gate that the parameters ask for. */
final class Gates {
  private static final String FAIL_ON = "tugtest.failOn";

  private Gates() {}

  /** The word for when a finding fails the build. */
  static String word(String failOn) throws MojoExecutionException {
    List<String> words = new ArrayList<>();
    for (Level level : Level.values()) {
      words.add(level.word());
    }
    words.add("never");
    return Words.oneOf(FAIL_ON, failOn, words);
  }

  /** A gate that findings meet whatever their age. */
  static Gate of(String failOn) throws MojoExecutionException {
    String word = word(failOn);
    return Gate.of(word).orElseThrow(() -> new IllegalStateException("no gate for " + word));
  }

  /** The gate of what is held against a base. */
  static Gate of(String failOn, BaseOrder order) throws MojoExecutionException {
    Gate gate = of(failOn);
    Gate aged = order.failOnlyNew() ? gate.forNewOnly() : gate;
    return order.failOnUnannounced() ? aged.forAnnouncedOnly() : aged;
  }
}
