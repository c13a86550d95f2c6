package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;
import org.tugtest.finding.Level;
import org.tugtest.report.Gate;

class GatesTest {
  @Test
  void everyLevelAndNeverAreGates() throws MojoExecutionException {
    assertThat(Gates.of("error")).isEqualTo(new Gate(Level.ERROR, 0));
    assertThat(Gates.of(" warning ")).isEqualTo(new Gate(Level.WARNING, 0));
    assertThat(Gates.of("note")).isEqualTo(new Gate(Level.NOTE, 0));
    assertThat(Gates.of("never")).isEqualTo(new Gate(null, 0));
  }

  @Test
  void ageAndAnnouncementsNarrowIt() throws MojoExecutionException {
    for (boolean fresh : new boolean[] {true, false}) {
      for (boolean announced : new boolean[] {true, false}) {
        Gate gate = Gates.of("error", new BaseOrder(false, null, null, fresh, announced));
        assertThat(gate).isEqualTo(new Gate(Level.ERROR, 0, fresh, announced, false));
      }
    }
  }

  @Test
  void anotherWordIsRefused() {
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> Gates.of("warnin"))
        .withMessage("tugtest.failOn is \"warnin\"; did you mean warning?");
    assertThatExceptionOfType(MojoExecutionException.class)
        .isThrownBy(() -> Gates.of("fatal-ones"))
        .withMessageContaining("it takes error, warning, note, never");
  }
}
