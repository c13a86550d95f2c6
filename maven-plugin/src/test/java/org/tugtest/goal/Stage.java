package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.AbstractMojo;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.git.Environment;

/** A folder in which goals are run as Maven would run them; for tests. */
record Stage(Path folder, SaidLog log, Environment environment) {
  static final String ROOT = "src/main/harness/car.harness.json";

  static Stage in(Path folder) {
    return in(folder, Map.of());
  }

  static Stage in(Path folder, Map<String, String> variables) {
    return new Stage(folder, new SaidLog(), new Environment(variables));
  }

  /** The same with two sound wires in it. */
  Stage sound() throws IOException {
    return wires("X1:1", "X1:2");
  }

  /** The same with two wires in one cavity. */
  Stage doubled() throws IOException {
    return wires("X1:1", "X1:1");
  }

  private Stage wires(String one, String other) throws IOException {
    return with(
        ROOT,
        """
        {"format": 1, "sketch": true, "wires": {
          "W1": {"from": "%s", "to": "X2:1", "areaMm2": 1},
          "W2": {"from": "%s", "to": "X2:2", "areaMm2": 1}}}
        """
            .formatted(one, other));
  }

  /** The same with this file. */
  Stage with(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return this;
  }

  Surroundings around() {
    return new Surroundings(
        folder, folder, folder.resolve("target"), "1.2.3", "mvn tugtest:", environment);
  }

  Workplace place() throws MojoExecutionException {
    return Workplace.of(around(), "src/main/harness", List.of(), List.of(), List.of(), null);
  }

  /** The word in {@code outcome.txt}. */
  String outcome() throws IOException {
    return Files.readString(folder.resolve("target/tugtest/outcome.txt"));
  }

  /** The files of the reports. */
  List<String> reports() throws IOException {
    try (var files = Files.list(folder.resolve("target/tugtest"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  /** A goal with the defaults that Maven gives all goals of checks, and these parameters. */
  <T extends AbstractMojo> T goal(T goal, Map<String, Object> parameters) {
    goal.setLog(log);
    parameters.forEach((name, value) -> set(goal, name, value));
    return goal;
  }

  private static void set(Object goal, String name, Object value) {
    for (Class<?> type = goal.getClass(); type != null; type = type.getSuperclass()) {
      try {
        var field = type.getDeclaredField(name);
        field.setAccessible(true);
        field.set(goal, value);
        return;
      } catch (NoSuchFieldException above) {
        // goals share parameters in a class above them
      } catch (IllegalAccessException closed) {
        throw new IllegalArgumentException(name, closed);
      }
    }
    throw new IllegalArgumentException(name);
  }
}
