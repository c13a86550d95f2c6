package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.inject.Inject;
import org.apache.maven.execution.MavenSession;
import org.apache.maven.plugin.MojoExecution;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.apache.maven.project.MavenProject;
import org.eclipse.aether.RepositorySystem;
import org.tugtest.base.Ground;
import org.tugtest.files.Folders;
import org.tugtest.git.WorkTree;
import org.tugtest.hook.GuardOrder;
import org.tugtest.hook.Installation;

/**
 * Installs the commit guard: hooks of git that check the content of each commit and of each merge
 * before it is made, and keep one from happening that brings a new finding. A hook that is there
 * already is kept and called first. Nothing that git keeps track of is touched; the goal <code>
 * remove-hook</code> takes all of it away again.
 */
@Mojo(name = "install-hook", requiresProject = false, threadSafe = true)
public final class InstallHookMojo extends HarnessGoal {
  @Inject private RepositorySystem repositories;

  @Parameter(defaultValue = "${session}", readonly = true, required = true)
  private MavenSession maven;

  @Parameter(defaultValue = "${project}", readonly = true, required = true)
  private MavenProject here;

  @Parameter(defaultValue = "${mojoExecution}", readonly = true, required = true)
  private MojoExecution self;

  /** Skips this goal alone. */
  @Parameter(property = "tugtest.install-hook.skip", defaultValue = "false")
  private boolean skipInstallHook;

  /**
   * From which level on a new finding keeps a commit from happening: <code>error</code>, <code>
   * warning</code>, <code>note</code> or <code>never</code>.
   */
  @Parameter(property = "tugtest.failOn", defaultValue = "error")
  private String failOn;

  @Override
  boolean skippedAlone() {
    return skipInstallHook;
  }

  @Override
  void run(Surroundings around, Workplace place) throws MojoExecutionException {
    String level = Gates.word(failOn);
    String plugin = self.getGroupId() + ":" + self.getArtifactId() + ":" + self.getVersion();
    try (Ground ground = Ground.of(place.folders(), around.environment())) {
      WorkTree tree = ground.needed("the commit guard");
      place.refuseOutside(around, ground);
      GuardOrder order = order(around, place, tree.top(), level);
      StandaloneJar jar =
          new StandaloneJar(
              repositories, maven.getRepositorySession(), here.getRemotePluginRepositories());
      List<String> done = Installation.of(tree).install(order, plugin, jar.find(plugin), java());
      said(done, order).forEach(getLog()::info);
    } catch (IOException failed) {
      throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
    }
  }

  /** What is told of an installation. */
  static List<String> said(List<String> done, GuardOrder order) {
    List<String> lines = new ArrayList<>(done);
    lines.add(
        done.isEmpty()
            ? "the commit guard is installed already; nothing was changed"
            : "the commit guard watches "
                + order.harness()
                + "; take it away with: "
                + order.goals()
                + "remove-hook");
    return lines;
  }

  private Installation.JavaHome java() {
    String version = maven.getSystemProperties().getProperty("java.specification.version", "17");
    return new Installation.JavaHome(
        Path.of(maven.getSystemProperties().getProperty("java.home", "")),
        Integer.parseInt(version));
  }

  private static GuardOrder order(Surroundings around, Workplace place, Path top, String failOn)
      throws MojoExecutionException {
    return new GuardOrder(
        Folders.slashed(top.relativize(place.folders().harness())),
        place.folders().libraries().stream()
            .map(folder -> Folders.slashed(top.relativize(folder)))
            .toList(),
        place.choice().includes().stream().map(glob -> glob.pattern().strip()).toList(),
        place.choice().excludes().stream().map(glob -> glob.pattern().strip()).toList(),
        failOn,
        around.goals(),
        later());
  }

  /** What the guard leaves to others. */
  static String later() throws MojoExecutionException {
    List<String> own = TeamRules.ids();
    return "left to continuous integration: reports, merges that run no hook (fast-forward, rebase)"
        + (own.isEmpty() ? "" : ", the team's own rules (" + String.join(", ", own) + ")");
  }
}
