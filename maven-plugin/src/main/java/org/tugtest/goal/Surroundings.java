package org.tugtest.goal;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import org.apache.maven.execution.MavenSession;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.project.MavenProject;
import org.tugtest.files.Folders;
import org.tugtest.git.Environment;

/**
 * Where and how Maven was started.
 *
 * @param base folder that relative paths in parameters are meant from: the project's, or the
 *     present one where there is no POM
 * @param present folder in which Maven was started; paths are shown from there
 * @param target the project's build folder
 * @param version of this plugin
 * @param goals what to type before the name of a goal
 * @param environment the variables it was started with
 */
record Surroundings(
    Path base, Path present, Path target, String version, String goals, Environment environment) {
  /** How Maven begins the names of its copies of the environment's variables. */
  private static final String VARIABLE = "env.";

  static Surroundings of(MavenSession session, MavenProject project, MojoExecution execution) {
    Path present = Path.of(session.getExecutionRootDirectory()).toAbsolutePath().normalize();
    boolean written = project.getFile() != null;
    Path base = written ? project.getBasedir().toPath().toAbsolutePath().normalize() : present;
    Path target =
        written ? base.resolve(project.getBuild().getDirectory()) : base.resolve("target");
    boolean named =
        project.getBuildPlugins().stream()
            .anyMatch(plugin -> plugin.getKey().equals(execution.getPlugin().getKey()));
    String version = execution.getVersion();
    String goals =
        written && named
            ? "mvn tugtest:"
            : "mvn "
                + execution.getGroupId()
                + ":"
                + execution.getArtifactId()
                + ":"
                + version
                + ":";
    return new Surroundings(base, present, target.normalize(), version, goals, variables(session));
  }

  private static Environment variables(MavenSession session) {
    Map<String, String> variables = new HashMap<>();
    Properties properties = session.getSystemProperties();
    for (String name : properties.stringPropertyNames()) {
      if (name.startsWith(VARIABLE)) {
        variables.put(name.substring(VARIABLE.length()), properties.getProperty(name));
      }
    }
    return new Environment(variables);
  }

  /** The path of a parameter. */
  Path resolve(String path) {
    return base.resolve(path.strip()).toAbsolutePath().normalize();
  }

  /** A path as a person would type it here, with {@code /}. */
  String show(Path path) {
    if (path.equals(present)) {
      return ".";
    }
    return path.startsWith(present)
        ? Folders.slashed(present.relativize(path))
        : path.toString().replace('\\', '/');
  }
}
