package org.tugtest.goal;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.descriptor.MojoDescriptor;
import org.apache.maven.plugin.descriptor.Parameter;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;

/**
 * What the goals take, by the property and by the name in a POM. Maven passes over one that is
 * misspelt, and takes whatever it does not understand for {@code false}; we do neither.
 *
 * @param properties type of each property
 * @param fields type of each name in a POM
 */
record KnownParameters(Map<String, String> properties, Map<String, String> fields) {
  private static final String PREFIX = "tugtest.";
  private static final Set<String> YES_OR_NO = Set.of("true", "false");

  /** Those of all goals of the plugin. */
  static KnownParameters of(MojoExecution execution) {
    Map<String, String> properties = new TreeMap<>(NaturalOrder.NATURAL);
    Map<String, String> fields = new TreeMap<>(NaturalOrder.NATURAL);
    for (MojoDescriptor goal : execution.getMojoDescriptor().getPluginDescriptor().getMojos()) {
      for (Parameter parameter : goal.getParameters()) {
        String expression = parameter.getExpression();
        String type = String.valueOf(parameter.getType());
        if (expression != null && expression.startsWith("${" + PREFIX)) {
          properties.put(expression.substring(2, expression.length() - 1), type);
        }
        if (parameter.isEditable()) {
          fields.put(parameter.getName(), type);
        }
      }
    }
    return new KnownParameters(properties, fields);
  }

  /**
   * Refuses properties with our prefix that no goal takes, and values that are none.
   *
   * @param given on the command line
   * @param defined in the POM, which may use our prefix for its own ends
   */
  void refuseUnknown(Properties given, Properties defined) throws MojoExecutionException {
    Collection<String> sorted = new TreeSet<>(given.stringPropertyNames());
    for (String name : sorted) {
      if (name.startsWith(PREFIX)
          && !properties.containsKey(name)
          && defined.getProperty(name) == null) {
        throw new MojoExecutionException(
            "there is no parameter " + name + nearest(name, properties.keySet()));
      }
    }
    for (Map.Entry<String, String> known : properties.entrySet()) {
      String name = known.getKey();
      refuseMeaningless(
          name, known.getValue(), given.getProperty(name, defined.getProperty(name, "")));
    }
  }

  /**
   * Refuses what stands in the configuration of the POM and no goal takes, and values that are
   * none.
   *
   * @param written text by name
   */
  void refuseUnknownFields(Map<String, String> written) throws MojoExecutionException {
    for (Map.Entry<String, String> field : written.entrySet()) {
      String name = field.getKey();
      String type = fields.get(name);
      if (type == null) {
        throw new MojoExecutionException(
            "there is no parameter <" + name + "> in the POM" + nearest(name, fields.keySet()));
      }
      refuseMeaningless("<" + name + "> in the POM", type, field.getValue());
    }
  }

  private static String nearest(String name, Collection<String> known) {
    String near = Nearest.question(name, known);
    return near.isEmpty() ? "; the goal help lists all of them" : "; " + near;
  }

  private static void refuseMeaningless(String name, String type, String value)
      throws MojoExecutionException {
    String word = value.strip();
    boolean meant = word.isEmpty() || word.startsWith("${") || !type.endsWith("boolean");
    if (!meant && !YES_OR_NO.contains(word.toLowerCase(Locale.ROOT))) {
      throw new MojoExecutionException(name + " is \"" + word + "\"; it takes true or false");
    }
  }
}
