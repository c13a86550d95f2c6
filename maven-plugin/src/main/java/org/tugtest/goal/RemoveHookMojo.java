package org.tugtest.goal;

import java.io.IOException;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.tugtest.base.Ground;
import org.tugtest.files.Folders;
import org.tugtest.hook.Installation;

/**
 * Takes the commit guard away and puts back the hooks that were there before it. Hooks that are not
 * ours are left as they are.
 */
@Mojo(name = "remove-hook", requiresProject = false, threadSafe = true)
public final class RemoveHookMojo extends TugtestGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.remove-hook.skip", defaultValue = "false")
  private boolean skipRemoveHook;

  @Override
  boolean skippedAlone() {
    return skipRemoveHook;
  }

  @Override
  void run(Surroundings around) throws MojoExecutionException {
    Folders here = new Folders(around.base(), List.of(), List.of());
    try (Ground ground = Ground.of(here, around.environment())) {
      List<String> done = Installation.of(ground.needed("the commit guard")).remove();
      done.forEach(getLog()::info);
      if (done.isEmpty()) {
        getLog().info("there is no commit guard here; nothing was changed");
      }
    } catch (IOException failed) {
      throw new MojoExecutionException(String.valueOf(failed.getMessage()), failed);
    }
  }
}
