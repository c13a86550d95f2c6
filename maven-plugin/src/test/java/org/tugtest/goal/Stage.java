package org.tugtest.goal;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.git.Environment;

/** A folder in which goals are run as Maven would run them; for tests. */
record Stage(Path folder, SaidLog log) {
  static Stage in(Path folder) {
    return new Stage(folder, new SaidLog());
  }

  Surroundings around() {
    return new Surroundings(
        folder,
        folder,
        folder.resolve("target"),
        "1.2.3",
        "mvn tugtest:",
        new Environment(Map.of()));
  }

  Workplace place() throws MojoExecutionException {
    return Workplace.of(around(), "src/main/harness", List.of(), List.of(), List.of(), null);
  }
}
