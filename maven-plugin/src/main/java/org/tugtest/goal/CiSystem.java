package org.tugtest.goal;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.git.Environment;

/** The CI system that is told of findings. */
enum CiSystem {
  /** None, or one that takes no more than the report files. */
  NONE,
  /** Takes workflow commands on standard output and a step summary. */
  GITHUB,
  /** Takes a code quality file. */
  GITLAB;

  /** The one that {@code tugtest.annotations} asks for. */
  static CiSystem of(String word, Environment environment) throws MojoExecutionException {
    List<String> known = List.of("auto", "github", "gitlab", "never");
    return switch (Words.oneOf("tugtest.annotations", word, known)) {
      case "github" -> GITHUB;
      case "gitlab" -> GITLAB;
      case "never" -> NONE;
      default -> {
        if (isTrue(environment, "GITHUB_ACTIONS")) {
          yield GITHUB;
        }
        yield isTrue(environment, "GITLAB_CI") ? GITLAB : NONE;
      }
    };
  }

  private static boolean isTrue(Environment environment, String name) {
    return environment.get(name).filter("true"::equals).isPresent();
  }
}
