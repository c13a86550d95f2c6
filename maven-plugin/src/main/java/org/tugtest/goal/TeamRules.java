package org.tugtest.goal;

import java.util.List;
import java.util.ServiceConfigurationError;
import org.apache.maven.plugin.MojoExecutionException;
import org.tugtest.check.RuleCatalog;
import org.tugtest.rule.RuleInfo;

/** Our rules and those of jars that a team put among the plugin's dependencies. */
final class TeamRules {
  private TeamRules() {}

  /** The ids of the rules that a team added. */
  static List<String> ids() throws MojoExecutionException {
    RuleCatalog ours = RuleCatalog.standard();
    return catalog().infos().stream()
        .map(RuleInfo::id)
        .filter(id -> ours.rule(id).isEmpty())
        .toList();
  }

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
