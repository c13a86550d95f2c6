package org.tugtest.goal;

import java.util.Collection;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.descriptor.MojoDescriptor;
import org.apache.maven.plugin.descriptor.Parameter;
import org.apache.maven.project.MavenProject;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;

/**
 * The properties that the goals take. Maven passes over one that is misspelt; we do not.
 *
 * @param names of all goals
 * @param others properties with our prefix that the POM defines for its own ends
 */
record KnownParameters(Set<String> names, Set<String> others) {
  private static final String PREFIX = "tugtest.";

  static KnownParameters of(MojoExecution execution, MavenProject project) {
    Set<String> names = new TreeSet<>(NaturalOrder.NATURAL);
    for (MojoDescriptor goal : execution.getMojoDescriptor().getPluginDescriptor().getMojos()) {
      for (Parameter parameter : goal.getParameters()) {
        String expression = parameter.getExpression();
        if (expression != null && expression.startsWith("${" + PREFIX)) {
          names.add(expression.substring(2, expression.length() - 1));
        }
      }
    }
    return new KnownParameters(names, project.getProperties().stringPropertyNames());
  }

  void refuseUnknown(Properties given) throws MojoExecutionException {
    Collection<String> sorted = new TreeSet<>(given.stringPropertyNames());
    for (String name : sorted) {
      if (name.startsWith(PREFIX) && !names.contains(name) && !others.contains(name)) {
        String near = Nearest.question(name, names);
        throw new MojoExecutionException(
            "there is no parameter "
                + name
                + (near.isEmpty() ? "; the goal help lists all of them" : "; " + near));
      }
    }
  }
}
