package org.tugtest.goal;

import java.util.ServiceConfigurationError;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.check.RuleCatalog;

/** Our rules and those of jars that a team put among the plugin's dependencies. */
final class TeamRules {
  private TeamRules() {}

  static RuleCatalog catalog() throws MojoExecutionException {
    try {
      return RuleCatalog.standard().withServices(TeamRules.class.getClassLoader());
    } catch (ServiceConfigurationError | IllegalArgumentException broken) {
      throw new MojoExecutionException(
          "the rules of a jar among the plugin's dependencies cannot be used: "
              + broken.getMessage(),
          new IllegalStateException(broken));
    }
  }
}
