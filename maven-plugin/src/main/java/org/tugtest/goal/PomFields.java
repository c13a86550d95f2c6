package org.tugtest.goal;

import java.util.Map;
import java.util.TreeMap;
import org.apache.maven.model.Plugin;
import org.apache.maven.model.PluginExecution;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.project.MavenProject;
import org.codehaus.plexus.util.xml.Xpp3Dom;
import org.jspecify.annotations.Nullable;

/** What a POM configures for an execution, before Maven leaves out what it does not know. */
final class PomFields {
  private PomFields() {}

  /** The text of each configured name; lists as the empty text. */
  static Map<String, String> of(MavenProject project, MojoExecution execution) {
    Map<String, String> written = new TreeMap<>();
    Plugin plugin = project.getPlugin(execution.getPlugin().getKey());
    if (plugin != null) {
      add(written, plugin.getConfiguration());
      PluginExecution own = plugin.getExecutionsAsMap().get(execution.getExecutionId());
      if (own != null) {
        add(written, own.getConfiguration());
      }
    }
    return written;
  }

  private static void add(Map<String, String> written, @Nullable Object configuration) {
    if (configuration instanceof Xpp3Dom dom) {
      for (Xpp3Dom child : dom.getChildren()) {
        String value = child.getValue();
        written.put(child.getName(), value == null ? "" : value);
      }
    }
  }
}
